// A choice from a bin as one self-contained page.
#pragma once
#include "choose/choose.hpp"
#include "report/html/html.hpp"
#include <string>
#include <vector>

namespace lumwright {
/// As `html_report`: no script, nothing fetched, well-formed XML too. Throws std::logic_error for a number that is not
/// finite.
std::string html_choice(const Choice& choice, const TextStyle& style, const std::vector<Beside>& beside = {});
}  // namespace lumwright
