#include "data/limits.hpp"
#include <stdexcept>

namespace lumwright::data {
Row limit_row(std::string_view id) {
  for (const Row& row : rows("limits", "limits"))
    if (row.text("id") == id) return row;
  throw std::logic_error("limits.yaml has no row with the id " + std::string(id));
}
}  // namespace lumwright::data
