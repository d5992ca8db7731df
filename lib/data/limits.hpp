// Between pass, watch and fail: the limits that no table of parts or materials gives.
#pragma once
#include "data/table.hpp"
#include <string_view>

namespace lumwright::data {
/// The row of limits.yaml with that id, as the check and what is limited: "power.sag pressure". Throws std::logic_error
/// for one that the table lacks or of another kind. Reads the table: keep what it returns in a static.
Row limit_row(std::string_view id);
template <class Q>
Q limit(std::string_view id) {
  return limit_row(id).quantity<Q>("value");
}
}  // namespace lumwright::data
