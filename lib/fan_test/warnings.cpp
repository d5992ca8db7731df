#include "data/fan_test.hpp"
#include "draught/fan_estimate.hpp"
#include "draught/orifice.hpp"
#include "fan_test/detail/parts.hpp"
#include "matter/air.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::fan_test {
namespace {
double rule(const char* id) { return data::fan_test_rule(id).value; }

class Warner {
 public:
  Warner(const Setting& setting, const FanTest& test, const draught::TestedFan& fitted)
      : s_(setting), test_(test), fitted_(fitted) {}
  std::vector<FanTestWarning> all() {
    leak();
    shut_off();
    spread_of_flows();
    box();
    meter();
    disagreement();
    hump();
    voltage();
    credible();
    return std::move(out_);
  }

 private:
  void add(const char* id, std::string text, std::string action) {
    out_.push_back({id, std::move(text), std::move(action)});
  }
  void leak() {
    const auto leak = draught::leak_suspicion(fitted_);
    if (!leak) return;
    const double cd = draught::discharge_coefficient("sharp hole").value;
    const Length hole =
        draught::orifice_diameter(cd, matter::standard_fan_air, leak->read, leak->flow * matter::standard_fan_air);
    add("leak",
        fmt::format(
            "The closed lid reads {} where the open plates point to {}, {:.1f} times its uncertainty. A leak of "
            "{} would do it, as much as a hole of {}; so would a fan that surges near shut-off. The curve keeps "
            "the reading, the band holds both. A leak that is there at every plate does not show here.",
            format(leak->read, "Pa"), format(leak->expected, "Pa"), leak->sigmas, format(leak->flow, "l/min"),
            format(hole, "mm")),
        "tape every seam, the lid and the fan's frame, and read the closed lid and the smallest plate again");
  }
  void shut_off() {
    if (!test_.fit.shut_off_read)
      add("no_closed_lid",
          fmt::format(
              "There is no reading with the lid closed: the pressure at shut-off, {} to {}, is drawn on from the "
              "smallest flow, and a leak cannot show.",
              format(test_.fit.shut_off.low, "Pa"), format(test_.fit.shut_off.high, "Pa")),
          "close the lid with a blank plate and read the depression");
    const double near = rule("near shut-off");
    const auto count = std::count_if(fitted_.points.begin(), fitted_.points.end(), [&](const draught::TestPoint& p) {
      return p.flow > 0.0 * m3_per_s && p.flow <= near * test_.fit.free_air.value;
    });
    if (count < 2)
      add("near_shut_off",
          fmt::format("{} open plate below {} of free air, where a lighting-up fan works.",
                      count == 0 ? "There is no" : "There is only one", percent(near, 2)),
          fmt::format("read two or three small plates, with flows below {}",
                      format(near * test_.fit.free_air.value, "l/min")));
  }
  void spread_of_flows() {
    VolumeFlow most = 0.0 * m3_per_s;
    for (const draught::TestPoint& p : fitted_.points) most = std::max(most, p.flow);
    const double covered = most / test_.fit.free_air.value;
    if (covered < rule("coverage"))
      add("coverage",
          fmt::format("The readings reach {} of the free-air flow of about {}; beyond them the curve is drawn as usual "
                      "fans go on. A lighting-up fan seldom works there.",
                      percent(covered, 2), format(test_.fit.free_air.value, "l/min")),
          "read a larger plate, or several holes together, if the rest matters");
    if (static_cast<double>(fitted_.points.size()) < rule("least readings"))
      add("few_readings", fmt::format("Only {} readings can be used.", fitted_.points.size()),
          fmt::format("read {:.0f} or more", rule("least readings")));
  }
  void box() {
    if (!s_.box || !s_.frame)
      return add("box_unknown",
                 fmt::format("Whether the box is large enough is not known without {}.",
                             s_.box ? "the fan's frame" : "its size"),
                 s_.box ? "add `fan.frame`" : "add `box.diameter`, or `box.width` and `box.height`");
    const double over = *s_.box / (*s_.frame * *s_.frame), wanted = rule("box over fan face");
    if (over < wanted) {
      const Length side = std::sqrt(wanted) * *s_.frame;
      add("small_box",
          fmt::format("The box is too small: its cross-section is {:.1f} times the face of the fan, where {:.0f} times "
                      "lets the air come to rest. Its mean speed is allowed for, its whirls and jets are not.",
                      over, wanted),
          fmt::format("take a box of {} by {} or more", format(side, "mm", 2), format(side, "mm", 2)));
    }
    Length largest = 0.0 * m;
    for (const auto& r : s_.file.readings)
      if (r.plate) largest = std::max(largest, *r.plate);
    const auto& length = s_.file.box.length;
    if (length && *length < rule("length over hole") * largest)
      add("short_box",
          fmt::format("The box is {} long, less than {:.0f} times the largest hole: its jet reaches the fan.",
                      format(*length, "mm"), rule("length over hole")),
          fmt::format("make it {} long, or stretch a screen of gauze across it",
                      format(rule("length over hole") * largest, "mm", 2)));
  }
  void meter() {
    std::vector<std::string> odd, unused;
    for (const TestedPoint& p : test_.points) {
      if (!p.left_out.empty()) unused.push_back(fmt::format("reading {} ({}): {}", p.number, p.setting, p.left_out));
      for (const std::string& remark : p.remarks)
        odd.push_back(fmt::format("reading {} ({}): {}", p.number, p.setting, remark));
    }
    if (!odd.empty())
      add("meter_range", fmt::format("Outside what the meter is good for: {}.", fmt::join(odd, "; ")),
          "use thinner plates, larger holes or a larger box; the band is wider there already");
    if (!unused.empty())
      add("left_out", fmt::format("Not used: {}.", fmt::join(unused, "; ")),
          "lay the U-tube down, or take other plates");
  }
  void disagreement() {
    if (test_.fit.widened > 1.5)
      add("disagreement",
          fmt::format(
              "The readings lie {:.1f} times further from a smooth curve than their uncertainty allows; the band "
              "is that much wider.",
              test_.fit.widened),
          "look for a leak, a slack lid, a U-tube that was not let settle, and read again");
  }
  void hump() {
    if (const auto& h = test_.fit.hump)
      add("hump",
          fmt::format(
              "The pressure climbs by {} from {} to {}, {:.1f} times its uncertainty: the fan stalls there. The "
              "curve keeps it, and there may be two flows for one pressure.",
              format(h->rise, "Pa"), format(h->dip, "l/min"), format(h->top, "l/min"), h->sigmas),
          "plan to work the fan beside it");
  }
  void voltage() {
    double furthest = 1.0;
    for (const TestedPoint& p : test_.points)
      if (p.left_out.empty() && std::abs(std::log(p.speed_ratio)) > std::abs(std::log(furthest)))
        furthest = p.speed_ratio;
    if (std::abs(std::log(furthest)) > std::log(1.1) && test_.voltage)
      add("other_voltage",
          fmt::format(
              "Readings were taken far from {}: speeds were carried over by a factor of {:.2f}, pressures by its "
              "square.",
              format(*test_.voltage, "V"), furthest),
          "test at the voltage that the fan will have, or count its speed");
  }
  void credible() {
    if (!s_.frame || !s_.speed) return;
    const draught::FanCoefficients c = draught::coefficients({.kind = s_.kind,
                                                              .frame = *s_.frame,
                                                              .speed = *s_.speed,
                                                              .shut_off = test_.fit.shut_off.value,
                                                              .free_air = test_.fit.free_air.value});
    if (c.verdict == draught::Credibility::not_credible)
      add("not_credible",
          fmt::format("At a tip speed of {} no fan of this kind develops {}.", format(c.tip_speed, "m/s"),
                      format(test_.fit.shut_off.value, "Pa")),
          "look at the fan's speed, its kind, its frame and the U-tube");
  }

  const Setting& s_;
  const FanTest& test_;
  const draught::TestedFan& fitted_;
  std::vector<FanTestWarning> out_;
};
}  // namespace

std::vector<FanTestWarning> warnings(const Setting& setting, const FanTest& test, const draught::TestedFan& fitted) {
  return Warner(setting, test, fitted).all();
}
}  // namespace lumwright::fan_test
