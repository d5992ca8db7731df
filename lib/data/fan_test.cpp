#include "data/fan_test.hpp"
#include "data/table.hpp"
#include <stdexcept>

namespace lumwright::data {
const std::vector<PlateDischarge>& plate_discharges() {
  static const std::vector<PlateDischarge> all = [] {
    std::vector<PlateDischarge> found;
    for (const Row& row : rows("fan_test", "plate")) {
      found.push_back({row.number("reynolds"), row.band<double>("value"), row.basis()});
      if (found.size() > 1 && !(found.back().reynolds > found[found.size() - 2].reynolds))
        throw std::logic_error("fan_test.yaml: the plate's Reynolds numbers do not rise");
    }
    return found;
  }();
  return all;
}

const TubeShare& tube_share(const std::string& id) {
  static const std::vector<TubeShare> all = [] {
    std::vector<TubeShare> found;
    for (const Row& row : rows("fan_test", "tube"))
      found.push_back(
          {row.text("id"), row.number("shortest"), row.band<double>("value"), row.basis()});
    return found;
  }();
  return by_id("fan_test", all, id);
}

const FanTestRule& fan_test_rule(const std::string& id) {
  static const std::vector<FanTestRule> all = [] {
    std::vector<FanTestRule> found;
    for (const Row& row : rows("fan_test", "rules"))
      found.push_back({row.text("id"), row.number("value"), row.basis()});
    return found;
  }();
  return by_id("fan_test", all, id);
}

const LaidDown& laid_down_u_tube() {
  static const LaidDown row = [] {
    const Row r = rows("fan_test", "u_tube").at(0);
    return LaidDown{r.quantity<Pressure>("least"), r.number("slope"), r.basis()};
  }();
  return row;
}

const std::vector<Length>& usual_holes() {
  static const std::vector<Length> all = rows("fan_test", "holes").at(0).list<Length>("diameters");
  return all;
}
}  // namespace lumwright::data
