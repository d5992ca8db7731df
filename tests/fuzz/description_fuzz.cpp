// Any bytes as a description: a Build that is written and read back to the same text, or faults that point into it.
#include "description/reader.hpp"
#include "description/writer.hpp"
#include "finite.hpp"
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  return fuzz::read_and(read_build, data, size, [](const Build& build) {
    fuzz::all_finite(build);
    const std::string text = write_build(build);
    try {
      fuzz::must(write_build(read_build({"again.yaml", text})) == text, "what is written reads back to the same");
    } catch (const InputError& error) {
      std::fprintf(stderr, "%s\nof\n%s", error.what(), text.c_str());
      fuzz::must(false, "what is written can be read");
    }
  });
}
