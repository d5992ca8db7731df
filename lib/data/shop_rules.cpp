#include "data/shop_rules.hpp"
#include "data/detail/read_rules.hpp"

namespace lumwright::data {
namespace {
template <class Q>
const Rule<Q>& find(std::string_view list, std::string_view name) {
  static const std::vector<Rule<Q>> rules = read_rules<Q>("shop_rules", list);
  return rule_named("shop_rules", rules, name);
}
}  // namespace

const Rule<Length>& shop_length(std::string_view name) { return find<Length>("lengths", name); }
const Rule<double>& shop_number(std::string_view name) { return find<double>("numbers", name); }
const Rule<Mass>& shop_mass(std::string_view name) { return find<Mass>("masses", name); }
}  // namespace lumwright::data
