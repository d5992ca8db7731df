// The description that a command is about, and the ways from it to an assessment.
#pragma once
#include "options.hpp"
#include "plan/assess.hpp"
#include "progress.hpp"
#include <optional>

namespace lumwright::cli {
/// A description and what was tuned for it. Must outlive whatever is solved from it.
struct Described {
  Build build;
  std::optional<Tuning> tuning;
  const Tuning* used() const { return tuning ? &*tuning : nullptr; }
};
/// The description of these options. Throws as read_file, read_build and tuned_beside.
Described described(const Options& options);
/// The samples that the options ask for; `progress` shows how far they are, and must outlive them.
SamplesAsked samples_asked(const Options& options, Progress& progress);
/// The description of these options, assessed. Throws as `described`.
Assessment assessed(const Options& options);
Assessment assessed(const Options& options, const Described& told);
}  // namespace lumwright::cli
