#include "data/measuring.hpp"
#include "data/table.hpp"
#include <stdexcept>

namespace lumwright::data {
const std::vector<MeasuringMethod>& measuring_methods() {
  static const std::vector<MeasuringMethod> methods = [] {
    std::vector<MeasuringMethod> found;
    for (const Row& row : rows("measuring", "methods"))
      found.push_back({row.text("id"), row.text("name"), row.yes("bore"), row.yes("outside"),
                       row.quantity<Length>("uncertainty"), row.basis()});
    return found;
  }();
  return methods;
}

const MeasuringMethod& measuring_method(const std::string& id) {
  for (const MeasuringMethod& method : measuring_methods())
    if (method.id == id) return method;
  throw std::logic_error("measuring.yaml has no method with the id " + id);
}
const MeasuringShare& measuring_share(std::string_view key) {
  static const std::vector<MeasuringShare> all = read_all("measuring", "shares", [](const Row& row) {
    return MeasuringShare{row.text("id"), row.number("value"), row.basis()};
  });
  return by_id("measuring", all, key);
}
}  // namespace lumwright::data
