#include "data/detail/flat_table.hpp"

namespace lumwright::data {
namespace {
std::uint32_t narrow(std::size_t n) { return static_cast<std::uint32_t>(n); }
}  // namespace

FlatTable::FlatTable(std::string name, const input::Node& root) : name_(std::move(name)), nodes_(1) {
  fill(0, root);
  table_ = {name_, words_, nodes_};
}

std::uint32_t FlatTable::place(const std::string& word) {  // most words stand in many rows
  const auto [found, is_new] = places_.try_emplace(word, narrow(words_.size()));
  if (is_new) words_ += word;
  return found->second;
}

void FlatTable::fill(std::size_t at, const input::Node& node) {
  const std::size_t first = nodes_.size();
  nodes_[at] = {.key = place(node.key),
                .key_size = narrow(node.key.size()),
                .text = place(node.text),
                .text_size = narrow(node.text.size()),
                .children = narrow(first - at),
                .count = narrow(node.children.size()),
                .line = narrow(static_cast<std::size_t>(node.at.line))};
  nodes_.resize(first + node.children.size());
  for (std::size_t i = 0; i < node.children.size(); ++i) fill(first + i, node.children[i]);
}
}  // namespace lumwright::data
