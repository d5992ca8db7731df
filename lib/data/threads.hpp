// Screw threads of small work: sizes, tapping drills and clearance holes, and how much plate they need.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
/// Depths of a thread form as multiples of the pitch.
struct ThreadForm {
  std::string id;                        // "ba", "metric", "me", "unc", "unf"
  std::string name;                      // in full
  double depth;                          // per side: what 100 % of thread means
  double pitch_line;                     // major less pitch diameter
  double nut_minor;                      // major less the bore of a full nut
  double root;                           // major less the core of the screw
  std::optional<double> handbook_depth;  // on the diameter: the deeper basis of American tables, where there is one
  Basis basis{};
};

struct ThreadRow {
  std::string name;  // "8BA", "M3", "1/4x40 ME", "4-40 UNC"
  std::string form;  // a ThreadForm's id
  Length major;
  Length pitch;
  std::optional<Length> depth;  // per side, where the standard tables it (BA)
  Length tap;                   // tapping drill of the usual tables
  std::optional<Length> fine;   // clearance holes
  Length medium;
  std::optional<Length> coarse;
  Basis basis{};
};
const std::vector<ThreadRow>& threads();
/// Throws std::logic_error for an id that the table lacks.
const ThreadForm& thread_form(std::string_view id);

/// Length of thread that a metal must give, in major diameters.
struct EngagementRow {
  std::string metal;  // as in metals.yaml
  double least;
  double prefer;
  bool never;  // not to be tapped at all
  Basis basis{};
};
/// The row for that metal; throws ModelError for one that the table lacks.
const EngagementRow& engagement_rule(std::string_view metal);
}  // namespace lumwright::data
