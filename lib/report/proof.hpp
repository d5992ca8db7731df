// What to read on the finished unit, and what the readings say: as a page to read and as JSON.
#pragma once
#include "prove/prove.hpp"
#include "report/page.hpp"
#include <string>
#include <string_view>

namespace lumwright::report {
/// What to read, with what, where, and the band in which it should lie; on one screen, or `full` with how to read it,
/// what the instrument is good for and the cautions whole. `file` is the description's name.
std::string proof_sheet(const prove::Sheet& sheet, const TextStyle& style, bool full, std::string_view file);
/// Each reading against its band, what explains them best, what cannot be told from it, and what would tell.
std::string proof_report(const prove::Proved& proved, const TextStyle& style, bool full, std::string_view file);
/// One object, "format": "lumwright/1" with "proof": SI numbers with their unit. Throws std::logic_error for a number
/// that is not finite.
std::string proof_json(const prove::Sheet& sheet);
std::string proof_json(const prove::Proved& proved);
}  // namespace lumwright::report
