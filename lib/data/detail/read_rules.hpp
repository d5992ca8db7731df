// Reads lists of rules out of the embedded tables.
#pragma once
#include "data/rule.hpp"
#include "data/table.hpp"
#include <vector>

namespace lumwright::data {
template <class Q>
std::vector<Rule<Q>> read_rules(std::string_view table, std::string_view list) {
  return read_all(table, list, [](const Row& row) {
    return Rule<Q>{row.text("name"),
                   {row.quantity<Q>("value"), row.quantity<Q>("from"), row.quantity<Q>("to")},
                   row.text("note"),
                   row.basis()};
  });
}
/// The rule of that name; std::logic_error where the table has none.
template <class Q>
const Rule<Q>& rule_named(std::string_view table, const std::vector<Rule<Q>>& rules, std::string_view name) {
  for (const Rule<Q>& rule : rules)
    if (rule.name == name) return rule;
  throw std::logic_error(std::string(table) + ".yaml has no rule named " + std::string(name));
}
}  // namespace lumwright::data
