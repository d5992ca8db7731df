// Any bytes as the log of a lighting-up, as a season, as readings of a finished unit, and as a file of tuned values.
#include "description/prior_record.hpp"
#include "description/proof.hpp"
#include "description/season.hpp"
#include "description/tuned_file.hpp"
#include "finite.hpp"
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::read_and(read_log, data, size, [](const Log& log) { fuzz::all_finite(log); });
  fuzz::read_and(read_season, data, size, [](const Season& season) { fuzz::all_finite(season); });
  fuzz::read_and(read_prior_record, data, size, [](const PriorRecord& record) { fuzz::all_finite(record); });
  fuzz::read_and(read_proof, data, size, [](const Proof& proof) { fuzz::all_finite(proof); });
  return fuzz::read_and(read_tuned, data, size, [](const TunedFile& tuned) {
    fuzz::all_finite(tuned);
    const std::string text = write_tuned(tuned);
    fuzz::must(write_tuned(read_tuned({"again.yaml", text})) == text, "what is written reads back to the same");
  });
}
