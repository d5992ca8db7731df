// The description that a command is about, and the ways from it to an assessment.
#pragma once
#include "description/settings.hpp"
#include "plan/assess.hpp"
#include "progress.hpp"
#include "words.hpp"
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lumwright::cli {
// More narrow no band that anyone can use; these keep under 300 MB.
inline constexpr std::uint64_t most_samples = 200'000;
/// --samples, or the fewer that a page of the guide takes. Throws UsageError.
std::size_t samples_of(const Words& words);
/// --seed. Throws UsageError.
std::uint64_t seed_of(const Words& words);

/// What every command wants that is about a description; a command that has more adds it in a struct of its own.
struct DescriptionOptions {
  std::string file{};          // "-" is standard input
  std::vector<description::Setting> set{};  // keys of the description that are changed
  bool untuned = false;        // what was tuned beside the description is ignored
  std::size_t samples = 0;     // samples to try for the bands; none: no bands
  std::uint64_t seed = 1;
  UnitSystem units = UnitSystem::as_written;
  Shelf* shelf = nullptr;
};
/// --set, --untuned and --units of a command, on that file. Throws UsageError.
DescriptionOptions description_options(const Words& words, const std::string& file);
/// The same with --samples and --seed.
DescriptionOptions sampled_options(const Words& words, const std::string& file);

/// A description and what was tuned for it. Must outlive whatever is solved from it.
struct Described {
  description::Build build;
  std::optional<model::Tuning> tuning;
  const model::Tuning* used() const { return tuning ? &*tuning : nullptr; }
};
/// The description of these options. Throws as read_file, read_build and tuned_beside.
Described described(const DescriptionOptions& options);
/// The samples that the options ask for; `progress` shows how far they are, and must outlive them.
plan::SamplesAsked samples_asked(const DescriptionOptions& options, Progress& progress);
/// What `judge` gives; on a shelf, what it gave before where the same was asked.
plan::Assessment judged_once(const DescriptionOptions& options, const std::function<plan::Assessment()>& judge);
/// The description of these options, assessed. Throws as `described`.
plan::Assessment assessed(const DescriptionOptions& options);
plan::Assessment assessed(const DescriptionOptions& options, const Described& told);
}  // namespace lumwright::cli
