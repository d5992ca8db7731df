#include "data/fits.hpp"
#include "data/table.hpp"
#include <stdexcept>

namespace lumwright::data {
namespace {
template <class Q>
std::vector<Rule<Q>> read_rules(std::string_view list) {
  std::vector<Rule<Q>> found;
  for (const Row& row : rows("fits", list))
    found.push_back({row.text("name"),
                     {row.quantity<Q>("value"), row.quantity<Q>("from"), row.quantity<Q>("to")},
                     row.text("note"),
                     row.source(),
                     row.standing()});
  return found;
}
template <class Q>
const Rule<Q>& named(const std::vector<Rule<Q>>& rules, const std::string& name) {
  for (const Rule<Q>& rule : rules)
    if (rule.name == name) return rule;
  throw std::logic_error("fits.yaml has no rule named " + name);
}
}  // namespace

const Rule<Length>& length_rule(const std::string& name) {
  static const std::vector<Rule<Length>> rules = read_rules<Length>("lengths");
  return named(rules, name);
}

const Rule<double>& number_rule(const std::string& name) {
  static const std::vector<Rule<double>> rules = read_rules<double>("numbers");
  return named(rules, name);
}

std::optional<WallLimit> wall_limit(const std::string& metal) {
  static const std::vector<WallLimit> limits = [] {
    std::vector<WallLimit> found;
    for (const Row& row : rows("fits", "wall_limits"))
      found.push_back({row.text("metal"), row.quantity<Length>("least"), row.source(), row.standing()});
    return found;
  }();
  for (const WallLimit& limit : limits)
    if (limit.metal == metal) return limit;
  return std::nullopt;
}
}  // namespace lumwright::data
