// What lies ready before the first cut: parts with their stock, and tools. Only the build sheet includes it.
#pragma once
#include "report/detail/build_sheet_steps.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
/// A size to work to, four digits at most and no idle noughts: "38 mm", "17.42 mm", "1 3/8 in", "0.678 in".
std::string bench_size(const model::Measure& size, const TextStyle& style);
/// Part, how many, and what it is, in the words in which it is bought. What is not described is left out.
std::vector<Page::Row> parts_list(const model::Solved& solved, const TextStyle& style);
/// The tools of these steps, each once, in the order in which they are taken up.
std::string tools_list(const std::vector<BenchStep>& steps);
}  // namespace lumwright::report
