// The lines that head every output, page, template and sheet.
#pragma once
#include <string>
#include <vector>

namespace lumwright::data {
/// The `head` of the cautions that have one, in the order of their files: "Out of doors only: carbon monoxide",
/// "Water first, then the fire".
const std::vector<std::string>& first_words();
/// Each on a line of its own behind `mark`: "# ..." for a file of YAML, nothing for text.
std::string first_lines(const std::string& mark = "");
}  // namespace lumwright::data
