// Between pass, watch and fail: the limits that no table of parts or materials gives.
#pragma once
#include "data/table.hpp"
#include <string_view>

namespace lumwright::data {
/// The value of the row with that id, the check and what is limited: "power.sag pressure". Throws std::logic_error for one
/// that the table lacks or of another kind. Reads the table: keep what it returns in a static.
template <class Q>
Q limit(std::string_view id) {
  return row_with_id("limits", "limits", id).quantity<Q>("value");
}
}  // namespace lumwright::data
