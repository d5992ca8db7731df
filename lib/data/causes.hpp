// What may be wrong with a unit as it was made, and how surely two of such causes must be told apart.
#pragma once
#include "data/basis.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
/// How a cause moves one value of the model, from its mildest case to its gravest.
struct CauseMove {
  std::string key;  // of the model's inputs
  bool adds;        // a share of `of` is added; else the value is multiplied
  std::string of;   // "value", "one", "section of the tube", ...
  double from, to;
  double at(double u) const;  // in equal ratios, u from 0 to 1
};
struct CauseRow {
  std::string id, name;
  double odds;
  std::string needs;             // what the unit must have: "step-up", "several cells", ...; empty: nothing
  std::string fan;               // "stands", "blows"; empty: it does what it should
  std::vector<CauseMove> moves;  // the first is the one whose size is told
  std::string size;              // in words, {} for the size
  std::string sure, action;      // how to make sure, and what to do
  Basis basis{};
};
const std::vector<CauseRow>& causes();

struct Judging {
  double told_apart;  // odds
  std::size_t samples, regions;
  double parts_them;   // share
  double outside;      // share of sound units at each end
  double unexplained;  // chance
  std::size_t least_samples;
  double sound_odds;  // on the scale of the odds of the causes
};
const Judging& judging();
}  // namespace lumwright::data
