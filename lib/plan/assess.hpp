// The entry of the library: a description in, an assessment out.
#pragma once
#include "description/build.hpp"
#include "model/tuning.hpp"
#include "plan/assessment.hpp"
#include "plan/samples.hpp"
#include "quantity/format.hpp"

namespace lumwright::plan {
/// Solves draught, supply and fit as far as the description allows and runs every check on them.
/// Checks whose inputs are missing come back as `unknown` and name the keys. Throws nothing for any Build the reader
/// accepts: a part without a physical answer becomes a failed check that says why. `units` is for the sentences;
/// numbers are typed.
/// `tuning`, if any, is what measured lighting-ups of this engine have taught.
Assessment assess(const description::Build& build, UnitSystem units = UnitSystem::as_written,
                  const model::Tuning* tuning = nullptr);
/// The same with bands from many samples: results get their low and high, checks the share of samples in which they
/// hold, and a verdict gives way to the shares: it fails if it fails as described or holds in fewer than half of the
/// samples, and is to watch if it holds in fewer than nine of ten. Throws ModelError for more than 16 million samples.
Assessment assess(const description::Build& build, UnitSystem units, const model::Tuning* tuning,
                  const SamplesAsked& samples);
/// The two halves of it, for those who need the solved model as well. `judged` wants it from `solved_to_judge`, with
/// the same tuning and the same samples. Build and tuning must outlive the solved model.
model::Solved solved_to_judge(const description::Build& build, UnitSystem units, const model::Tuning* tuning,
                              const SamplesAsked& samples = {});
Assessment judged(const model::Solved& solved, const model::Tuning* tuning, const SamplesAsked& samples = {});

struct CheckName {
  std::string_view id, title, asks;
};
/// Every check there is, in the order they are shown.
std::vector<CheckName> check_names();
}  // namespace lumwright::plan
