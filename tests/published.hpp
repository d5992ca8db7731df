// Values from outside the project: the rows of tests/published/<topic>.yaml, each with its source and standing.
#pragma once
#include "data/table.hpp"
#include <string_view>
#include <vector>

namespace lumwright {
/// The rows of list `list` in tests/published/<topic>.yaml. Throws if the file or list is missing or a row has no
/// source.
std::vector<data::Row> published(std::string_view topic, std::string_view list = "rows");
}  // namespace lumwright
