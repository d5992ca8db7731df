#include "data/tuning.hpp"
#include "data/table.hpp"

namespace lumwright::data {
namespace {
template <class Q>
Q uncertainty(std::string_view id) {
  return row_with_id("tuning", "instruments", id).quantity<Q>("uncertainty");
}
}  // namespace

const Instruments& instruments() {
  static const Instruments all{.thermometer = uncertainty<TemperatureRise>("thermometer"),
                               .gauge = uncertainty<Pressure>("gauge"),
                               .u_tube = uncertainty<Pressure>("u_tube"),
                               .multimeter = uncertainty<double>("multimeter"),
                               .scale = uncertainty<Mass>("scale")};
  return all;
}
const std::vector<TuneFactor>& tune_factors() {
  static const std::vector<TuneFactor> all = [] {
    std::vector<TuneFactor> found;
    for (const Row& row : rows("tuning", "factors"))
      found.push_back({row.text("key"), row.text("name"), row.text("unit"), row.text("least"), row.text("most"),
                       row.optional<double>("spread"), row.optional<double>("day_to_day"),
                       row.optional<double>("drift"), row.has("anew") ? std::string(row.text("anew")) : "",
                       row.basis()});
    return found;
  }();
  return all;
}
double season_constant(std::string_view id) { return row_with_id("tuning", "season", id).quantity<double>("value"); }
}  // namespace lumwright::data
