// Brass tube that shops stock, and how far a drawn tube may stray from its nominal size.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct TubeRow {
  std::string name;    // as it is asked for: "21/32 in x 0.014 in"
  std::string series;  // "imperial telescoping", "metric 0.45 wall"...
  Length outside;
  Length wall;
  bool documented;  // seen in a list of sizes; otherwise the row continues the series by arithmetic: ask the stockist
  Basis basis{};
};
const std::vector<TubeRow>& tubes();

/// How far the mean outside diameter of drawn tube may lie from nominal, either way, for over < nominal <= upto.
struct TubeTolerance {
  Length over;
  Length upto;
  Length within;
  Basis basis{};
};
const std::vector<TubeTolerance>& tube_tolerances();
}  // namespace lumwright::data
