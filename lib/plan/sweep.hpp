// One or two keys of a build carried through a range, everything else as described.
#pragma once
#include "description/settings.hpp"
#include "plan/assess.hpp"
#include <string>
#include <vector>

namespace lumwright::plan {
/// One key and the values that it takes, as text with units.
struct SweepAxis {
  std::string key;
  std::vector<std::string> values;
};
/// The values of "6 mm..12 mm" in so many steps, of "2..8" for a count, or the words of "good,old" one by one. Throws
/// InputError for a key that there is not, a range that is none, or values that the key does not take.
SweepAxis sweep_axis(const description::Build& build, const std::string& key, const std::string& range,
                     std::size_t steps);

struct SweepPoint {
  std::vector<std::string> at;  // a value for each axis
  Assessment assessment;
};
/// Every combination of the values, the last axis fastest; on so many threads; with bands where samples
/// are asked for. Throws InputError where a value contradicts the rest of the build.
std::vector<SweepPoint> sweep(const description::Build& build, const std::vector<SweepAxis>& axes, UnitSystem units,
                              const model::Tuning* tuning, unsigned threads, const SamplesAsked& samples = {});
}  // namespace lumwright::plan
