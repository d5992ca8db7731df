// From weights to a verdict: what is likeliest, what cannot be told from it, and what would part the two.
#pragma once
#include "prove/detail/weigh.hpp"
#include "prove/prove.hpp"
#include <vector>

namespace lumwright::prove {
struct Taken {
  std::vector<bool> which;  // in the order of data::proofs()
  Read read;
};
/// The likeliest first; a cause is tied with the first while the odds between them are below
/// data::judging().told_apart.
std::vector<JudgedCause> ranked(const std::vector<Weighed>& weighed);
/// Fills in causes, what would part them, and what none of them explains.
void judge_causes(const SampledUnit& unit, const Cloud& sound, const Taken& taken,
                  const std::vector<Instrument>& instruments, Proved& proved);
}  // namespace lumwright::prove
