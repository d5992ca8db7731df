// All files of `draw`: templates as PDF, SVG and DXF, a table of co-ordinates, and the build sheet.
#pragma once
#include "description/ways.hpp"
#include "drawing/drawing.hpp"
#include "model/solved.hpp"
#include "plan/assessment.hpp"
#include "quantity/format.hpp"
#include "report/named_text.hpp"
#include "report/no_answer.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
struct DrawingWish {
  std::string paper;  // "A4", "Letter" or "A3"
  drawing::PrintOptions print;
  bool draft;                                 // draw what fails, and stamp it
  UnitSystem units = UnitSystem::as_written;  // of the build sheet
  description::FrontEnd front = description::FrontEnd::terminal;
};
/// Throws NoAnswer that names the checks of geometry that fail unless `draft`, NothingToMake where there is no part,
/// ModelError for another paper.
std::vector<NamedText> drawing_files(const plan::Assessment& assessment, const model::Solved& solved,
                                     const DrawingWish& wish);
}  // namespace lumwright::report
