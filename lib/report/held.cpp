#include "report/held.hpp"
#include "data/held.hpp"
#include "report/detail/markdown.hpp"
#include "report/detail/standing.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
/// Two or three figures, never as a power of ten.
std::string held_figure(double value) {
  const double size = std::abs(value);
  if (size < 0.1) return fmt::format("{:.2g}", value);
  return fmt::format("{:.3g}", size < 1000.0 ? value : std::round(value));
}
std::string held_unit(const std::string& text, const std::string& unit) {
  return unit.empty() ? text : text + (unit == "%" ? " %" : " " + unit);
}
std::string measured_words(const data::HeldRow& row) {
  std::string text;
  if (!row.high)
    text = "at least " + held_figure(*row.low);
  else if (!row.low)
    text = "at most " + held_figure(*row.high);
  else if (*row.low == *row.high)
    text = held_figure(*row.low);
  else
    text = fmt::format("{} to {}", held_figure(*row.low), held_figure(*row.high));
  return held_unit(text, row.unit);
}
std::string ours_words(const data::HeldRow& row) {
  const std::string usual = held_unit(held_figure(row.ours.value), row.unit);
  if (row.ours.low == row.ours.high) return usual;
  return fmt::format("{} ({} to {})", usual, held_figure(row.ours.low), held_figure(row.ours.high));
}
/// Of a single figure that ours comes as near to as it could be read.
std::string as_measured(const data::HeldRow& row) {
  const double share = std::round(100.0 * (row.ours.value / *row.low - 1.0));
  return share == 0.0 ? "as measured" : fmt::format("{:+.0f} %, no more than it could be read", share);
}
std::string apart_words(const data::HeldRow& row) {
  if (row.made_of) return "our table was made of it";
  const data::Held stands = data::held(row);
  if (stands == data::Held::inside) return row.low == row.high ? as_measured(row) : "inside";
  const std::optional<double> share = data::apart(row);
  std::string text = share ? fmt::format("{:+.0f} %", 100.0 * *share) : "beyond";
  text += stands == data::Held::reached ? ", our spread reaches it" : ", missed";
  return row.why.empty() ? text : text + ": " + row.why;
}
std::string source_words(const data::HeldRow& row) {
  return row.basis.source + (row.seen == "full text" ? " (seen in full)" : " (" + row.seen + ")");
}
}  // namespace

std::vector<HeldLine> held_lines() {
  std::vector<HeldLine> out;
  for (const data::HeldRow& row : data::held_rows())
    out.push_back(
        {row.part, row.what, row.where, measured_words(row), ours_words(row), apart_words(row), source_words(row)});
  std::vector<std::string> parts;  // in the order in which they are met first
  for (const HeldLine& line : out)
    if (std::find(parts.begin(), parts.end(), line.part) == parts.end()) parts.push_back(line.part);
  std::stable_sort(out.begin(), out.end(), [&](const HeldLine& x, const HeldLine& y) {
    return std::find(parts.begin(), parts.end(), x.part) < std::find(parts.begin(), parts.end(), y.part);
  });
  return out;
}

std::string held_summary() {
  int inside = 0, reached = 0, missed = 0, made_of = 0;
  for (const data::HeldRow& row : data::held_rows()) {
    if (row.made_of)
      ++made_of;
    else if (data::held(row) == data::Held::inside)
      ++inside;
    else if (data::held(row) == data::Held::reached)
      ++reached;
    else
      ++missed;
  }
  return fmt::format(
      "What somebody once measured, and what lumwright reckons for the same case; behind ours, where it lies with the "
      "spread that lumwright itself allows. Of {} figures ours lies inside what was measured, or as near as it could "
      "be "
      "read, in {}; our spread reaches it in {}; it is missed in {}, with the reason; {} prove nothing, for our own "
      "table "
      "was made of them. None of them is your engine: a lighting-up that you time yourself is worth more than all.",
      inside + reached + missed + made_of, inside, reached, missed, made_of);
}

std::vector<NeverLine> never_lines(description::FrontEnd front) {
  std::vector<NeverLine> out;
  for (const data::NeverMeasured& row : data::never_measured())
    out.push_back({row.what, row.meanwhile, description::with_ways(row.afternoon, front)});
  return out;
}

std::string held_markdown(int level, description::FrontEnd front) {
  const std::string head(static_cast<std::size_t>(level), '#');
  const auto cell = [](const std::string& text) { return " " + markdown_text(text, Stands::behind_words) + " |"; };
  std::string out = markdown_text(held_summary()) + "\n\n";
  out += "| what was measured | where | measured | ours | apart | source |\n| --- | --- | --- | --- | --- | --- |\n";
  std::string part;
  for (const HeldLine& line : held_lines()) {
    if (line.part != part) out += "| **" + markdown_text(line.part, Stands::behind_words) + "** | | | | | |\n";
    part = line.part;
    out += "|" + cell(line.what) + cell(line.where) + cell(line.measured) + cell(line.ours) + cell(line.apart) +
           cell(line.source) + "\n";
  }
  out += fmt::format("\n{} What nobody has published\n\n", head);
  for (const NeverLine& line : never_lines(front))
    out += fmt::format(
        "- {}. Meanwhile: {}. To close it in an afternoon: {}.\n", markdown_text(line.what, Stands::behind_words),
        markdown_text(line.meanwhile, Stands::behind_words), markdown_text(line.afternoon, Stands::behind_words));
  return out;
}
}  // namespace lumwright::report
