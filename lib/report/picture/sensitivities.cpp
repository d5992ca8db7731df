#include "report/answers.hpp"
#include "report/chart/labels.hpp"
#include "report/picture/parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using namespace chart;
constexpr double line_pitch = 17.0, bar = 12.0, group_gap = 16.0, row_gap = 8.0;

std::string name_of(const plan::Widening& one) { return one.meaning.empty() ? one.key : one.meaning; }
std::string spread_of(const plan::Widening& one, const TextStyle& style) {
  return show(one.value, style) + " (" + show_span(one.low, one.high, one.value, style) + ")";
}
std::vector<std::string> bar_words(const plan::Widening& one, const TextStyle& style, double width) {
  return lines_of(name_of(one) + ": " + spread_of(one, style), width, letter);
}
double height_of(const plan::Sensitivity& sensitivity, const TextStyle& style, double width) {
  const std::size_t lines = lines_of(words_for(sensitivity.answer), width, letter).size();
  double height = line_pitch * static_cast<double>(lines) + group_gap;
  for (const plan::Widening& one : sensitivity.widest)
    height += line_pitch * static_cast<double>(bar_words(one, style, width).size()) + bar + row_gap;
  return height;
}
double draw_group(Figure& figure, const plan::Sensitivity& sensitivity, const TextStyle& style, double y) {
  const double width = figure.width(), longest = width - 60.0;
  for (const std::string& words : lines_of(words_for(sensitivity.answer), width, letter)) {
    y += line_pitch;
    figure.words({0.0, y - 3.0}, words, "label strong");
  }
  for (const plan::Widening& one : sensitivity.widest) {
    for (const std::string& words : bar_words(one, style, width)) {
      y += line_pitch;
      figure.words({0.0, y - 3.0}, words, "label");
    }
    const double length = longest * std::clamp(one.share, 0.0, 1.0);
    figure.box({0.0, y, longest, y + bar}, "trough");
    figure.box({0.0, y, std::max(length, 1.0), y + bar}, "bar cold");
    figure.words({longest + 8.0, y + bar - 1.5}, fmt::format("{} %", std::lround(100.0 * one.share)), "label strong");
    y += bar + row_gap;
  }
  return y + group_gap;
}
void draw_sensitivities(const plan::Bands& bands, const TextStyle& style, Tag parent, const About& about,
                        double width) {
  double height = 0.0;
  for (const plan::Sensitivity& sensitivity : bands.sensitivities) height += height_of(sensitivity, style, width);
  Figure figure(parent, about, width, height);
  double y = 0.0;
  for (const plan::Sensitivity& sensitivity : bands.sensitivities) y = draw_group(figure, sensitivity, style, y);
}
std::string sensitivities_described(const plan::Bands& bands) {
  std::string text = "For each answer, bars with the share of its scatter that goes with what is not known for sure.";
  for (const plan::Sensitivity& sensitivity : bands.sensitivities) {
    text += " " + words_for(sensitivity.answer) + ":";
    for (const plan::Widening& one : sensitivity.widest)
      text += fmt::format(" {} {} %;", name_of(one), std::lround(100.0 * one.share));
    text.back() = '.';
  }
  return text;
}
}  // namespace

Picture picture_of_sensitivities(const plan::ReportData& data, const TextStyle& style) {
  Picture picture{.id = "sensitivities", .title = "What widens the answers", .says = "", .description = ""};
  const std::optional<plan::Bands>& bands = data.assessment.bands;
  if (!bands || bands->sensitivities.empty()) {
    picture.not_drawn = bands ? "no spread in this description moves an answer"
                              : "no samples were tried; " + description::way("samples", style.front);
    return picture;
  }
  const plan::Sensitivity& chief = bands->sensitivities.front();
  std::string says = fmt::format(
      "Of the scatter of \"{}\", {} % goes with {}. Each bar is the share of an answer's scatter "
      "that would go if that one value were known.",
      words_for(chief.answer), std::lround(100.0 * chief.widest.front().share), name_of(chief.widest.front()));
  return drawn(std::move(picture), std::move(says), sensitivities_described(*bands),
               [&data, style](Tag parent, const About& about, double width) {
                 draw_sensitivities(*data.assessment.bands, style, parent, about, width);
               });
}
}  // namespace lumwright::report
