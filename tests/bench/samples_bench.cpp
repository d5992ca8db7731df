// How many samples a second are solved and judged, with one thread and with two, and what the second one gains.
#include "description/reader.hpp"
#include "plan/assess.hpp"
#include <chrono>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;

namespace {
double seconds(const Build& build, unsigned threads, std::size_t count) {
  const auto start = std::chrono::steady_clock::now();
  SamplesAsked asked;
  asked.count = count;
  asked.threads = threads;
  const Assessment assessment = assess(build, UnitSystem::as_written, nullptr, asked);
  const auto end = std::chrono::steady_clock::now();
  return assessment.bands && assessment.bands->samples == count ? std::chrono::duration<double>(end - start).count()
                                                               : 0.0;
}
}  // namespace

int main(int argc, char** argv) {
  constexpr std::size_t count = 2000;
  for (int i = 1; i < argc; ++i) {
    std::ifstream in(argv[i], std::ios::binary);
    const Build build = read_build({argv[i], {std::istreambuf_iterator<char>(in), {}}});
    const double one = seconds(build, 1, count), two = seconds(build, 2, count);
    std::printf("%s: %zu samples, 1 thread %.2f s (%.0f/s), 2 threads %.2f s (%.0f/s), scaling %.2f\n", argv[i], count,
                one, count / one, two, count / two, one / two);
  }
}
