#include "report/chart/figure.hpp"
#include "report/chart/labels.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::report::chart {
namespace {
constexpr double sample = 26.0, sample_gap = 6.0, key_gap = 18.0, key_line = 20.0;

std::string points(const std::vector<Spot>& spots) {
  std::string text;
  for (const Spot& spot : spots) {
    if (!text.empty()) text += ' ';
    text += coordinate(spot.x) + "," + coordinate(spot.y);
  }
  return text;
}
double key_width(const Key& key) { return sample + sample_gap + text_width(key.words, letter) + key_gap; }
}  // namespace

Figure::Figure(Tag parent, const About& about, double width, double height)
    : id_(about.id), width_(width), svg_(parent.add("svg")), defs_(svg_), into_(svg_) {
  svg_.set("class", narrow() ? "chart narrow" : "chart wide").set("role", "img");
  svg_.set("viewBox", "0 0 " + coordinate(width) + " " + coordinate(height));
  svg_.set("aria-labelledby", id_ + "-t " + id_ + "-d");
  svg_.add("title", about.title).set("id", id_ + "-t");
  svg_.add("desc", about.description).set("id", id_ + "-d");
  defs_ = svg_.add("defs");
}
Tag Figure::drawn(const char* shape, std::string_view look, std::string_view clip) {
  const Tag element = into_.add(shape).set("class", look);
  if (!clip.empty()) element.set("clip-path", "url(#" + std::string(clip) + ")");
  return element;
}
void Figure::line(Spot a, Spot b, std::string_view look) {
  drawn("line", look).set("x1", a.x).set("y1", a.y).set("x2", b.x).set("y2", b.y);
}
void Figure::trace(const std::vector<Spot>& spots, std::string_view look, std::string_view clip) {
  drawn("polyline", look, clip).set("points", points(spots));
}
void Figure::arrow_head(Spot at, Spot from, double length, double half_width, std::string_view look) {
  const double dx = at.x - from.x, dy = at.y - from.y, far = std::max(1e-6, std::hypot(dx, dy));
  const Spot along{dx / far, dy / far}, back{at.x - length * along.x, at.y - length * along.y};
  shape({at,
         {back.x - half_width * along.y, back.y + half_width * along.x},
         {back.x + half_width * along.y, back.y - half_width * along.x}},
        look);
}
void Figure::shape(const std::vector<Spot>& spots, std::string_view look, std::string_view clip) {
  drawn("polygon", look, clip).set("points", points(spots));
}
void Figure::box(const Pane& a, std::string_view look) {
  drawn("rect", look).set("x", a.left).set("y", a.top).set("width", a.width()).set("height", a.height());
}
std::string Figure::hatch_fill(Hatch hatch) {
  const auto kind = static_cast<std::size_t>(hatch);
  const std::string name = id_ + "-h" + std::to_string(kind);
  if (!hatches_[kind]) {
    hatches_[kind] = true;
    const Tag pattern = defs_.add("pattern").set("id", name).set("patternUnits", "userSpaceOnUse");
    pattern.set("width", 6.0).set("height", 6.0);
    if (hatch == Hatch::dots)
      pattern.add("circle").set("class", "dot").set("cx", 3.0).set("cy", 3.0).set("r", 1.1);
    else
      pattern.add("path")
          .set("class", "hatch")
          .set("d", hatch == Hatch::slant ? "M-1 1L1 -1M-1 7L7 -1M5 7L7 5" : "M-1 5L1 7M-1 -1L7 7M5 -1L7 1");
  }
  return "url(#" + name + ")";
}
void Figure::hatched(const Pane& a, Hatch hatch) {
  hatched({{a.left, a.top}, {a.right, a.top}, {a.right, a.bottom}, {a.left, a.bottom}}, hatch);
}
void Figure::hatched(const std::vector<Spot>& spots, Hatch hatch, std::string_view clip) {
  const std::string fill = hatch_fill(hatch);
  drawn("polygon", "hatched", clip).set("points", points(spots)).set("fill", fill);
}
void Figure::words(Spot at, std::string_view text, std::string_view look, Anchor anchor) {
  const Tag element = into_.add("text", text).set("x", at.x).set("y", at.y).set("class", look);
  if (anchor != Anchor::start) element.set("text-anchor", anchor == Anchor::middle ? "middle" : "end");
}
void Figure::mark(Spot at, Marker marker, std::string_view look) {
  constexpr double r = 5.0;
  const std::string ring = std::string(look) + " ring";
  switch (marker) {
    case Marker::circle:
    case Marker::ring:
      drawn("circle", marker == Marker::ring ? ring : look).set("cx", at.x).set("cy", at.y).set("r", r);
      return;
    case Marker::diamond:
      return shape({{at.x, at.y - r - 1}, {at.x + r + 1, at.y}, {at.x, at.y + r + 1}, {at.x - r - 1, at.y}}, look);
    case Marker::square:
      return box({at.x - r + 0.5, at.y - r + 0.5, at.x + r - 0.5, at.y + r - 0.5}, ring);
    case Marker::cross:
      line({at.x - r, at.y - r}, {at.x + r, at.y + r}, look);
      return line({at.x - r, at.y + r}, {at.x + r, at.y - r}, look);
    case Marker::speck:
      return specks({at}, look);
  }
}
void Figure::circle(Spot middle, double radius, std::string_view look) {
  drawn("circle", look).set("cx", middle.x).set("cy", middle.y).set("r", radius);
}
void Figure::begin_place(std::string_view key, std::string_view title, std::string_view look) {
  into_ = svg_.add("g").set("class", look).set("data-key", key);
  into_.add("title", title);
}
void Figure::specks(const std::vector<Spot>& spots, std::string_view look, std::string_view clip) {
  std::string path;
  for (const Spot& s : spots) path += "M" + coordinate(s.x - 2.5) + " " + coordinate(s.y - 2.5) + "l5 5m-5 0l5 -5";
  if (!path.empty()) drawn("path", look, clip).set("d", path);
}
std::string Figure::clip(const Pane& a) {
  std::string name = id_ + "-c" + std::to_string(++clips_);
  const Tag path = defs_.add("clipPath").set("id", name);
  path.add("rect").set("x", a.left).set("y", a.top).set("width", a.width()).set("height", a.height());
  return name;
}

double legend_height(const std::vector<Key>& keys, double width) {
  double x = 0.0, height = keys.empty() ? 0.0 : key_line;
  for (const Key& key : keys) {
    if (x > 0.0 && x + key_width(key) - key_gap > width) {
      x = 0.0;
      height += key_line;
    }
    x += key_width(key);
  }
  return height;
}
void legend(Figure& figure, const std::vector<Key>& keys, double left, double top, double width) {
  double x = 0.0, y = top + letter;
  for (const Key& key : keys) {
    if (x > 0.0 && x + key_width(key) - key_gap > width) {
      x = 0.0;
      y += key_line;
    }
    const double at = left + x, middle = y - 0.36 * letter;
    if (!key.area.empty()) figure.box({at, middle - 6.0, at + sample, middle + 6.0}, key.area);
    if (key.hatch >= 0)
      figure.hatched(Pane{at, middle - 6.0, at + sample, middle + 6.0}, static_cast<Hatch>(key.hatch));
    if (!key.look.empty()) figure.line({at, middle}, {at + sample, middle}, key.look);
    if (key.marker >= 0)
      figure.mark({at + 0.5 * sample, middle}, static_cast<Marker>(key.marker),
                  key.mark_look.empty() ? key.look : key.mark_look);
    figure.words({at + sample + sample_gap, y}, key.words, "label");
    x += key_width(key);
  }
}
}  // namespace lumwright::report::chart
