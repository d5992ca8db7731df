// Choosing and checking the fuse at the battery.
#pragma once
#include "data/fuses.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::power {
/// The smallest standard rating that carries `most` for ever under `rule`. `most` is the current at the END of
/// discharge, when a constant-power load draws the most. Throws ModelError above the largest rating.
Current fuse_for(Current most, const data::FuseRule& rule);

/// Usual cold resistance of a rating; straight in logarithms between the listed ones. Throws ModelError outside them.
Resistance fuse_resistance(Current rating);
}  // namespace lumwright::power
