// What a workshop could change so that a check passes: tried on the whole model, not guessed.
#pragma once
#include "data/moves.hpp"
#include "description/settings.hpp"
#include "model/solved.hpp"
#include "plan/assess.hpp"
#include <vector>

namespace lumwright::plan {
/// One change of a build, in the words of the bench and as settings.
struct Change {
  std::string words;
  std::vector<description::Setting> settings;
};
/// The values that a row of data/moves.yaml would give the build, the least change first; none where the build does not
/// say what is to be changed. `central` is the build solved as described.
std::vector<Change> changes_of(const data::MoveRow& row, const description::Build& build, const model::Solved& central);

/// Tries changes for the gravest checks that fail or are to be watched, at most `most` of them, and puts the least
/// change that clears each and spoils no other check, into its finding. Checks that are cleared by a
/// habit, or that fail in samples alone, are left out. Every change is set as its text says, and judged by `assess`;
/// where samples are asked for, in some of them too.
void try_moves(Assessment& assessment, const description::Build& build, UnitSystem units, const model::Tuning* tuning,
               const SamplesAsked& samples = {}, std::size_t most = 5);
}  // namespace lumwright::plan
