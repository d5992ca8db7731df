// What a question tells of a build: its description, what a log has taught, units and samples.
#pragma once
#include "asked.hpp"
#include "description/build.hpp"
#include "plan/assess.hpp"
#include "report/page.hpp"
#include <optional>

namespace lumwright::page {
struct Described {
  /// Of `text`, called `name`, with `tuned`, `units` and `samples` where they are given. Throws InputError as the
  /// readers do.
  explicit Described(const Json& question);
  const model::Tuning* used() const { return tuning ? &*tuning : nullptr; }

  description::Build build;
  std::optional<model::Tuning> tuning;
  UnitSystem units;
  plan::SamplesAsked samples;
};
/// How the page writes: in these units, and for one who sits before it.
inline report::TextStyle style_of(const Described& told) {
  return {.units = told.units, .front = description::FrontEnd::page};
}
}  // namespace lumwright::page
