// Is every feature of a part located and sized by what is dimensioned, and no size given twice? And can it be read?
#include "description/writer.hpp"
#include "drawing/crowding.hpp"
#include "drawing/detail/page.hpp"
#include "model/fan_unit.hpp"
#include "model/solved.hpp"
#include "report/../plan/describe.hpp"
#include "report/templates/templates.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <map>
#include <set>
#include <tuple>

namespace lumwright::drawing {
using model::MadeBox;
using model::solve_cold;
using model::Solved;
using report::Template;
using report::templates;

namespace {
using Micron = long long;
Micron micron(Length size) { return std::llround(in(size, um)); }

/// Places along one direction, tied together by dimensions. The middle, 0, is tied to whatever lies evenly about it.
class Ties {
 public:
  void place(Micron at) { parent_.try_emplace(at, at); }
  /// False where the two were tied already: the size is given twice.
  bool tie(Micron a, Micron b) {
    place(a), place(b);
    const Micron x = root(a), y = root(b);
    parent_[x] = y;
    return x != y;
  }
  void tie_even_pairs() {
    place(0);
    for (const auto& [at, unused] : std::map<Micron, Micron>(parent_))
      if (at > 0)
        for (const Micron other : {-at - 1, -at, -at + 1})
          if (parent_.contains(other) && root(at) == root(other)) tie(0, at);
  }
  bool tied(Micron a, Micron b) { return root(a) == root(b); }
  std::vector<Micron> places() const {
    std::vector<Micron> all;
    for (const auto& [at, unused] : parent_) all.push_back(at);
    return all;
  }

 private:
  Micron root(Micron at) {
    while (parent_.at(at) != at) at = parent_.at(at);
    return at;
  }
  std::map<Micron, Micron> parent_;
};
int times_of(const std::string& before) {
  const auto x = before.find(" x ");
  return x == std::string::npos ? 1 : std::stoi(before.substr(0, x));
}
struct Features {
  Ties across, up;
  std::map<Micron, int> holes, sized;  // by diameter: how many there are, and for how many it is written
  std::vector<Point> centres;
  std::set<Micron> pitch_circles, other_circles;
};
Features features(const View& view, std::vector<std::string>& complaints) {
  Features f;
  const auto edge = [&](Point a, Point b) {
    if (micron(a.x) == micron(b.x)) f.across.place(micron(a.x));
    if (micron(a.y) == micron(b.y)) f.up.place(micron(a.y));
  };
  for (const Entity& entity : view.entities) {
    if (const auto* c = std::get_if<Circle>(&entity)) {
      if (c->layer == Layer::centre) f.pitch_circles.insert(micron(c->diameter));
      if (c->layer == Layer::cut || c->layer == Layer::drill || c->layer == Layer::fold) ++f.holes[micron(c->diameter)];
      if (c->layer == Layer::cut || c->layer == Layer::drill) f.centres.push_back(c->centre);
    } else if (const auto* p = std::get_if<Polyline>(&entity); p != nullptr && p->layer == Layer::cut) {
      if (p->points.size() == 4)
        for (std::size_t i = 0; i < 4; ++i) edge(p->points[i], p->points[(i + 1) % 4]);
      for (const Point& at : p->points)  // of the net: its outermost edges
        if (p->points.size() > 4 && (at.x == bounds(view).low.x || at.y == bounds(view).low.y)) edge(at, at);
    } else if (const auto* l = std::get_if<drawing::Line>(&entity); l != nullptr && l->layer == Layer::fold) {
      edge(l->from, l->to);
    }
  }
  std::set<std::tuple<Micron, Micron, Micron, bool>> rows;
  for (const Entity& entity : view.entities) {
    if (const auto* d = std::get_if<DiameterDimension>(&entity)) f.sized[micron(d->diameter)] += times_of(d->before);
    const auto* d = std::get_if<LinearDimension>(&entity);
    if (d == nullptr) continue;
    const bool level = d->along == Along::horizontal;
    const Micron from = micron(level ? d->from.x : d->from.y), to = micron(level ? d->to.x : d->to.y);
    // rows in opposite walls of a net may be alike
    const bool again = !rows.insert({from, to, micron(level ? d->from.y : d->from.x), level}).second;
    for (int i = 0; i < times_of(d->before); ++i)
      if (!(level ? f.across : f.up).tie(from + i * (to - from), to + i * (to - from)) &&
          (again || view.name != "Box, flat"))
        complaints.push_back(fmt::format("{} mm is given twice", in(d->to.x - d->from.x, mm)));
  }
  return f;
}
/// "hole at 3, 4 is not placed"; empty for a part that is defined, once.
std::vector<std::string> not_defined(const View& view, const MadeBox* net) {
  std::vector<std::string> complaints;
  Features f = features(view, complaints);
  for (const auto& [diameter, count] : f.holes)
    if (f.sized[diameter] != count)
      complaints.push_back(fmt::format("{} holes of {} um, sized {} times", count, diameter, f.sized[diameter]));
  for (const Micron circle : f.pitch_circles)
    if (f.sized[circle] != 1) complaints.push_back(fmt::format("pitch circle of {} um", circle));
  if (net != nullptr) {  // "20 from the rim", in words: rows of holes against the edges
    const Micron half = micron(0.5 * net->net->across.total),
                 row = micron(0.5 * net->net->across.total - 0.5 * net->height);
    for (Ties* ties : {&f.across, &f.up})
      for (const Micron side : {-1, 1}) {
        ties->place(side * half);
        ties->tie(side * half, side * row);
      }
  }
  const bool from_edges = view.name == "Side";  // else from the middle
  for (Ties* ties : {&f.across, &f.up}) from_edges ? ties->place(0) : ties->tie_even_pairs();
  const auto placed = [&](Ties& ties, Micron at) {
    const std::vector<Micron> known = ties.places();
    for (const Micron near : {at - 1, at, at + 1})  // a micron is what rounding leaves
      if (std::find(known.begin(), known.end(), near) != known.end() && ties.tied(near, from_edges ? known.front() : 0))
        return true;
    return !from_edges && std::abs(at) <= 1;
  };
  for (const Point& centre : f.centres) {
    const Micron out = std::llround(2e3 * std::hypot(in(centre.x, mm), in(centre.y, mm)));
    const bool on_circle = std::any_of(f.pitch_circles.begin(), f.pitch_circles.end(),
                                       [&](Micron circle) { return std::abs(circle - out) <= 2; });
    if (on_circle) continue;
    const bool x = placed(f.across, micron(centre.x)), y = placed(f.up, micron(centre.y));
    if (!x || !y)
      complaints.push_back(fmt::format("hole at {:.2f}, {:.2f} is not placed {}", in(centre.x, mm), in(centre.y, mm),
                                       x ? "up" : "across"));
  }
  for (const Micron at : f.across.places())
    if (!placed(f.across, at) && at != 0)
      complaints.push_back(fmt::format("edge or fold at x = {} um is not placed", at));
  for (const Micron at : f.up.places())
    if (!placed(f.up, at) && at != 0) complaints.push_back(fmt::format("edge or fold at y = {} um is not placed", at));
  return complaints;
}
// A hole that is cut in two where pieces are joined cannot be pricked. The joint runs through two crosses, a and b.
void no_hole_is_joined(const Page& page) {
  std::vector<Spot> crosses;
  for (const Patch& patch : page.to_scale)
    for (const Ink& ink : patch.inks)
      if (const auto* s = std::get_if<Stroke>(&ink.shape); s != nullptr && ink.layer == Layer::calibration && s->closed)
        crosses.push_back(0.5 * (s->points.at(0) + s->points.at(2)));
  REQUIRE(crosses.size() % 2 == 0);
  for (std::size_t i = 0; i < crosses.size(); i += 2)
    for (const Patch& patch : page.to_scale)
      for (const Ink& ink : patch.inks) {
        const auto* hole = std::get_if<Bow>(&ink.shape);
        if (hole == nullptr || hole->radius > 50.0 || (ink.layer != Layer::drill && ink.layer != Layer::cut)) continue;
        const bool upright = std::abs(crosses[i].x - crosses[i + 1].x) < 1e-6;
        const double apart = upright ? hole->centre.x - crosses[i].x : hole->centre.y - crosses[i].y;
        CHECK(std::abs(apart) >= hole->radius - 1e-6);
      }
}
std::string box_build(const char* shape, int bleeds, double height, const char* mount, const char* kind) {
  const std::string fan = std::string(kind) == "axial"
                              ? "fan: { kind: axial, frame: 60 mm, thickness: 15 mm, mass: 40 g, mount: "
                              : "fan: { kind: centrifugal, frame: 50 mm, thickness: 15 mm, mass: 40 g, holes: { "
                                "measured: yes, diameter: 4.3 "
                                "mm, opening: 31 mm, inlet_x: 25 mm, inlet_y: 26.5 mm, lugs: [ [4.5 mm, 45 mm], [47 "
                                "mm, 7.5 mm] ] }, mount: ";
  return fmt::format(
             "engine: {{ chimney: {{ bore: 14.8 mm, depth: 36 mm, wall: 1.6 mm }} }}\nadapter:\n"
             "  tube: {{ outside: 14.4 mm, wall: 0.36 mm, length: 38 mm, engaged: 30 mm }}\n"
             "  flange: {{ outside: 42 mm, thickness: 1.2 mm, holes: {{ count: 3, pitch_circle: 30 mm, thread: 8BA }} "
             "}}\n"
             "  box: {{ shape: {}, diameter: 84 mm, height: {:.0f} mm, sheet: 0.25 mm }}\n{}",
             shape, height, bleeds > 0 ? fmt::format("  bleed: {{ holes: {}, diameter: 5 mm }}\n", bleeds) : "") +
         fan + mount + " }\nsupply: { leads: { outside: 3 mm } }\n";
}
std::vector<description::Build> all_builds() {
  std::vector<description::Build> all;
  for (const std::string& name : example_names()) all.push_back(example(name));
  for (const char* shape : {"round", "square"})
    for (const int bleeds : {0, 1, 2, 3, 7})
      for (const double height : {20.0, 40.0, 90.0})
        for (const char* mount : {"inside", "outside"})
          for (const char* kind : {"axial", "centrifugal"})
            all.push_back(described(box_build(shape, bleeds, height, mount, kind)));
  return all;
}
}  // namespace

TEST_CASE("every feature of every part is placed and sized by its dimensions, and none twice") {
  for (const description::Build& build : all_builds()) {
    const Solved solved = solve_cold(build);
    REQUIRE(solved.unit);
    for (const Template& part : templates(*solved.unit, build, UnitSystem::metric)) {
      CAPTURE(build.file);
      CAPTURE(part.id);
      CAPTURE(description::write_build(build));
      const bool net = part.id == "side" && solved.unit->box->square;
      for (const std::string& complaint : not_defined(part.view, net ? &*solved.unit->box : nullptr))
        FAIL_CHECK(complaint);
    }
  }
}
TEST_CASE("what is not dimensioned, or twice, is found") {  // the test above can fail
  const description::Build build = example("tarn-beck");
  const Solved solved = solve_cold(build);
  const auto parts = templates(*solved.unit, build, UnitSystem::metric);
  for (const Template& part : parts) {
    CAPTURE(part.id);
    std::size_t dropped = 0;
    for (std::size_t i = 0; i < part.view.entities.size(); ++i) {
      const Entity& entity = part.view.entities[i];
      if (!std::holds_alternative<LinearDimension>(entity) && !std::holds_alternative<DiameterDimension>(entity))
        continue;
      View poorer = part.view, richer = part.view;
      poorer.entities.erase(poorer.entities.begin() + static_cast<std::ptrdiff_t>(i));
      richer.entities.push_back(entity);
      if (part.id != "tube") CHECK_FALSE(not_defined(poorer, nullptr).empty());
      CHECK_FALSE(not_defined(richer, nullptr).empty());
      ++dropped;
    }
    CHECK(dropped > 0);
  }
}
TEST_CASE("on every sheet words are read from below or from the right, and no line runs through one") {
  for (const description::Build& build : all_builds())
    for (const char* paper : {"A4", "Letter"}) {
      const Solved solved = solve_cold(build);
      std::vector<View> views;
      for (const Template& part : templates(*solved.unit, build, UnitSystem::as_written)) views.push_back(part.view);
      const Drawing sheets = lay_out({.name = "x"}, drawing::paper(paper), views, Oversize::say);
      for (std::size_t i = 0; i < sheets.sheets.size(); ++i) {
        CAPTURE(description::write_build(build));
        CAPTURE(i);
        const Page page = compose(sheets, i);
        Inks all;
        bool piece = false;
        for (const Patch& patch : page.to_scale) {
          piece = piece || patch.window;
          all.insert(all.end(), patch.inks.begin(), patch.inks.end());
        }
        for (const Ink& ink : all)
          if (const auto* words = std::get_if<Words>(&ink.shape)) {
            CHECK(words->turn > -1e-9);
            CHECK(words->turn < pi / 2.0 + 1e-9);
          }
        if (!piece) {
          for (const std::string& complaint : crowding(all)) FAIL_CHECK(complaint);
          continue;
        }
        no_hole_is_joined(page);
        for (const Ink& label : all) {  // "1a": where pieces are joined; what lies beyond the window is not seen
          const auto* words = std::get_if<Words>(&label.shape);
          if (words == nullptr || words->text.size() > 3 || (words->text.back() != 'a' && words->text.back() != 'b'))
            continue;
          CAPTURE(words->text);
          for (const Ink& ink : all)
            if (&ink != &label && ink.layer != Layer::hatch) CHECK_FALSE(runs_through(Plate(*words), ink));
        }
      }
    }
}
}  // namespace lumwright::drawing
