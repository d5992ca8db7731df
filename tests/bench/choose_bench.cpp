// How fast bins are ranked: the whole of 48,000 combinations, and how the time grows over bins of 1, 10 and 100 times a
// small one. Prints combinations a second, what was followed, and the memory.
#include "../choose/random_bin.hpp"
#include "choose/choose.hpp"
#include <chrono>
#include <cstdio>
#include <cstring>
#include <sys/resource.h>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::choose;

namespace {
double megabytes() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024.0;
}
void run(const char* what, BinSize size, unsigned threads) {
  const Bin bin = read_bin({"bench", RandomBin(7).text(size, false)});
  ChooseAsked asked;
  asked.threads = threads;
  const auto start = std::chrono::steady_clock::now();
  const Choice choice = choose::choose(bin, asked);
  const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
  const auto all = static_cast<double>(choice.effort.combinations);
  std::printf(
      "%s: %.0f combinations in %.2f s (%.0f/s), %zu supplies, %zu bounds, %zu raises, at most %.0f MB so far\n", what,
      all, seconds, all / seconds, choice.effort.supplies, choice.effort.bounds, choice.effort.raises, megabytes());
}
}  // namespace

int main(int argc, char** argv) {
  constexpr BinSize target{20, 10, 6, 10, 4};
  if (argc > 1 && std::strcmp(argv[1], "--target") == 0) {
    run("20 fans x 10 packs x 6 step-ups x 10 tubes x 4 engines, 2 threads", target, 2);
    return 0;
  }
  run("1x: 6 x 4 x 3 x 5 x 2, 2 threads", {6, 4, 3, 5, 2}, 2);
  run("10x: 12 x 8 x 5 x 5 x 3, 2 threads", {12, 8, 5, 5, 3}, 2);
  run("100x: 24 x 10 x 6 x 12.5 x 4, 2 threads", {24, 10, 6, 12, 4}, 2);
  run("20 fans x 10 packs x 6 step-ups x 10 tubes x 4 engines, 1 thread", target, 1);
  run("20 fans x 10 packs x 6 step-ups x 10 tubes x 4 engines, 2 threads", target, 2);
}
