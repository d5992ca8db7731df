#include "data/fits.hpp"
#include "data/detail/read_rules.hpp"

namespace lumwright::data {
const Rule<Length>& length_rule(const std::string& name) {
  static const std::vector<Rule<Length>> rules = read_rules<Length>("fits", "lengths");
  return rule_named("fits", rules, name);
}

const Rule<double>& number_rule(const std::string& name) {
  static const std::vector<Rule<double>> rules = read_rules<double>("fits", "numbers");
  return rule_named("fits", rules, name);
}

std::optional<WallLimit> wall_limit(const std::string& metal) {
  static const std::vector<WallLimit> limits = [] {
    std::vector<WallLimit> found;
    for (const Row& row : rows("fits", "wall_limits"))
      found.push_back({row.text("metal"), row.quantity<Length>("least"), row.basis()});
    return found;
  }();
  for (const WallLimit& limit : limits)
    if (limit.metal == metal) return limit;
  return std::nullopt;
}
}  // namespace lumwright::data
