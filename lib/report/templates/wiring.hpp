// The circuit of the fan: what is wired to what, with which wire, and what flows.
#pragma once
#include "drawing/drawing.hpp"
#include "model/solved.hpp"
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <optional>

namespace lumwright::report {
/// One sheet, symbols after IEC 60617, with voltages and currents at both ends of the charge; nothing where no pack is
/// described or it cannot be solved.
std::optional<drawing::Sheet> wiring_diagram(const plan::Assessment& assessment, const model::Solved& solved,
                                             const TextStyle& style, const drawing::Paper& paper);
}  // namespace lumwright::report
