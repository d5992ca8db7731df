// Any bytes as a bin: items with finite numbers and no more combinations than are looked at, or faults.
#include "description/bin.hpp"
#include "finite.hpp"
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  return fuzz::read_and(read_bin, data, size, [](const Bin& bin) {
    fuzz::all_finite(bin);
    fuzz::must(combinations(bin) > 0 && combinations(bin) <= most_combinations, "a bin is neither empty nor endless");
    for (const part::BinEngine& engine : bin.engines)
      for (const part::BinTube& tube : bin.tubes) (void)tube_for(tube, engine);
  });
}
