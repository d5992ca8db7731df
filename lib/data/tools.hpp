// The tools of each step of the build sheet.
#pragma once
#include "data/basis.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct ToolRow {
  std::string step;
  std::vector<std::string> names;
  Basis basis{};
};
const std::vector<ToolRow>& tools();
}  // namespace lumwright::data
