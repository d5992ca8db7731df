// Prints where the time of a check goes: reading, solving and judging, writing. In one process, so without program
// start.
#include "description/reader.hpp"
#include "model/solved.hpp"
#include "model/solved_raise.hpp"
#include "plan/assess.hpp"
#include "report/json.hpp"
#include "report/text.hpp"
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::boiler;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;

namespace {
template <class F>
double median_ms(F&& work) {
  std::vector<double> times;
  for (int i = 0; i < 41; ++i) {
    const auto start = std::chrono::steady_clock::now();
    work();
    times.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
  }
  std::nth_element(times.begin(), times.begin() + 20, times.end());
  return times[20];
}
}  // namespace

int main(int argc, char** argv) {
  std::size_t kept = 0;  // so that no work can be left out
  for (int i = 1; i < argc; ++i) {
    std::ifstream in(argv[i], std::ios::binary);
    const Source source{argv[i], {std::istreambuf_iterator<char>(in), {}}};
    const Build build = read_build(source);
    const Assessment assessment = assess(build);
    const double read = median_ms([&] { kept += read_build(source).file.size(); });
    const double solved = median_ms([&] { kept += solve(build).inputs.all().size(); });
    const double assessed = median_ms([&] { kept += assess(build).checks.size(); });
    const double text = median_ms([&] { kept += text_report(assessment, TextStyle{}).size(); });
    const double json = median_ms([&] { kept += json_report(assessment).size(); });
    std::printf("%s: read %.3f ms, solve %.3f ms, solve and judge %.3f ms, text %.3f ms, JSON %.3f ms\n", argv[i], read,
                solved, assessed, text, json);
    const Solved model = solve(build);
    if (!model.raise) continue;
    const RaiseEffort& effort = model.raise->raise.effort;
    const double raised = median_ms([&] { kept += raise(model.raise->input).series.size(); });
    std::printf("  of which one coupled raise %.3f ms, %d right-hand sides, %.1f us each\n", raised, effort.rates,
                1e3 * raised / effort.rates);
  }
  return kept == 0;
}
