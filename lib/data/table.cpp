#include "data/table.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::data {
namespace {
const Table& table_called(std::string_view table) {
  const std::string name = fmt::format("data/{}.yaml", table);
  for (const Table& one : tables())
    if (one.name == name) return one;
  throw std::logic_error("no table " + name);
}
}  // namespace

const TableNode* Row::child(std::string_view key) const {
  const std::span<const TableNode> all = children(*node_);
  const auto found = std::find_if(all.begin(), all.end(), [&](const TableNode& node) { return key_of(node) == key; });
  return found == all.end() ? nullptr : &*found;
}
bool Row::has(std::string_view key) const { return child(key) != nullptr; }
void Row::fail(const TableNode& node, std::string_view why) const {
  throw std::logic_error(fmt::format("{}:{}: {}: {}", table_->name, node.line, key_of(node), why));
}
const TableNode& Row::node_at(std::string_view key) const {
  const TableNode* node = child(key);
  if (node == nullptr) fail(*node_, fmt::format("this row has no `{}`", key));
  return *node;
}
std::string Row::text(std::string_view key) const { return std::string(text_of(node_at(key))); }
std::string Row::text(std::string_view key, std::string_view otherwise) const {
  return has(key) ? text(key) : std::string(otherwise);
}
std::vector<std::string> Row::texts(std::string_view key) const {
  std::vector<std::string> out;
  for (const TableNode& node : children(node_at(key))) out.emplace_back(text_of(node));
  return out;
}
std::vector<std::vector<double>> Row::rows_of_numbers(std::string_view key) const {
  std::vector<std::vector<double>> out;
  for (const TableNode& line : children(node_at(key))) {
    out.emplace_back();
    for (const TableNode& node : children(line)) out.back().push_back(band(node, kind_of<double>).value);
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
  for (const TableNode& node : children(node_at(key))) out.push_back(Row(*table_, node));
  return out;
}
WrittenBand Row::band(const TableNode& node, Kind kind) const {
  try {
    return parse_band(text_of(node), kind);
  } catch (const QuantityError& e) {
    fail(node, e.what());
  }
}

std::vector<Row> rows(std::string_view table, std::string_view list) { return Row(table_called(table)).rows(list); }
Row section(std::string_view table, std::string_view key) { return Row(table_called(table)).section(key); }
std::vector<Row> documents(std::string_view folder) {
  std::vector<Row> found;
  for (const Table& table : tables())
    if (table.name.starts_with(fmt::format("{}/", folder))) found.emplace_back(table);
  return found;
}
Row row_with_id(std::string_view table, std::string_view list, std::string_view id) {
  for (const Row& row : rows(table, list))
    if (row.text("id") == id) return row;
  throw std::logic_error(std::string(table) + ".yaml has no row with the id " + std::string(id));
}
}  // namespace lumwright::data
