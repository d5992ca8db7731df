// The order of work. Only the build sheet includes it.
#pragma once
#include "model/solved.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
struct BenchStep {
  std::string id;  // measure, flange, tube, join, cut, shape, assemble, wire, try, light: the steps of a caution
  std::string title, text;
  std::vector<std::string> ways{};  // of working that it takes besides: braze, roll, solder (data/tools.yaml)
};
std::vector<BenchStep> steps_of(const plan::Assessment& assessment, const model::Solved& solved,
                                const TextStyle& style);
}  // namespace lumwright::report
