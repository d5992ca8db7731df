// The order of work. Only the build sheet includes it.
#pragma once
#include "plan/solved.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright {
struct BenchStep {
  std::string title, text;
  std::vector<std::string> cautions;  // ids; shown where they apply to this build
};
std::vector<BenchStep> steps_of(const Assessment& assessment, const Solved& solved, const TextStyle& style);
}  // namespace lumwright
