// How the options want an answer to look.
#pragma once
#include "command.hpp"
#include "quantity/format.hpp"
#include "report/page.hpp"
#include "terminal.hpp"

namespace lumwright::cli {
enum class Format { text, json, csv };
/// --format.
inline Format format_of(const Words& words) {
  const std::string& word = words.text("--format");
  return word == "json" ? Format::json : word == "csv" ? Format::csv : Format::text;
}
/// Where the two lines go of an answer in that form.
inline Head head_of(Format format) { return format == Format::csv ? Head::apart : Head::before; }
/// --units.
inline UnitSystem units_of(const Words& words) {
  return words.choice<UnitSystem>(
      "--units",
      {{"as-written", UnitSystem::as_written}, {"metric", UnitSystem::metric}, {"imperial", UnitSystem::imperial}});
}
/// --units and --colour.
inline report::TextStyle style_of(const Words& words) {
  const std::string& colour = words.text("--colour");
  return {.units = units_of(words),
          .colour = !words.around.plain && (colour == "always" || (colour == "auto" && terminal_takes_colour()))};
}
}  // namespace lumwright::cli
