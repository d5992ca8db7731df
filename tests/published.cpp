#include "published.hpp"
#include "data/detail/flat_table.hpp"
#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>

namespace lumwright {
std::vector<data::Row> published(std::string_view topic, std::string_view list) {
  static std::map<std::string, data::FlatTable> files;
  const std::string path = std::string(PUBLISHED_DIR) + "/" + std::string(topic) + ".yaml";
  if (!files.contains(path)) {
    std::ifstream in(path, std::ios::binary);
    if (!in) throw std::runtime_error("cannot read " + path);
    const input::Source source{path, {std::istreambuf_iterator<char>(in), {}}};
    std::vector<input::Fault> faults;
    const input::Node root = input::read_yaml(source, faults, 1024 * 1024);
    if (!faults.empty()) throw input::InputError(source, faults);
    files.try_emplace(path, path, root);
  }
  const auto found = data::Row(files.at(path).table()).rows(list);
  if (found.empty()) throw std::runtime_error("no rows in " + path);
  for (const data::Row& row : found)
    if (row.source().empty() || row.basis().standing == data::Standing::unsaid)
      throw std::runtime_error("a row without source or standing in " + path);
  return found;
}
}  // namespace lumwright
