#include "report/chart/cascade.hpp"
#include "report/picture/parts.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::report {
namespace {
using namespace chart;

Pressure cold_loss(const plan::DraughtCurves& c, std::string_view name) {
  for (const draught::ElementLoss& loss : c.cold.losses)
    if (loss.name == name) return loss.loss;
  return 0.0 * Pa;
}
struct ElementWords {
  std::string_view name, words;
};
constexpr ElementWords element_words[] = {{"air_entry", "into the ash-pan"},
                                          {"grate", "through the grate"},
                                          {"bed", "through the fuel"},
                                          {"firebox", "into the fire tubes"},
                                          {"tubes", "along the fire tubes"},
                                          {"smokebox", "out into the smokebox"},
                                          {"blast_pipe", "past the blast pipe"},
                                          {"adapter_inlet", "into the adapter's tube"},
                                          {"adapter_friction", "along the adapter's tube"},
                                          {"fittings", "bends and mesh"},
                                          {"box_entry", "out into the box"},
                                          {"box_to_fan", "from the box to the fan"},
                                          {"fan_guard", "through the fan's guard"}};
std::string element_in_words(std::string_view name) {
  for (const ElementWords& row : element_words)
    if (row.name == name) return std::string(row.words);
  throw std::logic_error("a part of the gas path without words");
}
AxisUnit unit_of(const plan::ReportData& data, const TextStyle& style) { return {data.draught->highest, data, style}; }
std::vector<CascadeRow> losses_steps(const plan::ReportData& data, const TextStyle& style) {
  const plan::DraughtCurves& c = *data.draught;
  const AxisUnit unit = unit_of(data, style);
  std::vector<CascadeRow> out;
  Pressure hot, cold;
  const auto add = [&](std::string name, Pressure more_hot, Pressure more_cold) {
    out.push_back({std::move(name),
                   {{unit(hot), unit(hot + more_hot), unit.text(more_hot), "bar hot"},
                    {unit(cold), unit(cold + more_cold), unit.text(more_cold), "bar cold", Hatch::slant}}});
    hot += more_hot;
    cold += more_cold;
  };
  for (const draught::ElementLoss& loss : c.hot.losses)
    add(element_in_words(loss.name), loss.loss, cold_loss(c, loss.name));
  add("hot gas lifts by itself", -c.hot.natural_draught, -c.cold.natural_draught);
  out.push_back(
      {c.hot.fan.empty() ? "must be held" : "the fan develops",
       {{0.0, unit(hot), unit.text(hot), "bar hot"}, {0.0, unit(cold), unit.text(cold), "bar cold", Hatch::slant}},
       true});
  return out;
}
CascadeLook look(const plan::ReportData& data, const TextStyle& style) {
  return {"suction below the room's air, " + unit_of(data, style).symbol(),
          {{"fire alight", "", "bar hot"}, {"cold", "", "bar cold", -1, static_cast<int>(Hatch::slant)}}};
}
const draught::ElementLoss& greatest(const std::vector<draught::ElementLoss>& losses) {
  return *std::max_element(
      losses.begin(), losses.end(),
      [](const draught::ElementLoss& a, const draught::ElementLoss& b) { return a.loss < b.loss; });
}
std::string losses_in_a_sentence(const plan::ReportData& data, const TextStyle& style) {
  const plan::DraughtCurves& c = *data.draught;
  const AxisUnit unit = unit_of(data, style);
  Pressure total;
  for (const draught::ElementLoss& loss : c.hot.losses) total += loss.loss;
  const draught::ElementLoss& most = greatest(c.hot.losses);
  return fmt::format("From ash-pan to fan, each part takes its share of the suction; the most is used up {}: {} of {}.",
                     element_in_words(most.name), unit.text(most.loss), unit.text(total));
}
std::string losses_described(const plan::ReportData& data, const TextStyle& style) {
  const AxisUnit unit = unit_of(data, style);
  std::string text = "Bars from ash-pan to fan, each begun where the last one ended, with the fire alight:";
  for (const draught::ElementLoss& loss : data.draught->hot.losses)
    text += fmt::format(" {} {};", element_in_words(loss.name), unit.text(loss.loss));
  return text + fmt::format(" the hot gas lifts {} by itself.", unit.text(data.draught->hot.natural_draught));
}
}  // namespace

Picture picture_of_losses(const plan::ReportData& data, const TextStyle& style) {
  Picture picture{.id = "losses", .title = "Where the suction goes", .says = "", .description = ""};
  if (!data.draught || data.draught->hot.losses.empty()) {
    picture.not_drawn = why_missing(data.draught);
    return picture;
  }
  return drawn(std::move(picture), losses_in_a_sentence(data, style), losses_described(data, style),
               [&data, style](Tag parent, const About& about, double width) {
                 const std::vector<CascadeRow> all = losses_steps(data, style);
                 const CascadeLook how = look(data, style);
                 Figure figure(parent, about, width, cascade_height(all, how, width));
                 draw_cascade(figure, all, how);
               });
}
}  // namespace lumwright::report
