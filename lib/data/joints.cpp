#include "data/joints.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <algorithm>

namespace lumwright::data {
const std::vector<JointRow>& joints() {
  static const std::vector<JointRow> all = [] {
    std::vector<JointRow> found;
    for (const Row& row : rows("joints", "joints"))
      found.push_back({row.text("name"), row.optional<Temperature>("melts"),
                       row.optional<TemperatureRise>("reserve").value_or(0.0 * K), row.basis()});
    return found;
  }();
  return all;
}

const JointRow& joint(std::string_view name) {
  const auto& all = joints();
  const auto found = std::find_if(all.begin(), all.end(), [&](const JointRow& row) { return row.name == name; });
  if (found != all.end()) return *found;
  std::string known;
  for (const JointRow& row : all) known += (known.empty() ? "`" : ", `") + row.name + "`";
  throw ModelError("no joint is called `" + std::string(name) + "`; known: " + known);
}
}  // namespace lumwright::data
