#include "fan_test/fan_test.hpp"
#include "plan/cautions.hpp"
#include <algorithm>

namespace lumwright::fan_test {
std::vector<plan::Caution> fan_test_cautions() {
  // A fan on a box of sheet, no fire near it: of what every build is told, blades and sheet bite here.
  std::vector<plan::Caution> found = plan::cautions_for({}, {});
  std::erase_if(found, [](const plan::Caution& c) { return c.id != "moving-blades" && c.id != "sharp-edges"; });
  return found;
}
}  // namespace lumwright::fan_test
