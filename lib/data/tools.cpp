#include "data/tools.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<ToolRow>& tools() {
  static const std::vector<ToolRow> all = read_all("tools", "tools", [](const Row& row) {
    return ToolRow{
        .step = row.text("step"), .names = row.texts("names"), .basis = row.basis()};
  });
  return all;
}
}  // namespace lumwright::data
