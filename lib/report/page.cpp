#include "report/page.hpp"
#include "data/first_words.hpp"
#include "report/detail/wrap.hpp"
#include <algorithm>
#include <stdexcept>

namespace lumwright::report {
namespace {
constexpr std::size_t indent_of_label = 2, indent_of_remark = 6,
                      margin = 11;  // "unknown", the longest label, and a gap
constexpr std::size_t between = 2;
constexpr std::size_t narrowest = 2;  // of a column: wrap() takes no less

std::string blanks(std::size_t n) { return std::string(n, ' '); }
std::string padded(std::string text, std::size_t width) {
  const std::size_t used = columns(text);
  return used < width ? text + blanks(width - used) : text;
}
const char* escape(Ink ink) {  // ECMA-48 SGR
  switch (ink) {
    case Ink::plain:
      return "";
    case Ink::strong:
      return "\x1b[1m";
    case Ink::faint:
      return "\x1b[2m";
    case Ink::good:
      return "\x1b[32m";
    case Ink::care:
      return "\x1b[33m";
    case Ink::bad:
      return "\x1b[1;31m";
  }
  return "";
}
/// As wide as the cells are when none is broken.
std::vector<std::size_t> natural_widths(const std::vector<Page::Row>& rows, std::size_t first_column) {
  std::vector<std::size_t> widths(rows.front().cells.size(), narrowest);
  widths.front() = std::max(first_column, narrowest);
  for (const Page::Row& row : rows)
    for (std::size_t i = 0; i < widths.size(); ++i) widths[i] = std::max(widths[i], columns(legible(row.cells.at(i))));
  return widths;
}
std::vector<std::size_t> column_widths(const std::vector<Page::Row>& rows, std::size_t first_column, std::size_t room) {
  std::vector<std::size_t> widths = natural_widths(rows, first_column);
  const std::size_t gaps = between * (widths.size() - 1);
  const auto total = [&] {
    std::size_t sum = gaps;
    for (const std::size_t w : widths) sum += w;
    return sum;
  };
  while (total() > room) {
    const auto widest = std::max_element(widths.begin(), widths.end());
    if (*widest <= narrowest) throw std::logic_error("more columns than the page can hold");
    --*widest;
  }
  return widths;
}
}  // namespace

Ink ink_of(plan::Verdict verdict) {
  switch (verdict) {
    case plan::Verdict::pass:
      return Ink::good;
    case plan::Verdict::watch:
      return Ink::care;
    case plan::Verdict::fail:
      return Ink::bad;
    case plan::Verdict::unknown:
      return Ink::strong;
  }
  return Ink::plain;
}

namespace {
/// "bar g" and "psig" say it by themselves.
std::string gauge_remark(Kind kind, std::string_view unit) {
  return kind.scale == Scale::gauge && unit.find('g') == std::string_view::npos ? " (gauge)" : "";
}
}  // namespace

std::string page_unit(const model::Measure& measure, const TextStyle& style) {
  return choose_unit(measure.quantity, measure.unit.empty() ? style.page.of(measure.quantity) : measure.unit,
                     style.units);
}
std::string show(const model::Measure& measure, const TextStyle& style, int digits) {
  const std::string unit = page_unit(measure, style);
  return format(measure.quantity, unit, digits) + gauge_remark(measure.quantity.kind, unit);
}
const char* bound_words(plan::Bound bound) { return bound == plan::Bound::at_most ? "at most" : "at least"; }
std::string show_span(const model::Measure& low, const model::Measure& high, const model::Measure& like,
                      const TextStyle& style, int digits) {
  constexpr int most_digits = 6;
  const std::string unit = page_unit(like, style), remark = gauge_remark(like.quantity.kind, unit);
  for (; digits <= most_digits; ++digits) {
    const std::string from = format(low.quantity, unit, digits), to = format(high.quantity, unit, digits);
    if (from == to) continue;
    const auto bare = from.size() - unit.size() - 1;  // "1 7/16 in" has two blanks
    return from.substr(0, unit.empty() ? std::string::npos : bare) + " to " + to + remark;
  }
  return format(high.quantity, unit) + remark;
}

Page::Page(const TextStyle& style) : style_(style), width_(static_cast<std::size_t>(std::max(style.width, 0))) {
  if (style.width < 20) throw std::logic_error("a page of under 20 columns");
  for (const std::string& words : data::first_words()) paragraph(words, 0, Ink::care);
  gap();
}
std::string Page::inked(std::string_view text, Ink ink) const {
  if (!style_.colour || ink == Ink::plain || text.empty()) return std::string(text);
  return escape(ink) + std::string(text) + "\x1b[0m";
}
void Page::put(std::string_view line, Ink ink) { text_ += inked(line, ink) + "\n"; }

void Page::gap() {
  if (!text_.empty() && !text_.ends_with("\n\n")) text_ += "\n";
}
void Page::heading(std::string_view text) {
  gap();
  paragraph(text, 0, Ink::strong);
}
void Page::paragraph(std::string_view text, std::size_t indent, Ink ink) {
  for (const std::string& line : wrap(text, width_ - indent)) {
    text_ += blanks(indent);
    put(line, ink);
  }
}
void Page::hung(std::string_view label, std::string_view text, Ink label_ink, Ink text_ink) {
  const std::string name = legible(label);
  const std::size_t used = indent_of_label + columns(name);
  const std::vector<std::string> lines = wrap(text, width_ - margin);
  text_ += blanks(indent_of_label) + inked(name, label_ink);
  text_ += used < margin ? blanks(margin - used) : "\n" + blanks(margin);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (i > 0) text_ += blanks(margin);
    put(lines[i], text_ink);
  }
}
// What no table on this page can hold is told row by row.
void Page::list(const std::vector<Row>& rows) {
  for (const Row& row : rows) {
    std::string line;
    for (const std::string& cell : row.cells)
      if (!cell.empty()) line += (line.empty() ? "" : ", ") + cell;
    paragraph(line, indent_of_label, row.ink);
    if (!row.remark.empty()) paragraph(row.remark, indent_of_remark, Ink::faint);
  }
}
std::size_t Page::free_width(const std::vector<Row>& rows) const {
  std::size_t used = indent_of_label;
  for (const std::size_t width : natural_widths(rows, 1)) used += width + between;
  return std::max(width_, used) - used;
}
void Page::table(const std::vector<Row>& rows, std::size_t first_column) {
  if (rows.empty()) return;
  if (rows.front().cells.size() * (narrowest + between) > width_ - indent_of_label + between) return list(rows);
  const std::vector<std::size_t> widths = column_widths(rows, first_column, width_ - indent_of_label);
  for (const Row& row : rows) {
    std::vector<std::vector<std::string>> cells;
    std::size_t height = 0;
    for (std::size_t i = 0; i < widths.size(); ++i) {
      cells.push_back(wrap(row.cells[i], widths[i]));
      height = std::max(height, cells.back().size());
    }
    for (std::size_t k = 0; k < height; ++k) {
      std::string line = blanks(indent_of_label);
      for (std::size_t i = 0; i < cells.size(); ++i)
        line += padded(k < cells[i].size() ? cells[i][k] : "", widths[i]) + blanks(between);
      line.erase(line.find_last_not_of(' ') + 1);
      put(line, row.ink);
    }
    if (!row.remark.empty()) paragraph(row.remark, indent_of_remark, Ink::faint);
  }
}
}  // namespace lumwright::report
