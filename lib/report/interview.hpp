// What a first, short description tells already, and what it still lacks.
#pragma once
#include "report/page.hpp"
#include <string>

namespace lumwright::report {
/// The verdict, the chief answers, what is missing for which of the others, what widens the answers, and what to
/// measure next.
std::string first_answers(const plan::Assessment& assessment, const TextStyle& style);
}  // namespace lumwright::report
