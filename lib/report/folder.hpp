// All that a report writes into a folder: the pages and tables, and the drawings beside them.
#pragma once
#include "plan/report_data.hpp"
#include "report/drawings.hpp"
#include "report/named_text.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
struct Folder {
  std::vector<NamedText> files;  // report.html first
  std::string not_drawn;         // why there are no drawings; empty where there are
};
/// The rest is worth having without drawings: where they cannot be drawn it says why, in a file too where the reason is
/// none of the checks. Throws std::logic_error as report_files does.
Folder report_folder(const plan::ReportData& data, const model::Solved& solved, const DrawingWish& wish);
}  // namespace lumwright::report
