// Reads the tables that are compiled into the program: maps of lists of rows, every quantity with its unit, every row
// with its source and standing.
#pragma once
#include "data/basis.hpp"
#include "quantity/text.hpp"
#include <cstdint>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lumwright::data {
/// A value, a list or a map of a YAML file, as constant data: nothing is read at the start of the program.
struct TableNode {
  std::uint32_t key, key_size, text, text_size;  // places in the table's words; without a key in a list
  std::uint32_t children, count;                 // of a list or a map: so many nodes behind this one, and how many
  std::uint32_t line;
};
struct Table {
  std::string_view name;             // "data/fans.yaml", "cautions/zinc.yaml"
  std::string_view words;            // all keys and texts
  std::span<const TableNode> nodes;  // the document first
};
/// All that lib/data/embed has drawn out of lib/data/*.yaml and cautions/*.yaml, in the order of their names.
std::span<const Table> tables();

/// One row. The readers throw std::logic_error that names file, line and key: a bad row is our mistake, not the user's.
class Row {
 public:
  /// The whole document; the table must outlive its rows.
  explicit Row(const Table& table) : table_(&table), node_(&table.nodes.front()) {}
  /// Of which file, for what is said of it.
  std::string_view file() const { return table_->name; }
  bool has(std::string_view key) const;
  std::string text(std::string_view key) const;
  std::string text(std::string_view key, std::string_view otherwise) const;
  double number(std::string_view key) const { return quantity<double>(key); }
  std::vector<double> numbers(std::string_view key) const { return list<double>(key); }
  std::vector<std::string> texts(std::string_view key) const;
  std::vector<std::vector<double>> rows_of_numbers(std::string_view key) const;
  bool yes(std::string_view key) const;  // `true`; absent or `false` means no

  template <class Q>
  Q quantity(std::string_view key) const {
    return QuantityTraits<Q>::from_si(band(key, kind_of<Q>).value);
  }
  template <class Q>
  Band<Q> band(std::string_view key) const {
    const WrittenBand w = band(key, kind_of<Q>);
    using T = QuantityTraits<Q>;
    return {T::from_si(w.value), T::from_si(w.low), T::from_si(w.high)};
  }
  template <class Q>
  std::optional<Q> optional(std::string_view key) const {
    return has(key) ? std::optional<Q>(quantity<Q>(key)) : std::nullopt;
  }
  template <class Q>
  std::vector<Q> list(std::string_view key) const {
    std::vector<Q> out;
    for (const TableNode& node : children(node_at(key)))
      out.push_back(QuantityTraits<Q>::from_si(band(node, kind_of<Q>).value));
    return out;
  }
  Row section(std::string_view key) const { return {*table_, node_at(key)}; }
  /// A list of low, usual and high; throws where they do not rise.
  template <class Q>
  Band<Q> triple(std::string_view key) const {
    const std::vector<Q> v = list<Q>(key);
    if (v.size() != 3 || v[0] > v[1] || v[1] > v[2]) fail(node_at(key), "is not low, usual, high");
    return {.value = v[1], .low = v[0], .high = v[2]};
  }
  std::vector<Row> rows(std::string_view key) const;
  std::string source() const { return text("source"); }
  Basis basis() const { return {standing_of(text("standing")), text("source")}; }

 private:
  Row(const Table& table, const TableNode& node) : table_(&table), node_(&node) {}
  std::string_view key_of(const TableNode& node) const { return table_->words.substr(node.key, node.key_size); }
  std::string_view text_of(const TableNode& node) const { return table_->words.substr(node.text, node.text_size); }
  static std::span<const TableNode> children(const TableNode& node) { return {&node + node.children, node.count}; }
  const TableNode* child(std::string_view key) const;
  const TableNode& node_at(std::string_view key) const;
  WrittenBand band(std::string_view key, Kind kind) const { return band(node_at(key), kind); }
  WrittenBand band(const TableNode& node, Kind kind) const;
  [[noreturn]] void fail(const TableNode& node, std::string_view why) const;
  const Table* table_;
  const TableNode* node_;
};

/// The rows of one list of an embedded table: rows("fans", "axial") reads lib/data/fans.yaml.
std::vector<Row> rows(std::string_view table, std::string_view list);
/// The row of a list with that id, for an id that our own code writes: std::logic_error where there is none.
Row row_with_id(std::string_view table, std::string_view list, std::string_view id);
/// A map in a table that is not a list.
Row section(std::string_view table, std::string_view key);
/// The whole files of a folder as one row each, in the order of their names: documents("cautions").
std::vector<Row> documents(std::string_view folder);

/// Every row of a list, by a function that reads one. Throws std::logic_error where there is none.
template <class Read>
auto read_all(std::string_view table, std::string_view list, Read read) {
  std::vector<decltype(read(std::declval<const Row&>()))> all;
  for (const Row& row : rows(table, list)) all.push_back(read(row));
  if (all.empty()) throw std::logic_error(std::string(table) + ".yaml: no rows under " + std::string(list));
  return all;
}
/// The row with that id, for an id that our own code writes: std::logic_error where there is none.
template <class T>
const T& by_id(std::string_view table, const std::vector<T>& all, std::string_view id) {
  for (const T& row : all)
    if (row.id == id) return row;
  throw std::logic_error(std::string(table) + ".yaml has no row with the id " + std::string(id));
}
}  // namespace lumwright::data
