#include "report/unit_items.hpp"
#include "description/stock_name.hpp"
#include "report/templates/templates.hpp"
#include "workshop/solids.hpp"
#include <fmt/format.h>

namespace lumwright::report {
namespace {
class Items {
 public:
  Items(const model::FanUnit& unit, const description::Build& build, UnitSystem units)
      : unit_(unit), build_(build), units_(units), figures_(one_rule(figures_for(build, units))) {}
  std::vector<UnitItem> all() {
    if (unit_.tube) tube(*unit_.tube);
    if (unit_.flange) flange(*unit_.flange);
    if (unit_.box) box(*unit_.box);
    if (unit_.fan) fan(*unit_.fan);
    if (unit_.flange) screws(*unit_.flange);
    return std::move(items_);
  }

 private:
  std::string size(Length length) const { return size_text(length, figures_); }
  std::string across(Length diameter) const { return "\u2300" + size(diameter); }
  std::string stock(const description::Given<Length>& given, Length made, const std::string& metal) const {
    return (given ? description::stock_size(given, units_) : size(made)) + " " + metal;
  }
  void tube(const model::MadeTube& t) {
    const auto& given = build_.adapter.tube;
    items_.push_back({"tube", 1, description::stock_tube(given.outside, given.wall, units_) + " " + t.metal.name,
                      size(t.length) + " long", model::mass_of(t)});
  }
  void flange(const model::MadeFlange& f) {
    items_.push_back({"flange", 1, stock(build_.adapter.flange.thickness, f.thickness, f.metal.name), across(f.outside),
                      model::mass_of(f)});
  }
  void box(const model::MadeBox& b) {
    const std::string sheet = stock(build_.adapter.box.sheet, b.sheet, b.metal);
    const auto weighs = [&](Area flat, int count) -> Mass {
      return static_cast<double>(count) * workshop::mass_of(Volume(flat * b.sheet), b.metal);
    };
    if (b.round) {
      const Length length = b.round->strip_length, width = b.round->strip_width, blank = b.round->disc_blank;
      items_.push_back(
          {"side of the box", 1, sheet, size(length) + " x " + size(width), weighs(Area(length * width), 1)});
      items_.push_back({"bottom and lid", 2, sheet, across(blank), weighs(circle(blank), 2)});
    } else if (b.net) {
      items_.push_back(
          {"box, folded", 1, sheet, size(b.net->across.total) + " square", workshop::mass_of(b.net->metal, b.metal)});
      items_.push_back({"lid", 1, sheet, size(b.plate) + " square", weighs(Area(b.plate * b.plate), 1)});
    }
    if (b.grommet) items_.push_back({"grommet", 1, "rubber, for a hole of " + size(b.grommet->grommet.hole), "", {}});
  }
  void fan(const model::MadeFan& f) {
    std::string words = f.axial ? "axial" : "blower";
    if (build_.fan.rated.voltage)
      words += ", " + description::as_its_owner(AnyQuantity(*build_.fan.rated.voltage), build_.fan.rated.voltage.unit);
    items_.push_back({"fan", 1, words, description::stock_size(build_.fan.frame, units_), f.mass});
    const auto& guard = build_.fan.guard.kind;
    if (guard && *guard != "none") items_.push_back({"guard over the fan", 1, *guard, "", {}});
    if (!f.drawing.pattern) return;
    const workshop::FanPattern& pattern = *f.drawing.pattern;
    items_.push_back({"screws of the fan",
                      static_cast<int>(pattern.holes.size()),
                      (pattern.screws.empty() ? "to suit its holes" : pattern.screws.front()) + ", nuts and washers",
                      "",
                      {}});
  }
  void screws(const model::MadeFlange& f) {
    if (f.screws)
      items_.push_back({"screws of the flange",
                        f.screws->count,
                        f.screws->thread.name + (f.screws->tapped ? "" : ", with nuts"),
                        "",
                        {}});
    if (unit_.tube) items_.push_back({"joint of tube and flange", 1, f.joint, "", {}});
  }

  const model::FanUnit& unit_;
  const description::Build& build_;
  UnitSystem units_;
  drawing::Figures figures_;
  std::vector<UnitItem> items_;
};
}  // namespace

std::vector<UnitItem> unit_items(const model::FanUnit& unit, const description::Build& build, UnitSystem units) {
  return Items(unit, build, units).all();
}
}  // namespace lumwright::report
