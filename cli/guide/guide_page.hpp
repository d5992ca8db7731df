// The guide as one self-contained page in the style of the report.
#pragma once
#include "guide/facts.hpp"
#include <functional>
#include <string>

namespace lumwright::cli {
/// Every page of the guide, filled. `program` is its name and version; `progress` is told how many pages are done.
/// Throws std::logic_error, with the page, for whatever in a page stands for nothing.
std::string guide_html(Facts& facts, const std::string& program,
                       const std::function<void(std::size_t done, std::size_t of)>& progress);
}  // namespace lumwright::cli
