#include "plan/cautions.hpp"
#include "plan/fan_test.hpp"
#include <algorithm>

namespace lumwright {
std::vector<Caution> fan_test_cautions() {
  // The conditions are those of a description that has a fan and a sheet box, and nothing else.
  Build build;
  build.fan.kind.value = "axial";
  build.fan.frame = {exactly(50.0 * mm), "mm", false, {}};
  build.adapter.box.diameter = {exactly(100.0 * mm), "mm", false, {}};
  std::vector<Caution> found = cautions_for(build, {});
  std::erase_if(found, [](const Caution& c) { return c.id != "moving-blades" && c.id != "sharp-edges"; });
  return found;
}
}  // namespace lumwright
