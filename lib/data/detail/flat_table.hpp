// A YAML file drawn out into nodes and words: what is compiled in, and what tests read from files of their own.
#pragma once
#include "data/table.hpp"
#include "input/yaml_tree.hpp"
#include <string>
#include <unordered_map>
#include <vector>

namespace lumwright::data {
/// Holds what its table shows.
class FlatTable {
 public:
  FlatTable(std::string name, const input::Node& root);
  FlatTable(const FlatTable&) = delete;
  FlatTable& operator=(const FlatTable&) = delete;
  const Table& table() const { return table_; }

 private:
  std::uint32_t place(const std::string& word);
  void fill(std::size_t at, const input::Node& node);

  std::string name_, words_;
  std::vector<TableNode> nodes_;
  std::unordered_map<std::string, std::uint32_t> places_;
  Table table_;
};
}  // namespace lumwright::data
