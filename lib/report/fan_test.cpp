#include "report/fan_test.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
class FanTestReporter {
 public:
  FanTestReporter(const fan_test::FanTest& test, const TextStyle& style, const std::optional<fan_test::NextPlate>& next)
      : test_(test), next_(next), page_(style) {}
  std::string write() {
    head();
    warnings();
    curve();
    readings();
    errors();
    assumed();
    page_.heading("Lines for a description");
    return page_.finish() + "\n" + fan_test::curve_lines(test_);
  }

 private:
  template <class Q>
  std::string shown(Q q, const char* unit, int digits = 3) const {
    return show({AnyQuantity(q), unit}, page_.style(), digits);
  }
  void head() {
    const draught::FanFit& f = test_.fit;
    const std::string at = test_.voltage ? " at " + shown(*test_.voltage, "V") : "";
    page_.paragraph(fmt::format("{}: {} shut, {} in free air{}, both at 1.2 kg/m3.", test_.name,
                                shown(f.shut_off.value, "Pa"), shown(f.free_air.value, "l/min"), at),
                    0, Ink::strong);
    page_.paragraph(
        fmt::format("Below half of free air, where lighting-up fans work, the pressure is within {}. Shut: {}{}. Free "
                    "air: {}{}. The band holds the whole curve with 95 %.",
                    percent(fan_test::within_told(test_), 2), span(f.shut_off, "Pa"),
                    f.shut_off_read ? "" : " (drawn on, not read)", span(f.free_air, "l/min"),
                    f.free_air_near ? "" : " (drawn on as usual fans go)"));
    page_.gap();
    if (next_) page_.paragraph(next_words(*next_, page_.style()));
    page_.paragraph("How the readings were carried to one speed: " + test_.speed_basis + ".", 0, Ink::faint);
  }
  template <class Q>
  std::string span(const Band<Q>& band, const char* unit) const {
    return show_span({AnyQuantity(band.low), unit}, {AnyQuantity(band.high), unit}, {AnyQuantity(band.value), unit},
                     page_.style());
  }
  void warnings() {
    if (test_.warnings.empty()) return;
    page_.heading("Look at these first");
    for (const fan_test::FanTestWarning& w : test_.warnings) {
      page_.gap();
      page_.hung("watch", w.text, Ink::care);
      page_.hung("do", w.action);
    }
  }
  void curve() {
    page_.heading("Curve");
    page_.gap();
    std::vector<Page::Row> rows{{{"flow", "pressure", "from", "to", "readings"}, "", Ink::faint}};
    for (const draught::CurveBandPoint& p : test_.curve)
      rows.push_back(
          {{shown(p.flow, "l/min"), shown(p.pressure, "Pa"), p.low < 0.0 * Pa ? "below 0" : shown(p.low, "Pa"),
            shown(p.high, "Pa"), p.beyond ? "none so far" : "here"},
           "",
           Ink::plain});
    page_.table(rows);
  }
  void readings() {
    page_.heading("Readings, carried to 1.2 kg/m3 and the speed of the curve");
    page_.gap();
    std::vector<Page::Row> rows{{{"no", "plate", "read", "flow", "pressure", "off by"}, "", Ink::faint}};
    for (const fan_test::TestedPoint& p : test_.points) {
      const std::string number = fmt::format("{}", p.number), read = shown(p.depression, "mmH2O");
      if (!p.left_out.empty()) {
        rows.push_back({{number, plate(p), read, "-", "-", "-"}, "not used: " + p.left_out, Ink::faint});
        continue;
      }
      rows.push_back({{number, plate(p), read, shown(p.point.flow, "l/min"), shown(p.point.pressure, "Pa"), off(p)},
                      fmt::format("{}", fmt::join(p.remarks, "; ")),
                      Ink::plain});
    }
    page_.table(rows);
  }
  /// The written name, unless the page is in other units than the lid was drilled in.
  std::string plate(const fan_test::TestedPoint& p) const {
    if (!p.hole || page_.style().units == UnitSystem::as_written) return p.setting;
    const std::string hole = show(*p.hole, page_.style());
    return p.holes > 1 ? fmt::format("{} x {}", p.holes, hole) : hole;
  }
  std::string off(const fan_test::TestedPoint& p) const {
    if (p.point.flow > test_.fit.free_air.value) return "-";
    const double si = in(p.point.pressure - test_.fit.at(p.point.flow).pressure, Pa);
    return shown(si * Pa, "Pa", 2);
  }
  void errors() {
    if (test_.shared.empty()) return;
    page_.heading("What moves all readings together (two standard deviations)");
    page_.gap();
    std::vector<Page::Row> rows{{{"cause", "flow", "pressure"}, "", Ink::faint}};
    for (const fan_test::SharedError& e : test_.shared)
      rows.push_back({{e.cause, percent(e.flow, 2), percent(e.pressure, 2)}, "", Ink::plain});
    page_.table(rows);
  }
  void assumed() {
    if (test_.assumed.empty()) return;
    page_.heading("Taken as usual, since the readings do not say");
    page_.gap();
    std::vector<Page::Row> rows{{{"key", "value", "band"}, "", Ink::faint}};
    for (const model::Assumed& a : test_.assumed) rows.push_back({{a.key, a.value, a.band}, a.why, Ink::plain});
    page_.table(rows);
  }

  const fan_test::FanTest& test_;
  const std::optional<fan_test::NextPlate>& next_;
  Page page_;
};
}  // namespace

std::string fan_test_report(const fan_test::FanTest& test, const TextStyle& style,
                            const std::optional<fan_test::NextPlate>& next) {
  return FanTestReporter(test, style, next).write();
}
std::string fan_test_summary(const fan_test::FanTest& test, const TextStyle& style) {
  return fmt::format("{} shut, {} in free air; within {} below half of free air.",
                     show({AnyQuantity(test.fit.shut_off.value), "Pa"}, style),
                     show({AnyQuantity(test.fit.free_air.value), "l/min"}, style),
                     percent(fan_test::within_told(test), 2));
}
std::string next_words(const fan_test::NextPlate& next, const TextStyle& style) {
  const auto shown = [&](AnyQuantity q, const char* unit) { return show({q, unit}, style, 2); };
  const std::string hole = show({AnyQuantity(next.plate.hole), "mm"}, style);
  return fmt::format("Read next: the plate with {}, about {}: there the band is widest, {}.",
                     next.plate.holes > 1 ? fmt::format("{} holes of {}", next.plate.holes, hole) : "a hole of " + hole,
                     shown(AnyQuantity(next.at.flow), "l/min"),
                     show_span({AnyQuantity(std::max(next.at.low, 0.0 * Pa)), "Pa"}, {AnyQuantity(next.at.high), "Pa"},
                               {AnyQuantity(next.at.pressure), "Pa"}, style));
}
}  // namespace lumwright::report
