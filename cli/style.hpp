// How the options want a report to look.
#pragma once
#include "options.hpp"
#include "report/page.hpp"
#include "terminal.hpp"

namespace lumwright::cli {
inline TextStyle style_of(const Options& options) {
  const bool wanted = options.colour == Colour::always;
  return {.units = options.units,
          .colour = wanted || (options.colour == Colour::when_terminal && terminal_takes_colour())};
}
}  // namespace lumwright::cli
