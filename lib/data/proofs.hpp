// What to read on the finished unit: with what, where, how, and how well.
#pragma once
#include "data/basis.hpp"
#include "quantity/kind.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::data {
struct ProofRow {
  std::string id, name;  // the key of a proof file, and what it is called
  std::string of;        // the result or the solve that predicts it
  std::string tool, where, how;
  bool fire;                         // it is taken with the fire burning
  double within;                     // k = 2, over the reading
  std::string within_at_least;       // and besides, as written: its kind is the reading's
  std::string label;                 // a key that labels tell so and so well; empty: none
  double label_within;               // k = 2, over the reading
  std::vector<std::string> answers;  // of a reading in words: from the one that is wanted to the opposite
  Basis basis{};
};
/// In the order of least trouble.
const std::vector<ProofRow>& proofs();

/// Suction or pressure of the firebox at which a strip of paper is seen to move.
Pressure paper_bends_at();
/// How far the lowest cell of a sound set lies under the others, over the voltage of a cell: two standard deviations.
double uneven_cells();
/// Diameter of an axial fan's hub over that of its air passage.
double hub_share();
/// After how long a fire the gas is read.
Duration gas_is_read_after();
}  // namespace lumwright::data
