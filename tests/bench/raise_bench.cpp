// What one coupled raise costs: median milliseconds of one core, right-hand sides, and microseconds for each of them.
#include "../boiler/example.hpp"
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <vector>

using namespace lumwright;
using namespace lumwright::boiler;

namespace {
struct Case {
  std::string name;
  RaiseInput input;
};

void run(const Case& c, int times) {
  std::vector<double> ms;
  Raise result = raise(c.input);
  for (int i = 0; i < times; ++i) {
    const auto begin = std::chrono::steady_clock::now();
    result = raise(c.input);
    ms.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count());
  }
  std::nth_element(ms.begin(), ms.begin() + times / 2, ms.end());
  const double median = ms[static_cast<std::size_t>(times / 2)];
  const RaiseEffort& e = result.effort;
  std::printf(
      "%-34s %7.3f ms  %3d rates, %5.1f us each  (%d instants, %d walks along the path, %d steps, %d rejected)\n",
      c.name.c_str(), median, e.rates, 1e3 * median / e.rates, e.instants, e.paths_followed, e.steps, e.rejected);
}
}  // namespace

int main() {
  RaiseInput full = example_coupled("axial 60x25", true);
  full.purge = 0.5 * g;
  full.inside = 0.4 * litre;
  run({"air flow given", example_a()}, 501);
  run({"axial fan, step-up, pack", example_coupled("axial 60x25", true)}, 201);
  run({"the same, air driven out", full}, 201);
  RaiseInput leaky = full;  // a slipped decimal point: it never boils
  leaky.boiler.outside = 200.0 * W_per_K;
  run({"the same, losing 200 W/K", leaky}, 51);
  run({"axial fan straight on the pack", example_coupled("axial 60x25", false)}, 201);
  run({"blower, step-up, pack", example_coupled("blower 50x15", true)}, 201);
}
