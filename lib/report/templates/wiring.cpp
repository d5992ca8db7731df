#include "report/templates/wiring.hpp"
#include "description/stock_name.hpp"
#include "model/solved_supply.hpp"
#include "report/answers.hpp"
#include <array>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using namespace drawing;
constexpr double plus_rail = 50.0, minus_rail = 0.0;  // mm of paper
Point on_paper(double x, double y) { return {x * mm, y * mm}; }

template <class Q>
std::string owner_said(const description::Given<Q>& given) {
  return given ? description::as_its_owner(AnyQuantity(*given), given.unit) : "";
}
// From the pack at the left to the fan at the right; each symbol takes what room it needs.
class Circuit {
 public:
  Circuit(const description::part::SupplyPart& supply, View& view) : supply_(supply), view_(view) {}
  void draw(const std::string& fan) {
    battery();
    if (supply_.fuse) fuse();
    if (supply_.switched && *supply_.switched != "none") make_contact();
    if (supply_.polarity && *supply_.polarity != "none") guard(*supply_.polarity);
    if (supply_.plugs && *supply_.plugs > 0) plug();
    wires();
    if (supply_.step_up.module || supply_.step_up.output) step_up();
    if (supply_.control.kind && *supply_.control.kind != "none") control();
    motor(fan);
  }

 private:
  void line(double x1, double y1, double x2, double y2) {
    view_.entities.push_back(drawing::Line{on_paper(x1, y1), on_paper(x2, y2), Layer::outline});
  }
  void words(double x, double y, const std::string& text, Across across = Across::left) {
    view_.entities.push_back(drawing::Text{.at = on_paper(x, y), .words = text, .across = across, .up = Up::base});
  }
  void box(double x1, double y1, double x2, double y2) {
    add_rectangle(view_, {on_paper(x1, y1), on_paper(x2, y2)}, Layer::outline);
  }
  void rails(double to) {
    line(at_, plus_rail, to, plus_rail);
    line(at_, minus_rail, to, minus_rail);
    at_ = to;
  }
  void cell(double y) {  // the long line is the plus
    line(-5.0, y, 5.0, y);
    line(-2.5, y - 2.5, 2.5, y - 2.5);
  }
  void battery() {
    const int series = supply_.pack.series ? *supply_.pack.series : 1,
              parallel = supply_.pack.parallel ? *supply_.pack.parallel : 1;
    line(0.0, plus_rail, 0.0, series > 1 ? 31.0 : 26.0);
    if (series > 1) {
      cell(31.0);
      view_.entities.push_back(drawing::Line{on_paper(0.0, 28.5), on_paper(0.0, 22.0), Layer::hidden});
      cell(22.0);
      line(0.0, 19.5, 0.0, minus_rail);
    } else {
      cell(26.0);
      line(0.0, 23.5, 0.0, minus_rail);
    }
    words(-2.0, plus_rail + 1.5, "+");
    words(-3.5, minus_rail + 1.5, "-");
    std::string cells = fmt::format("{}\n{} in series", supply_.pack.cell ? *supply_.pack.cell : "cells", series);
    if (parallel > 1) cells += fmt::format(",\n{} side by side", parallel);
    if (supply_.pack.capacity) cells += "\n" + owner_said(supply_.pack.capacity);
    view_.entities.push_back(drawing::Text{.at = on_paper(7.5, 26.0), .words = cells, .up = Up::middle});
  }
  void fuse() {
    rails(8.0);
    box(8.0, plus_rail - 1.75, 18.0, plus_rail + 1.75);
    line(8.0, plus_rail, 18.0, plus_rail);
    words(8.0, plus_rail + 4.0, "fuse " + owner_said(supply_.fuse) + ", at the pack");
    line(8.0, minus_rail, 18.0, minus_rail);
    at_ = 18.0;
  }
  // What is described stands behind the fuse, each with its words a line higher.
  double next_label() { return plus_rail + 4.0 + 5.0 * ++labels_; }
  void make_contact() {  // the switch, open
    rails(at_ + 5.0);
    line(at_, plus_rail, at_ + 7.0, plus_rail + 3.5);
    line(at_, minus_rail, at_ + 8.0, minus_rail);
    words(at_, next_label(), *supply_.switched);
    at_ += 8.0;
  }
  void guard(const std::string& kind) {
    if (kind == "plug that fits one way") return;  // no part of its own
    rails(at_ + 4.0);
    if (kind == "transistor") {
      box(at_, plus_rail - 2.5, at_ + 8.0, plus_rail + 2.5);
      line(at_ + 2.0, plus_rail, at_ + 6.0, plus_rail);
    } else {  // the arrow shows the way of the current, the bar where it may not come back
      line(at_, plus_rail + 2.5, at_, plus_rail - 2.5);
      line(at_, plus_rail + 2.5, at_ + 6.0, plus_rail);
      line(at_, plus_rail - 2.5, at_ + 6.0, plus_rail);
      line(at_ + 6.0, plus_rail - 2.5, at_ + 6.0, plus_rail + 2.5);
      line(at_, plus_rail, at_ + 8.0, plus_rail);
    }
    line(at_, minus_rail, at_ + 8.0, minus_rail);
    const std::string drop = owner_said(supply_.polarity_drop);
    words(at_, next_label(), kind + (drop.empty() ? "" : ", keeps " + drop) + ", against a pack the wrong way round");
    at_ += 8.0;
  }
  void plug() {  // pin and socket on both wires
    rails(at_ + 4.0);
    for (const double y : {plus_rail, minus_rail}) {
      line(at_, y, at_ + 2.5, y);
      line(at_ + 3.5, y + 1.5, at_ + 2.5, y);
      line(at_ + 3.5, y - 1.5, at_ + 2.5, y);
      line(at_ + 3.5, y, at_ + 6.0, y);
    }
    words(at_, next_label(), *supply_.plugs > 1 ? fmt::format("{} plugs on the way", *supply_.plugs) : "plug");
    at_ += 6.0;
  }
  void wires() {
    const std::string section = owner_said(supply_.leads.section), length = owner_said(supply_.leads.length);
    const std::string size =
        section + (section.empty() || length.empty() ? "" : ", ") + (length.empty() ? "" : length + " long");
    rails(68.0);
    words(66.0, plus_rail - 7.5, "plus: red" + (size.empty() ? "" : ", " + size), Across::right);
    words(66.0, minus_rail - 4.5, "minus: black" + (size.empty() ? "" : ", " + size), Across::right);
  }
  void step_up() {  // a converter: direct current on both sides
    box(68.0, minus_rail - 4.0, 92.0, plus_rail + 4.0);
    line(68.0, minus_rail - 4.0, 92.0, plus_rail + 4.0);
    words(70.5, plus_rail - 8.0, "=");
    words(86.5, minus_rail + 8.0, "=");
    words(68.0, plus_rail + 6.0,
          "step-up" + (supply_.step_up.output ? ", set to " + owner_said(supply_.step_up.output) : ""));
    at_ = 92.0;
  }
  void control() {
    const double from = std::max(at_ + 14.0, 106.0);
    rails(from);
    box(from, minus_rail - 4.0, from + 18.0, plus_rail + 4.0);
    view_.entities.push_back(drawing::Text{
        .at = on_paper(from + 9.0, 25.0), .words = "speed\ncontrol", .across = Across::centre, .up = Up::middle});
    std::string set = *supply_.control.kind;
    if (supply_.control.duty) set += ", " + owner_said(supply_.control.duty) + " on";
    if (supply_.control.output) set += ", " + owner_said(supply_.control.output);
    words(from, minus_rail - 8.0, set);
    at_ = from + 18.0;
  }
  void motor(const std::string& fan) {
    const double x = at_ + 22.0, middle_of = 0.5 * (plus_rail + minus_rail), radius = 8.0;
    rails(x);
    line(x, plus_rail, x, middle_of + radius);
    line(x, middle_of - radius, x, minus_rail);
    view_.entities.push_back(drawing::Circle{on_paper(x, middle_of), 2.0 * radius * mm, Layer::outline});
    view_.entities.push_back(
        drawing::Text{.at = on_paper(x, middle_of), .words = "M\n=", .across = Across::centre, .up = Up::middle});
    words(x + radius + 2.0, middle_of - 1.2, fan);
  }

  const description::part::SupplyPart& supply_;
  View& view_;
  double at_ = 0.0;
  int labels_ = 0;
};
/// What the one who solders should know of switch and polarity.
std::string beneath(const description::part::SupplyPart& supply) {
  std::string text;
  if (!supply.switched || *supply.switched == "none")
    text += supply.switched ? "The plug at the pack is the switch.\n"
                            : "No switch is described: the plug at the pack is the switch.\n";
  if (!supply.polarity || *supply.polarity == "none")
    return text +
           "Nothing here stands between a pack put in the wrong way round and what it feeds:\nmark plus on holder "
           "and plug, and try with a meter before the first connection.";
  return text +
         (*supply.polarity == "plug that fits one way"
              ? "The plug fits one way only: try with a meter, before the first connection,\nthat it is the right one."
              : "Try with a meter that nothing comes through with the pack the wrong way round,\nbefore the step-up is "
                "connected.");
}

void table(View& view, const std::vector<std::array<std::string, 3>>& rows,
           const description::part::SupplyPart& supply) {
  double y = -22.0;
  for (const auto& row : rows) {
    constexpr std::array<double, 3> columns{0.0, 62.0, 96.0};
    for (std::size_t i = 0; i < row.size(); ++i)
      if (!row.at(i).empty())
        view.entities.push_back(drawing::Text{.at = on_paper(columns.at(i), y), .words = row.at(i)});
    view.entities.push_back(drawing::Line{on_paper(0.0, y - 1.6), on_paper(125.0, y - 1.6), Layer::text});
    y -= 5.6;
  }
  view.entities.push_back(drawing::Text{
      .at = on_paper(0.0, y - 3.0),
      .words = beneath(supply),
  });
}
}  // namespace

std::optional<Sheet> wiring_diagram(const plan::Assessment& assessment, const model::Solved& solved,
                                    const TextStyle& wanted, const Paper& paper) {
  if (!solved.supply || !solved.build.supply.pack.cell) return std::nullopt;
  TextStyle style = wanted;
  style.page = solved.page;
  const auto number = [&](const char* key) { return number_of(assessment, key, style); };
  View view{.name = "Wiring diagram"};
  const auto& rated = solved.build.fan.rated;
  Circuit(solved.build.supply, view).draw("fan" + (rated.voltage ? "\n" + owner_said(rated.voltage) : ""));
  const auto at_fan = [&](const std::optional<power::SupplyState>& state) {
    return state ? in_page_figures(assessment, {AnyQuantity(state->fan_voltage), ""}, style) : std::string("-");
  };
  table(view,
        {{"", "full pack", "at the end"},
         {"voltage of the pack, running", number("power.pack_voltage_start"), number("power.pack_voltage_end")},
         {"current from the pack", number("power.pack_current_start"), number("power.pack_current_end")},
         {"voltage at the fan", at_fan(solved.supply->start), at_fan(solved.supply->end)}},
        solved.build.supply);
  const Box room = room_on(paper, false);
  View bare = view;
  bare.name.clear();
  const Box reach = bounds(bare);
  Sheet sheet;
  sheet.to_cut = sheet.to_scale = false;
  sheet.views.push_back(
      {view,
       {0.5 * (room.low.x + room.high.x - reach.low.x - reach.high.x), room.high.y - 10.0 * mm - reach.high.y},
       false,
       std::nullopt,
       false});
  return sheet;
}
}  // namespace lumwright::report
