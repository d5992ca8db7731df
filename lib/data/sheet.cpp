#include "data/sheet.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <algorithm>

namespace lumwright::data {
const std::vector<SawBlade>& saw_blades() {
  static const std::vector<SawBlade> all = [] {
    std::vector<SawBlade> found;
    for (const Row& row : rows("saws", "blades"))
      found.push_back({row.text("name"), row.quantity<Length>("thickness"), row.quantity<Length>("depth"),
                       inch / row.number("teeth"), row.source(), row.standing()});
    return found;
  }();
  return all;
}

const BendRow& bend_row(std::string_view metal) {
  static const std::vector<BendRow> all = [] {
    std::vector<BendRow> found;
    for (const Row& row : rows("sheet", "bends"))
      found.push_back({row.text("id"), row.texts("metals"), row.number("per_thickness"), row.source(), row.standing()});
    return found;
  }();
  for (const BendRow& row : all)
    if (std::find(row.metals.begin(), row.metals.end(), metal) != row.metals.end()) return row;
  throw ModelError("no bend allowance is known for `" + std::string(metal) + "`");
}
}  // namespace lumwright::data
