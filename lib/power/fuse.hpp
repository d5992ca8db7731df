// Choosing and checking the fuse at the battery.
#pragma once
#include "data/fuses.hpp"
#include "quantity/quantity.hpp"

namespace lumwright {
/// The smallest standard rating that carries `most` for ever under `rule`. `most` is the current at the END of
/// discharge, when a constant-power load draws the most. Throws ModelError above the largest rating.
Current fuse_for(Current most, const data::FuseRule& rule);

struct FuseCheck {
  double load_share;      // of the rating
  bool carries;           // the continuous share of the rule is not exceeded
  double short_multiple;  // what a short carries at first, over the rating
  bool short_opens;       // ... is at least what the rule says must open it
};
struct FuseDuty {
  Current rating;
  Current most;     // in service
  Current shorted;  // pack voltage over pack resistance
};
/// Throws ModelError unless all are positive.
FuseCheck check_fuse(const FuseDuty& duty, const data::FuseRule& rule);

/// Usual cold resistance of a rating; straight in logarithms between the listed ones. Throws ModelError outside them.
Resistance fuse_resistance(Current rating);
}  // namespace lumwright
