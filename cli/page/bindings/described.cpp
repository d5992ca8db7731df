#include "described.hpp"
#include "description/reader.hpp"
#include "tune/tune.hpp"

namespace lumwright::page {
namespace {
UnitSystem units_called(const std::string& word) {
  return word == "metric" ? UnitSystem::metric : word == "imperial" ? UnitSystem::imperial : UnitSystem::as_written;
}
std::optional<model::Tuning> tuning_in(const Json& question) {
  if (question.value("tuned", "").empty()) return std::nullopt;
  return tune::tuning_of(description::read_tuned(source_of(question, "tuned", "what the log taught")));
}
}  // namespace

Described::Described(const Json& question)
    : build(description::read_build(source_of(question, "text", question.value("name", "build.yaml")))),
      tuning(tuning_in(question)),
      units(units_called(question.value("units", ""))),
      samples{.count = question.value("samples", std::size_t{0})} {}
}  // namespace lumwright::page
