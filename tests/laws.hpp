// Published rows, each sent to the law that its `what` names.
#pragma once
#include "published.hpp"
#include <doctest/doctest.h>
#include <string>

namespace lumwright {
/// Runs every row of tests/published/<topic>.yaml through `laws` (a map from `what` to a function of the row); a row
/// that names no law fails. Returns how many there were.
template <class Laws>
int follow(std::string_view topic, const Laws& laws) {
  int rows = 0;
  for (const data::Row& row : published(topic)) {
    const std::string id = row.text("id"), what = row.text("what");
    CAPTURE(id);
    CAPTURE(what);
    const auto law = laws.find(what);
    REQUIRE(law != laws.end());
    law->second(row);
    ++rows;
  }
  return rows;
}
}  // namespace lumwright
