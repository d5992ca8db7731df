// Every text file of a report, by name: what a command writes into a folder.
#pragma once
#include "choose/choose.hpp"
#include "report/html/html.hpp"
#include "report/named_text.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
/// report.html first, then report.md, report.json, checks.csv, assumed.csv, and of what was solved raise.csv,
/// discharge.csv, light-ups.csv, draught.csv. `drawings` are files that the caller puts beside them; the page links to
/// all. Throws std::logic_error for a number that is not finite.
std::vector<NamedText> report_files(const plan::ReportData& data, const TextStyle& style,
                                    const std::vector<Beside>& drawings = {});
/// choice.html first, then choice.txt as wide as 80 columns, choice.json and choice.csv. Throws as report_files does.
std::vector<NamedText> choice_files(const choose::Choice& choice, const TextStyle& style);
}  // namespace lumwright::report
