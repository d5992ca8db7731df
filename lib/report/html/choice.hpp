// A choice from a bin as one self-contained page.
#pragma once
#include "choose/choose.hpp"
#include "report/html/html.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
/// As `html_report`: no script, nothing fetched, well-formed XML too. Throws std::logic_error for a number that is not
/// finite.
std::string html_choice(const choose::Choice& choice, const TextStyle& style, const std::vector<Beside>& beside = {});
}  // namespace lumwright::report
