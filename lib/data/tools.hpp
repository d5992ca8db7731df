// The tools of each step of the build sheet.
#pragma once
#include <string>
#include <vector>

namespace lumwright::data {
struct ToolRow {
  std::string step;
  std::vector<std::string> names;
  std::string source, standing;
};
const std::vector<ToolRow>& tools();
}  // namespace lumwright::data
