#include "report/chart/plot.hpp"
#include "report/chart/callouts.hpp"
#include "report/chart/labels.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::report::chart {
namespace {
constexpr double tick_length = 4.0;
}

Plot::Plot(Figure& figure, const Pane& area, const Axis& x, const Axis& y)
    : figure_(figure),
      area_(area),
      x_{x.range, area.left, area.right},
      y_{y.range, area.bottom, area.top},
      clip_(figure.clip(area)) {
  axes(x, y);
}
void Plot::axes(const Axis& x, const Axis& y) {
  const Ticks up = nice_ticks(y.range, y.ticks), along = nice_ticks(x.range, x.ticks);
  for (const double at : up.at) {
    const double here = y_.at(at);
    figure_.line({area_.left, here}, {area_.right, here}, "grid");
    figure_.words({area_.left - 7.0, here + 0.35 * letter}, tick_text(at, up.decimals), "tick", Anchor::end);
  }
  for (const double at : along.at) {
    const double here = x_.at(at);
    figure_.line({here, area_.top}, {here, area_.bottom}, "grid");
    figure_.line({here, area_.bottom}, {here, area_.bottom + tick_length}, "axis");
    if (x.numbered)
      figure_.words({here, area_.bottom + tick_length + letter}, tick_text(at, along.decimals), "tick", Anchor::middle);
  }
  figure_.line({area_.left, area_.bottom}, {area_.right, area_.bottom}, "axis");
  figure_.line({area_.left, area_.top}, {area_.left, area_.bottom}, "axis");
  if (!y.title.empty()) figure_.words({area_.left, area_.top - 8.0}, y.title, "axis-title");
  if (x.numbered && !x.title.empty())
    figure_.words({area_.right, area_.bottom + tick_length + 2.5 * letter}, x.title, "axis-title", Anchor::end);
}
std::vector<Spot> Plot::spots(const std::vector<Point>& points) const {
  std::vector<Spot> found;
  found.reserve(points.size());
  for (const Point& p : points) found.push_back(at(p));
  return found;
}
void Plot::curve(const std::vector<Point>& points, std::string_view look) {
  constexpr double closely = 4.0;
  const std::vector<Spot> all = spots(points);
  figure_.trace(all, look, clip_);
  for (std::size_t i = 1; i < all.size(); ++i) {
    const double dx = all[i].x - all[i - 1].x, dy = all[i].y - all[i - 1].y;
    const int pieces = 1 + static_cast<int>(std::min(std::hypot(dx, dy) / closely, 200.0));
    for (int k = 0; k < pieces; ++k) drawn_.push_back({all[i - 1].x + dx * k / pieces, all[i - 1].y + dy * k / pieces});
  }
}
void Plot::band(const std::vector<Slice>& slices, std::string_view look) {
  std::vector<Spot> round;
  round.reserve(2 * slices.size());
  for (const Slice& s : slices) round.push_back(at({s.x, s.low}));
  for (auto s = slices.rbegin(); s != slices.rend(); ++s) round.push_back(at({s->x, s->high}));
  if (!round.empty()) figure_.shape(round, look, clip_);
}
void Plot::stripe(Range x, std::string_view look) {
  const double from = std::clamp(x_.at(x.low), area_.left, area_.right),
               to = std::clamp(x_.at(x.high), area_.left, area_.right);
  figure_.box({from, area_.top, to, area_.bottom}, look);
}
void Plot::stripe(Range x, Hatch hatch) {
  const double from = std::clamp(x_.at(x.low), area_.left, area_.right),
               to = std::clamp(x_.at(x.high), area_.left, area_.right);
  figure_.hatched({from, area_.top, to, area_.bottom}, hatch);
}
void Plot::moment(double x, std::string_view look) {
  figure_.line({x_.at(x), area_.top}, {x_.at(x), area_.bottom}, look);
}
void Plot::levels(const std::vector<Level>& all) {
  std::vector<double> wanted;
  std::vector<Anchor> ends;
  for (const Level& level : all) {
    const double here = y_.at(level.y), width = text_width(level.words, letter);
    double least = 1e9;
    wanted.push_back(here);
    ends.push_back(level.end);
    for (const Anchor end : {level.end, level.end == Anchor::start ? Anchor::end : Anchor::start}) {
      if (end != level.end && !level.either_end) continue;
      const double left = end == Anchor::start ? area_.left + 6.0 : area_.right - 6.0 - width;
      const double above = cover({left, here - 5.0 - letter, left + width, here - 1.0}),
                   beneath = cover({left, here + 1.0, left + width, here + 5.0 + letter});
      if (std::min(above, beneath) >= least) continue;
      least = std::min(above, beneath);
      wanted.back() = above <= beneath ? here - 5.0 : here + letter + 1.0;
      ends.back() = end;
    }
  }
  const std::vector<double> bases = nudged(wanted, 1.2 * letter, {area_.top + letter, area_.bottom - 4.0});
  for (std::size_t i = 0; i < all.size(); ++i) {
    const double here = y_.at(all[i].y);
    figure_.line({area_.left, here}, {area_.right, here}, all[i].look);
    const double x = ends[i] == Anchor::start ? area_.left + 6.0 : area_.right - 6.0;
    figure_.words({x, bases[i]}, all[i].words, "label halo", ends[i]);
    const double width = text_width(all[i].words, letter), left = ends[i] == Anchor::start ? x : x - width;
    taken_.push_back({left, bases[i] - letter, left + width, bases[i] + 3.0});
  }
}
void Plot::mark(Point p, Marker marker, std::string_view look) {
  const Spot here = at(p);
  figure_.mark(here, marker, look);
  taken_.push_back({here.x - 7.0, here.y - 7.0, here.x + 7.0, here.y + 7.0});
}
void Plot::specks(const std::vector<Point>& points, std::string_view look) {
  std::vector<Spot> inside;
  for (const Point& p : points) {
    const Spot here = at(p);
    if (here.x >= area_.left && here.x <= area_.right && here.y >= area_.top && here.y <= area_.bottom)
      inside.push_back(here);
  }
  figure_.specks(inside, look);
  drawn_.insert(drawn_.end(), inside.begin(), inside.end());
}
void Plot::call_out(const std::vector<Point>& points, const std::vector<std::string>& words, std::string_view look) {
  constexpr double radius = 7.0;
  std::vector<Called> called;
  for (std::size_t i = 0; i < points.size(); ++i) called.push_back({at(points[i]), words.at(i)});
  const std::vector<Callout> placed = beside_marks(called, area_, [&](const Pane& p) { return cover(p); });
  for (std::size_t i = 0; i < placed.size(); ++i) {
    if (!placed[i].apart) continue;
    const Pane& p = placed[i].words;
    const Spot mark = called[i].mark, end{p.left > mark.x ? p.left - 2.0 : p.right + 2.0, 0.5 * (p.top + p.bottom)};
    const double length = std::hypot(end.x - mark.x, end.y - mark.y);
    const double share = std::min(radius / length, 1.0);
    figure_.line({mark.x + share * (end.x - mark.x), mark.y + share * (end.y - mark.y)}, end, "carry");
  }
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const Pane& p = placed[i].words;
    figure_.words({p.left, 0.5 * (p.top + p.bottom) + 0.36 * letter}, called[i].words, look);
    taken_.push_back(p);
  }
}
double Plot::cover(const Pane& words) const {
  double cost = 0.0;
  for (const Spot& spot : drawn_)
    if (spot.x > words.left && spot.x < words.right && spot.y > words.top && spot.y < words.bottom) cost += 1.0;
  for (const Pane& other : taken_)
    if (other.left < words.right && words.left < other.right && other.top < words.bottom && words.top < other.bottom)
      cost += 100.0;
  const bool outside =
      words.left < area_.left || words.right > area_.right || words.top < area_.top || words.bottom > area_.bottom;
  return cost + (outside ? 1000.0 : 0.0);
}
void Plot::note(Point p, std::string_view words, std::string_view look) {
  constexpr double near = 34.0;
  const Spot here = at(p);
  const double width = text_width(words, letter);
  Pane best{};
  double least = 1e9;
  for (const double up : {-16.0, 16.0, -34.0, 34.0, -56.0, 56.0, -80.0, 80.0, -110.0, 110.0})
    for (const double along : {10.0, -10.0 - width, -0.5 * width, 40.0, -40.0 - width}) {
      const Pane tried{here.x + along, here.y + up - 0.6 * letter, here.x + along + width, here.y + up + 0.6 * letter};
      const double cost = cover(tried) + 0.03 * std::abs(up) + 0.02 * std::abs(along + 0.5 * width);
      if (cost < least) {
        least = cost;
        best = tried;
      }
    }
  best.left = std::clamp(best.left, area_.left, std::max(area_.left, area_.right - width));
  const Spot middle{std::clamp(here.x, best.left, best.left + width), 0.5 * (best.top + best.bottom)};
  if (std::hypot(middle.x - here.x, middle.y - here.y) > near)
    figure_.line(here, {middle.x, middle.y < here.y ? best.bottom : best.top}, "carry");
  figure_.words({best.left, middle.y + 0.36 * letter}, words, look);
  taken_.push_back(best);
}
}  // namespace lumwright::report::chart
