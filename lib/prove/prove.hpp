// The finished unit: what to read on it, in which band each reading should lie, and what is wrong where some do not.
#pragma once
#include "data/causes.hpp"
#include "data/proofs.hpp"
#include "description/proof.hpp"
#include "model/tuning.hpp"
#include "plan/assessment.hpp"
#include "plan/samples.hpp"
#include "quantity/format.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::prove {
/// A reading of the unit as planned.
struct Expected {
  const data::ProofRow* row;
  std::string why_not;                             // nothing is predicted: why, and which key would change it
  std::optional<model::Measure> value, low, high;  // as `check`: eight of ten samples between low and high
  std::optional<model::Measure> least, most;       // read beyond these it is not as planned, the instrument allowed for
  std::string word;                                // of a reading in words: the likeliest
};
enum class Side { fits, low, high };
struct JudgedReading {
  std::size_t expected;  // of the sheet
  model::Measure read;
  std::string word;  // of a reading in words
  double below;      // share of sound units, each read so, that show less
  Side side;
  bool used;
};
/// A cause, or nothing wrong, after the readings.
struct JudgedCause {
  const data::CauseRow* cause;  // null: nothing is wrong
  double share;                 // of all causes, by how well each explains the readings and how often it is met
  bool tied;                    // these readings cannot tell it from the first
  std::optional<model::Measure> size{}, size_low{}, size_high{};  // of its first move: middle and eight of ten
};
/// A further reading that would part the first two causes.
struct Parting {
  const data::ProofRow* row;
  const data::CauseRow *first, *second;               // as they stand in the list
  std::optional<model::Measure> of_first, of_second;  // what each would show; of the paper nothing
  double decides;                                     // in this share of cases
};
struct NotAsked {
  const data::CauseRow* cause;
  std::string why;
};
struct Sheet {
  std::string name;
  std::vector<Expected> readings;  // in the order of least trouble
  std::size_t samples;
  std::vector<plan::Caution> cautions;
};
struct Proved {
  Sheet sheet;
  std::vector<JudgedReading> readings;  // in the order of the sheet
  std::vector<JudgedCause> causes;      // the likeliest first
  std::optional<Parting> parting;
  bool unexplained;                    // none of these causes would show such readings
  std::optional<std::size_t> suspect;  // then the reading that fits the others least, of `readings`
  std::vector<NotAsked> not_asked;
  bool sound() const { return !unexplained && causes.front().cause == nullptr; }
};

/// What to read. `asked` without samples leaves the bands out.
Sheet sheet_of(const description::Build& build, const model::Tuning* tuning, const plan::SamplesAsked& asked);
/// The readings against the sheet, and the causes weighed. The place is that of the readings where they give one.
/// Throws ModelError where no reading can be used, or where too few samples are asked for.
Proved prove(const description::Build& build, const model::Tuning* tuning, const description::Proof& proof,
             const plan::SamplesAsked& asked);
}  // namespace lumwright::prove
