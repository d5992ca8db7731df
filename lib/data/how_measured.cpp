#include "data/how_measured.hpp"
#include "data/table.hpp"
#include <map>

namespace lumwright::data {
std::string_view how_measured(std::string_view key) {
  static const auto all = [] {
    std::map<std::string, std::string, std::less<>> found;
    for (const Row& row : rows("how_measured", "keys")) found.emplace(row.text("key"), row.text("how"));
    return found;
  }();
  const auto found = all.find(key);
  return found == all.end() ? std::string_view() : found->second;
}
}  // namespace lumwright::data
