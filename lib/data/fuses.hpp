// Miniature fuses: standard ratings with their cold resistance, and the two rules for what a fuse carries for ever.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct FuseRow {
  Current rating;
  Band<Resistance> cold;
  Basis basis{};
};
/// By rising rating.
const std::vector<FuseRow>& fuses();

struct FuseRule {
  std::string id;         // "UL 248-14", "IEC 60127-2"
  double continuous;      // share of the rating that may flow continuously
  double opens;           // multiple of the rating at which it opens...
  Duration opens_within;  // ...within this time
  Basis basis{};
};
const std::vector<FuseRule>& fuse_rules();

/// What a fuse may be rated at, for the wire that it protects.
struct FuseOverWire {
  double share;  // of what the wire carries
  Basis basis{};
};
const FuseOverWire& fuse_over_wire();
}  // namespace lumwright::data
