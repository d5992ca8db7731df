// The raise, or a discharge of the pack, through time: as a table for spreadsheets or as JSON.
#pragma once
#include "plan/assessment.hpp"
#include "quantity/format.hpp"
#include "report/no_answer.hpp"
#include <string>
#include <string_view>

namespace lumwright::report {
/// One series as comma-separated values (RFC 4180, but lines end with a line feed): a header with the unit behind every
/// name ("water_temperature_K"), then a line for each time. The units are SI, or those of a system that is asked for, one
/// for a column. Decimals have a point whatever the locale; six figures, more than the model is good for. The cells of a column whose source is not described are empty. Text that a spreadsheet would take for
/// a formula gets an apostrophe before it. Throws NoAnswer.
std::string trace_csv(const plan::Assessment& assessment, std::string_view series,
                      UnitSystem units = UnitSystem::as_written);

/// {"format": "lumwright-trace/1", "build", "series": {name: {column: [...]}}, "units": {name: {column: symbol}},
/// "events": [{"kind", "t"}]}, all in SI; only the series called `series`, or all that there are if it is empty. The
/// events are those of the raise.
/// Throws NoAnswer if the one asked for, or the raise where none is, is not there.
std::string trace_json(const plan::Assessment& assessment, std::string_view series);
}  // namespace lumwright::report
