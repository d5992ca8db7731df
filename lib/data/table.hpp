// Reads the embedded tables: maps of lists of rows, every quantity with its unit, every row with its source and
// standing.
#pragma once
#include "input/yaml_tree.hpp"
#include "quantity/text.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
/// One row. The readers throw std::logic_error that names file, line and key: a bad row is our mistake, not the user's.
class Row {
 public:
  Row(const std::string& file, const Node& node) : file_(&file), node_(&node) {}
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
    for (const Node& node : node_at(key).children)
      out.push_back(QuantityTraits<Q>::from_si(band(node, kind_of<Q>).value));
    return out;
  }
  Row section(std::string_view key) const { return {*file_, node_at(key)}; }
  std::vector<Row> rows(std::string_view key) const;
  std::string source() const { return text("source"); }
  std::string standing() const { return text("standing"); }

 private:
  const Node& node_at(std::string_view key) const;
  WrittenBand band(std::string_view key, Kind kind) const { return band(node_at(key), kind); }
  WrittenBand band(const Node& node, Kind kind) const;
  [[noreturn]] void fail(const Node& node, std::string_view why) const;
  const std::string* file_;
  const Node* node_;
};

/// The rows of one list of an embedded table: rows("fans", "axial") reads lib/data/fans.yaml. Parsed once a program
/// run.
std::vector<Row> rows(std::string_view table, std::string_view list);
/// A map in a table that is not a list.
Row section(std::string_view table, std::string_view key);
/// The same for any text and for tests; `file` and `root` must outlive the rows.
std::vector<Row> rows(const std::string& file, const Node& root, std::string_view list);
}  // namespace lumwright::data
