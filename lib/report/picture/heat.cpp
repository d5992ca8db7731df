#include "report/answers.hpp"
#include "report/chart/cascade.hpp"
#include "report/picture/parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using namespace chart;

struct PartWords {
  std::string_view id, words;
  bool useful;
};
constexpr PartWords part_words[] = {
    {"water", "warms the water", true},
    {"metal", "warms the boiler's metal", true},
    {"steam", "in the steam let out to drive out the air", true},
    {"outside", "lost through the boiler's outside", false},
    {"chimney", "up the chimney, hot gas", false},
    {"unburnt", "up the chimney unburnt, carbon monoxide", false},
    {"bed", "still in the glowing fuel", false},
    {"astray", "not accounted for by the model (tuned)", false},
};
const PartWords& heat_words(std::string_view id) {
  return *std::find_if(std::begin(part_words), std::end(part_words), [&](const PartWords& w) { return w.id == id; });
}
double share(const plan::HeatBalance& heat, const plan::HeatPart& part) { return in(part.energy, heat.chemical); }
bool shown(const plan::HeatBalance& heat, const plan::HeatPart& part) { return std::abs(share(heat, part)) >= 5e-4; }

std::vector<CascadeRow> heat_steps(const plan::ReportData& data, const TextStyle& style) {
  const plan::HeatBalance& heat = *data.heat;
  std::vector<CascadeRow> out;
  double sum = 0.0;
  for (const plan::HeatPart& part : heat.parts) {
    if (!shown(heat, part)) continue;
    const PartWords& w = heat_words(part.id);
    const double more = 100.0 * share(heat, part);
    const std::string words =
        percent(share(heat, part), 2) + ", " + in_page_figures(data.assessment, {part.energy}, style);
    out.push_back({std::string(w.words),
                   {{sum, sum + more, words, w.useful ? "bar hot" : "bar grey",
                     w.useful ? std::nullopt : std::optional(Hatch::slant)}}});
    sum += more;
  }
  return out;
}
double useful_share(const plan::HeatBalance& heat) {
  double sum = 0.0;
  for (const plan::HeatPart& part : heat.parts)
    if (heat_words(part.id).useful) sum += share(heat, part);
  return sum;
}
double share_of(const plan::HeatBalance& heat, std::string_view id) {
  for (const plan::HeatPart& part : heat.parts)
    if (part.id == id) return share(heat, part);
  return 0.0;
}
std::string heat_in_a_sentence(const plan::ReportData& data, const TextStyle& style) {
  const plan::HeatBalance& heat = *data.heat;
  const plan::HeatPart* lost = nullptr;
  for (const plan::HeatPart& part : heat.parts)
    if (!heat_words(part.id).useful && (lost == nullptr || part.energy > lost->energy)) lost = &part;
  const double out_again = share_of(heat, "outside");
  return fmt::format(
      "{} of fuel burn {} {}; {} of their heat reaches water, metal and steam{}; the largest loss, {}, is {}.",
      in_page_figures(data.assessment, {heat.fuel}, style), heat.reached ? "until there is steam, in" : "in",
      in_page_figures(data.assessment, {heat.until}, style), percent(useful_share(heat) + out_again, 2),
      out_again >= 0.005 ? ", and " + percent(out_again, 1) + " goes out again through the boiler's outside" : "",
      percent(share(heat, *lost), 2), heat_words(lost->id).words);
}
std::string heat_described(const plan::ReportData& data, const TextStyle& style) {
  const plan::HeatBalance& heat = *data.heat;
  std::string text =
      "Bars that add up to the heat of the fuel, " + in_page_figures(data.assessment, {heat.chemical}, style) + ":";
  for (const plan::HeatPart& part : heat.parts)
    if (shown(heat, part)) text += fmt::format(" {} {};", heat_words(part.id).words, percent(share(heat, part), 2));
  text.back() = '.';
  return text;
}
}  // namespace

Picture picture_of_heat(const plan::ReportData& data, const TextStyle& style) {
  Picture picture{.id = "heat", .title = "Where the fuel's heat goes", .says = "", .description = ""};
  if (!data.heat || !(data.heat->chemical > 0.0 * J)) {
    picture.not_drawn = data.heat ? "the fire gives no heat" : why_missing(data.heat);
    return picture;
  }
  return drawn(std::move(picture), heat_in_a_sentence(data, style), heat_described(data, style),
               [&data, style](Tag parent, const About& about, double width) {
                 const std::vector<CascadeRow> all = heat_steps(data, style);
                 const CascadeLook how{
                     "share of the fuel's heat, %",
                     {{"of use", "", "bar hot"}, {"lost", "", "bar grey", -1, static_cast<int>(Hatch::slant)}}};
                 Figure figure(parent, about, width, cascade_height(all, how, width));
                 draw_cascade(figure, all, how);
               });
}
}  // namespace lumwright::report
