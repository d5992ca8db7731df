// How far the reckoning was held against measurement, in words that need no handbook.
#pragma once
#include "description/ways.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
struct HeldLine {
  std::string part, what, where, measured, ours, apart, source;
};
/// A line a datum, part by part.
std::vector<HeldLine> held_lines();
/// What the table is, how its last column reads, and how many rows stand how.
std::string held_summary();

struct NeverLine {
  std::string what, meanwhile, afternoon;
};
/// What nobody has published, and what one owner could time to close it.
std::vector<NeverLine> never_lines(description::FrontEnd front);

/// All of it as markdown, below headings of this level: for the report, and for DEVELOPERS.md.
std::string held_markdown(int level, description::FrontEnd front);
}  // namespace lumwright::report
