// Text to lines that fit a page: counts columns rather than bytes, and never parts a number from its unit.
#pragma once
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::report {
/// One line of text fit for a page: tabs and line ends are blanks, control characters and bytes that are no UTF-8
/// question marks, marks that turn the direction of writing are left out.
std::string legible(std::string_view text);

/// Columns that legible text takes: a letter is one, an accent set behind its letter none, a character of the East
/// Asian wide forms two.
std::size_t columns(std::string_view text);

/// Lines of at most `width` columns, broken at blanks. "0.25 mm", "1 1/2 in" and "3.5 bar g" stay whole; only a word
/// that is by itself wider than the page is cut. Throws std::logic_error for a width under 2.
std::vector<std::string> wrap(std::string_view text, std::size_t width);
}  // namespace lumwright::report
