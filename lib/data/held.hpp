// How far the reckoning was held against something that somebody measured, and what nobody has.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::data {
/// One datum. Its numbers are in `unit`, a word that may be missing.
struct HeldRow {
  std::string id, part, what, where, unit;
  std::optional<double> low, high;  // that was measured; one of them where only a bound is known
  double read_within;               // share: how finely it could be read
  Band<double> ours;                // tests/held demands it of the model
  bool made_of;                     // our own table was made of it
  std::string why;                  // it stands although we miss it
  std::string seen;                 // "full text", "excerpt", "as quoted by another"
  Basis basis{};
};
/// Part by part.
const std::vector<HeldRow>& held_rows();

/// How ours stands to it: inside what was measured, as finely as it could be read; or our spread reaches it; or not.
enum class Held { inside, reached, missed };
Held held(const HeldRow& row);
/// By what share ours lies beyond the nearest end of what was measured; nothing inside, or where that end is nought.
std::optional<double> apart(const HeldRow& row);

struct NeverMeasured {
  std::string id, what, meanwhile, afternoon;  // how we do without; what one owner could time to close it
};
const std::vector<NeverMeasured>& never_measured();
}  // namespace lumwright::data
