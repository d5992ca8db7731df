// Words on drawings: made harmless, measured, and put into the characters that each format knows.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::drawing {
/// One line without control characters, broken bytes, invisible or direction-changing characters (a question mark each;
/// blanks for tabs and line breaks), at most `most` characters, the last of them "..." where it was longer.
std::string clean(std::string_view text, std::size_t most = 200);
/// The lines of a text, each cleaned; at most twelve.
std::vector<std::string> clean_lines(std::string_view text);

/// Width of a cleaned line in units of the height of its capitals, set in Helvetica (Adobe's metrics of the core fonts;
/// exact for ASCII and the signs of drawings, rounded up for other letters).
double width_to_height(std::string_view line);
/// Height of capitals over the size of the type, Helvetica.
inline constexpr double capital_share = 0.718;
/// The type that stands in for Helvetica where it is missing may run wider by this much.
inline constexpr double wider = 1.15;
/// Shortens a line until it is no wider than `widths` heights.
std::string fitted(std::string_view line, double widths);

/// Windows code page 1252, as the core fonts of PDF have it; the diameter sign becomes a crossed O, others a question
/// mark.
std::string to_cp1252(std::string_view line);
/// ASCII as DXF R12 readers take it: %%c %%d %%p for diameter, degree and plus-minus, \U+00B5 for other Latin letters,
/// a question mark for the rest; what would read as a code in the user's words is defused.
std::string to_dxf(std::string_view line);

/// A number of a dimension: two decimals at most, no idle zeros.
std::string dimension_number(double number, int decimals = 2);
}  // namespace lumwright::drawing
