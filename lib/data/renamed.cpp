#include "data/renamed.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<RenamedKey>& renamed_keys() {
  static const std::vector<RenamedKey> all =
      read_all("renamed", "keys", [](const Row& row) { return RenamedKey{row.text("old"), row.text("now")}; });
  return all;
}
const std::vector<RenamedWord>& renamed_words() {
  static const std::vector<RenamedWord> all = read_all("renamed", "words", [](const Row& row) {
    return RenamedWord{row.text("key"), row.text("old"), row.text("now")};
  });
  return all;
}
bool is_key(std::string_view path, std::string_view key) {
  return path == key || (path.size() > key.size() && path.ends_with(key) && path[path.size() - key.size() - 1] == '.');
}
}  // namespace lumwright::data
