// The page that text reports are written on: a margin for labels, the text hung beside it, colour only when asked for.
#pragma once
#include "description/page_units.hpp"
#include "description/ways.hpp"
#include "plan/assessment.hpp"
#include "quantity/format.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::report {
struct TextStyle {
  UnitSystem units = UnitSystem::as_written;
  bool colour = false;
  int width = 80;
  description::PageUnits page{};  // for numbers that bring no unit of their own
  description::FrontEnd front = description::FrontEnd::terminal;
};

enum class Ink { plain, strong, faint, good, care, bad };
Ink ink_of(plan::Verdict verdict);

/// The symbol that a measure has on the page.
std::string page_unit(const model::Measure& measure, const TextStyle& style);
/// A measure in the unit of the style: "0.220 mm", "1.20 bar (gauge)".
std::string show(const model::Measure& measure, const TextStyle& style, int digits = 3);
const char* bound_words(plan::Bound bound);  // "at most", "at least"
/// "0.180 to 0.260 mm", both in the unit that suits `like`; ends that would read alike get more figures, and are one
/// number where six do not part them.
std::string show_span(const model::Measure& low, const model::Measure& high, const model::Measure& like,
                      const TextStyle& style, int digits = 3);

class Page {
 public:
  /// Throws std::logic_error for a width under 20: the margin would leave no room for text.
  explicit Page(const TextStyle& style);
  const TextStyle& style() const { return style_; }

  void gap();  // one blank line, however often it is asked for
  void heading(std::string_view text);
  void paragraph(std::string_view text, std::size_t indent = 0, Ink ink = Ink::plain);
  /// A label in the margin and the text beside it.
  void hung(std::string_view label, std::string_view text, Ink label_ink = Ink::faint, Ink text_ink = Ink::plain);
  struct Row {
    std::vector<std::string> cells;
    std::string remark;  // on lines of its own below the cells; may be empty
    Ink ink = Ink::plain;
  };
  /// Rows of the same number of cells, in columns as wide as they need, the first at least so wide. On too narrow a
  /// page the widest give way.
  void table(const std::vector<Row>& rows, std::size_t first_column = 1);
  /// What such a table of one row or more leaves free for a further column when no cell of it is broken; nothing where it
  /// is too wide already.
  std::size_t free_width(const std::vector<Row>& rows) const;
  std::string finish() const { return text_; }

 private:
  void put(std::string_view line, Ink ink);
  void list(const std::vector<Row>& rows);
  std::string inked(std::string_view text, Ink ink) const;
  TextStyle style_;
  std::size_t width_;
  std::string text_;
};
}  // namespace lumwright::report
