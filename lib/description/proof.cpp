#include "description/proof.hpp"
#include "data/proofs.hpp"
#include "description/detail/part_reader.hpp"

namespace lumwright::description {
namespace {
/// Counts what was read; a faulty value has had its complaint.
struct ReadingCount {
  int values = 0;
  template <class Value, class... Rest>
  void operator()(Field, const Value& value, Rest&&...) {
    values += value || value.at.column > 1;
  }
};
std::vector<input::Fault> contradictions_of(const Proof& proof) {
  std::vector<input::Fault> faults;
  ReadingCount count;
  part::ProofReadings::fields(proof.readings, count);
  if (count.values == 0)
    faults.push_back(
        {{}, "readings", "nothing was read", "as in `readings: { pack_rest: 8.31 V, suction: 4.2 mmH2O }`"});
  const auto& rest = proof.readings.pack_rest;
  const auto& loaded = proof.readings.pack_loaded;
  if (rest && loaded && loaded.band->low > rest.band->high)
    faults.push_back({loaded.at, "readings.pack_loaded",
                      fmt::format("a pack falls under load: expected no more than {} at rest, got '{}'", written(rest),
                                  written(loaded)),
                      "see whether the two were changed over"});
  return faults;
}
}  // namespace

std::vector<std::string> paper_words() { return data::proofs().front().answers; }

Proof read_proof(const input::Source& source) {
  Proof proof = read_parts<Proof>(source, "readings of a finished unit", "day: 3 May", contradictions_of);
  proof.file = source.name;
  return proof;
}
}  // namespace lumwright::description
