// The report as Markdown: the same words without the pictures, for a notebook or a forum.
#pragma once
#include "plan/report_data.hpp"
#include "report/page.hpp"
#include <string>
#include <string_view>

namespace lumwright::report {
/// CommonMark with pipe tables. What users and tables say is text: nothing of it becomes markup or a link.
std::string markdown_report(const plan::ReportData& data, const TextStyle& style);
/// Where a text stands: what begins a list or a heading at the head of a line means nothing behind other words.
enum class Stands { at_line_start, behind_words };
/// Text that CommonMark shows as it is, on one line; fit for a cell of a pipe table too. Nothing is escaped that needs
/// none, so that it reads as it is meant without being rendered.
std::string markdown_text(std::string_view text, Stands where = Stands::at_line_start);
}  // namespace lumwright::report
