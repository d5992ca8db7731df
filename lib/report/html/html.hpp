// The report as one self-contained page: to read at the bench, on a phone or on paper.
#pragma once
#include "plan/report_data.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
/// A file that lies beside the report.
struct Beside {
  std::string name;  // "raise.csv", "templates.pdf"
  std::string what;  // "the way to steam, for a spreadsheet"
};

/// HTML that is well-formed XML too. No script, nothing fetched, no inline style: the page says so itself (its content
/// security policy). What is read first prints on two sheets; the appendix is folded, and printed as far as it is open.
/// `beside` is listed at the end with links. Throws std::logic_error for a number that is not finite.
std::string html_report(const plan::ReportData& data, const TextStyle& style, const std::vector<Beside>& beside = {});
}  // namespace lumwright::report
