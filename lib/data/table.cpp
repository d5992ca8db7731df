#include "data/table.hpp"
#include "data/embedded.hpp"
#include <fmt/format.h>
#include <map>
#include <memory>
#include <mutex>

namespace lumwright::data {
namespace {
struct Parsed {
  std::string file;
  input::Node root;
};
const Parsed& parsed(std::string_view name) {
  static std::mutex guard;
  static std::map<std::string, std::unique_ptr<Parsed>, std::less<>> files;
  const std::lock_guard lock(guard);
  if (const auto found = files.find(name); found != files.end()) return *found->second;
  const EmbeddedFile& file = embedded(name);
  std::vector<input::Fault> faults;
  input::Source source{file.name + ".yaml", file.text};
  input::Node root = input::read_yaml(source, faults, 1024 * 1024);
  if (!faults.empty()) throw std::logic_error(input::InputError(source, faults).what());
  return *files.emplace(name, std::make_unique<Parsed>(Parsed{source.name, std::move(root)})).first->second;
}
const Parsed& parsed_table(std::string_view table) { return parsed(fmt::format("data/{}", table)); }
}  // namespace

bool Row::has(std::string_view key) const { return input::child(*node_, key) != nullptr; }
void Row::fail(const input::Node& node, std::string_view why) const {
  throw std::logic_error(fmt::format("{}:{}: {}: {}", *file_, node.at.line, node.key, why));
}
const input::Node& Row::node_at(std::string_view key) const {
  const input::Node* node = input::child(*node_, key);
  if (node == nullptr) fail(*node_, fmt::format("this row has no `{}`", key));
  return *node;
}
std::string Row::text(std::string_view key) const { return node_at(key).text; }
std::string Row::text(std::string_view key, std::string_view otherwise) const {
  return has(key) ? text(key) : std::string(otherwise);
}
std::vector<std::string> Row::texts(std::string_view key) const {
  std::vector<std::string> out;
  for (const input::Node& node : node_at(key).children) out.push_back(node.text);
  return out;
}
std::vector<std::vector<double>> Row::rows_of_numbers(std::string_view key) const {
  std::vector<std::vector<double>> out;
  for (const input::Node& line : node_at(key).children) {
    out.emplace_back();
    for (const input::Node& node : line.children) out.back().push_back(band(node, kind_of<double>).value);
  }
  return out;
}
bool Row::yes(std::string_view key) const {
  if (!has(key)) return false;
  const std::string word = text(key);
  if (word != "true" && word != "false") fail(node_at(key), "expected true or false");
  return word == "true";
}
std::vector<Row> Row::rows(std::string_view key) const {
  std::vector<Row> out;
  for (const input::Node& node : node_at(key).children) out.emplace_back(*file_, node);
  return out;
}
WrittenBand Row::band(const input::Node& node, Kind kind) const {
  try {
    return parse_band(node.text, kind);
  } catch (const QuantityError& e) {
    fail(node, e.what());
  }
}

std::vector<Row> rows(const std::string& file, const input::Node& root, std::string_view list) {
  return Row(file, root).rows(list);
}
std::vector<Row> rows(std::string_view table, std::string_view list) {
  const Parsed& p = parsed_table(table);
  return rows(p.file, p.root, list);
}
Row section(std::string_view table, std::string_view key) {
  const Parsed& p = parsed_table(table);
  return Row(p.file, p.root).section(key);
}
Row document(std::string_view name) {
  const Parsed& p = parsed(name);
  return {p.file, p.root};
}
Row row_with_id(std::string_view table, std::string_view list, std::string_view id) {
  for (const Row& row : rows(table, list))
    if (row.text("id") == id) return row;
  throw std::logic_error(std::string(table) + ".yaml has no row with the id " + std::string(id));
}
}  // namespace lumwright::data
