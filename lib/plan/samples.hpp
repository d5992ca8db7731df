// The same build in many samples: each draws every value from its spread, solves everything, and judges every check.
#pragma once
#include "model/solved.hpp"
#include <algorithm>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::plan {
// A band runs between these shares of the samples: eight of ten lie in it.
constexpr double low_end = 0.1, high_end = 0.9;

struct SamplesAsked {
  std::size_t count = 0;  // none: no bands
  std::uint64_t seed = 1;
  unsigned threads = 2;                                              // of no influence on what comes out
  std::function<void(std::size_t done, std::size_t of)> progress{};  // called from any of the threads, one at a time
};

/// A number of one kind in each sample; not a number where it does not exist there (a time that is never reached).
struct SampleColumn {
  std::string key;
  std::vector<double> si;
};
struct SampleWords {
  std::string key;
  std::vector<std::string> words;
};
/// What one sample makes of a check. `still`: it fails, for a part of the build does not work there at all; of several
/// checks that the same stops, the first fails and the others give no answer.
enum class Sampled : unsigned char { passes, fails, watched, no_answer, still };
struct SampleCheck {
  std::string key;  // its id
  std::vector<Sampled> answers;
};
struct Samples {
  std::size_t count;
  std::vector<SampleColumn> inputs{};   // with a spread, by key
  std::vector<SampleColumn> chances{};  // what each of them drew by itself, 0 to 1, before others pulled it along
  std::vector<SampleColumn> results{};  // as the build itself has them
  std::vector<SampleWords> words{};     // results that are text
  std::vector<SampleCheck> checks{};    // those that are asked in samples
  model::Inputs drawn_from{};           // the spreads that were drawn from
};
/// The column of a key, or null where the samples do not follow it.
template <class Columns>
auto find_column(Columns& columns, std::string_view key) -> decltype(columns.data()) {
  const auto found =
      std::find_if(columns.begin(), columns.end(), [&](const auto& column) { return column.key == key; });
  return found == columns.end() ? nullptr : &*found;
}

/// Draws and solves `asked.count` samples. `central` is the build as it stands: its inputs and results are the ones
/// that are followed. Inputs are spread over a scrambled Sobol sequence, shaped and correlated as data/spreads.yaml
/// says; what the owner wants is not drawn. The same for any number of threads. Throws ModelError for more than 16
/// million samples.
Samples try_samples(const description::Build& build, const model::Solved& central, const model::Tuning* tuning,
                    const SamplesAsked& asked);

/// Gives results their bands. A band runs from the tenth to the ninetieth hundredth of the samples; where the value as
/// described lies outside (a spread to one side), the band is widened to it. A time that is never reached counts as
/// longer than all others.
void add_result_bands(std::vector<model::Result>& results, const Samples& samples);

/// The value below which a share `u` of a spread lies: uniform between low and high, or a triangle with its peak at the
/// value (JCGM 101:2008, 6.4.2 and 6.4.5, the triangle here with its own mode).
double drawn_from(const model::Input& input, std::string_view key, double u);

/// A description in which a size without a spread has that of its measuring, so that samples draw it.
description::Build with_measuring_spread(const description::Build& build);
/// What that takes for granted of shares and depths that are written without a spread.
std::vector<model::Assumed> measuring_spreads(const description::Build& build);
}  // namespace lumwright::plan
