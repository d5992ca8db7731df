// Pens, paper sizes and letter heights of the drawings.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
/// How one layer is drawn, on paper and in DXF.
struct Pen {
  std::string layer;
  std::string dxf_layer;
  int dxf_colour;
  std::string dxf_line;
  Length width;
  std::vector<Length> dashes;  // on, off, on, off...; empty: continuous
  std::array<int, 3> colour;   // red, green, blue, 0 to 255
  std::string legend;          // what the line means to the reader; empty: explains itself
  Basis basis{};
};
const std::vector<Pen>& pens();

struct PaperRow {
  std::string name;
  Length width;
  Length height;
  Basis basis{};
};
const std::vector<PaperRow>& papers();

/// Height of capital letters for a use: title, name, note, small. Throws std::logic_error for another word.
Length letter_height(std::string_view use);
/// Width of the margin that stays bare around the frame.
Length frame_margin();
}  // namespace lumwright::data
