// All files of `draw`: templates as PDF, SVG and DXF, a table of co-ordinates, and the build sheet.
#pragma once
#include "drawing/drawing.hpp"
#include "model/solved.hpp"
#include "plan/assessment.hpp"
#include "quantity/format.hpp"
#include "report/named_text.hpp"
#include <stdexcept>
#include <string>
#include <vector>

namespace lumwright {
/// The build fails a check of geometry; what() names them.
struct NotDrawn : std::runtime_error {
  using std::runtime_error::runtime_error;
};
struct DrawingWish {
  std::string paper;  // "A4" or "Letter"
  drawing::PrintOptions print;
  bool draft;                                 // draw what fails, and stamp it
  UnitSystem units = UnitSystem::as_written;  // of the build sheet
};
/// Throws NotDrawn unless `draft`, NothingToMake where there is no part, ModelError for another paper.
std::vector<NamedText> drawing_files(const Assessment& assessment, const Solved& solved, const DrawingWish& wish);
}  // namespace lumwright
