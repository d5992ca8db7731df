// Reads the embedded tables: maps of lists of rows, every quantity with its unit, every row with its source and
// standing.
#pragma once
#include "data/basis.hpp"
#include "input/yaml_tree.hpp"
#include "quantity/text.hpp"
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lumwright::data {
/// One row. The readers throw std::logic_error that names file, line and key: a bad row is our mistake, not the user's.
class Row {
 public:
  Row(const std::string& file, const input::Node& node) : file_(&file), node_(&node) {}
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
    for (const input::Node& node : node_at(key).children)
      out.push_back(QuantityTraits<Q>::from_si(band(node, kind_of<Q>).value));
    return out;
  }
  Row section(std::string_view key) const { return {*file_, node_at(key)}; }
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
  const input::Node& node_at(std::string_view key) const;
  WrittenBand band(std::string_view key, Kind kind) const { return band(node_at(key), kind); }
  WrittenBand band(const input::Node& node, Kind kind) const;
  [[noreturn]] void fail(const input::Node& node, std::string_view why) const;
  const std::string* file_;
  const input::Node* node_;
};

/// The rows of one list of an embedded table: rows("fans", "axial") reads lib/data/fans.yaml. Parsed once a program
/// run.
std::vector<Row> rows(std::string_view table, std::string_view list);
/// The row of a list with that id, for an id that our own code writes: std::logic_error where there is none.
Row row_with_id(std::string_view table, std::string_view list, std::string_view id);
/// A map in a table that is not a list.
Row section(std::string_view table, std::string_view key);
/// A whole embedded file as one row: document("cautions/zinc"). Parsed once a program run.
Row document(std::string_view name);
/// The same for any text and for tests; `file` and `root` must outlive the rows.
std::vector<Row> rows(const std::string& file, const input::Node& root, std::string_view list);

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
