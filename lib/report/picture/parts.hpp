// What the pictures share: units of their axes, columns of a series, why a picture is missing.
#pragma once
#include "plan/figures.hpp"
#include "report/chart/plot.hpp"
#include "report/picture/picture.hpp"
#include <optional>
#include <string_view>

namespace lumwright::report {
/// The unit of an axis and numbers in it, in the figures that they have elsewhere on the page.
class AxisUnit {
 public:
  /// The unit that suits `like`, as the owner wrote it where the style leaves that open.
  AxisUnit(AnyQuantity like, std::string_view written, const TextStyle& style)
      : kind_(like.kind), units_(style.units), unit_(choose_unit(like, written, style.units)) {}
  /// The unit that things like this have on the page. Keeps a reference to the data.
  AxisUnit(AnyQuantity like, const plan::ReportData& data, const TextStyle& style)
      : AxisUnit(like, data.units.of(like), style) {
    results_ = &data.assessment.results;
  }
  double operator()(AnyQuantity q) const { return number_in(q, unit_); }
  double of_si(double si) const { return number_in(AnyQuantity(si, kind_), unit_); }
  std::string text(AnyQuantity q, int digits = 3) const {
    return format(q, unit_, results_ ? plan::figures_of(*results_, {q, unit_}, units_, digits) : digits);
  }
  const std::string& symbol() const { return unit_; }

 private:
  Kind kind_;
  UnitSystem units_;
  std::string unit_;
  const std::vector<model::Result>* results_ = nullptr;
};

/// The SI numbers of a column; empty where series or column are not there.
const std::vector<double>& column(const plan::Assessment& assessment, std::string_view series, std::string_view name);

/// "the description lacks a and b", or what physics said.
template <class T>
std::string why_missing(const model::Outcome<T>& part) {
  if (part.missing.empty()) return part.impossible.empty() ? "the description does not say enough" : part.impossible;
  std::string text = "the description lacks ";
  for (std::size_t i = 0; i < part.missing.size(); ++i)
    text += (i == 0 ? "" : i + 1 == part.missing.size() ? " and " : ", ") + part.missing[i];
  return text;
}
/// A result with its band, as the answers have it; empty where it is not there.
std::string told(const plan::Assessment& assessment, std::string_view key, const TextStyle& style);
// Pixels left of a plot for the numbers of its axis, and between plots over one another.
constexpr double axis_margin = 46.0, plot_gap = 34.0;

/// The picture with its words, drawn by `draw(parent, about, width)`.
template <class Draw>
Picture drawn(Picture picture, std::string says, std::string description, Draw draw) {
  picture.says = std::move(says);
  picture.description = std::move(description);
  picture.draw = [draw = std::move(draw), title = picture.title, words = picture.description](
                     Tag parent, const std::string& id, double width) {
    draw(parent, chart::About{id, title, words}, width);
  };
  return picture;
}
}  // namespace lumwright::report
