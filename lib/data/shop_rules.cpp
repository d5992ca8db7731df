#include "data/shop_rules.hpp"
#include "data/table.hpp"
#include <stdexcept>

namespace lumwright::data {
namespace {
template <class Q>
const Rule<Q>& find(std::string_view list, std::string_view name) {
  static const std::vector<Rule<Q>> rules = [&] {
    std::vector<Rule<Q>> found;
    for (const Row& row : rows("shop_rules", list))
      found.push_back({row.text("name"),
                       {row.quantity<Q>("value"), row.quantity<Q>("from"), row.quantity<Q>("to")},
                       row.text("note"),
                       row.source(),
                       row.standing()});
    return found;
  }();
  for (const Rule<Q>& rule : rules)
    if (rule.name == name) return rule;
  throw std::logic_error("shop_rules.yaml has no rule named " + std::string(name));
}
}  // namespace

const Rule<Length>& shop_length(std::string_view name) { return find<Length>("lengths", name); }
const Rule<double>& shop_number(std::string_view name) { return find<double>("numbers", name); }
const Rule<Mass>& shop_mass(std::string_view name) { return find<Mass>("masses", name); }
const Rule<TemperatureRise>& shop_rise(std::string_view name) { return find<TemperatureRise>("rises", name); }
}  // namespace lumwright::data
