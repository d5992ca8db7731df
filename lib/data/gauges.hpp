// What a gauge number can mean: three different thicknesses, so the program asks for millimetres instead.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::data {
struct GaugeMeaning {
  std::string series;  // short: "SWG", "AWG", "US steel"
  std::string name;    // in full, with what the series is used for
  Length thickness;    // of sheet or wall; diameter of wire
  Basis basis{};
};

/// The thicknesses that `number` stands for, British first. Empty when the table (3 to 36) has no such number.
std::vector<GaugeMeaning> gauge_candidates(int number);

/// Thickness of sheet or wall, or diameter of wire: SWG by its table, AWG by its formula; nothing for a number that
/// neither has.
std::optional<Length> swg(int number);
std::optional<Length> awg(int number);
std::string swg_numbers();  // "3 to 36"
std::string awg_numbers();
}  // namespace lumwright::data
