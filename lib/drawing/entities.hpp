// What a view is made of: lines, circles, words, dimensions, marks and hatching, each on a layer.
#pragma once
#include "drawing/geometry.hpp"
#include "drawing/layer.hpp"
#include <string>
#include <variant>
#include <vector>

namespace lumwright::drawing {
struct Line {
  Point from;
  Point to;
  Layer layer = Layer::cut;
};
struct Polyline {
  std::vector<Point> points;
  bool closed = false;
  Layer layer = Layer::cut;
};
struct Circle {
  Point centre;
  Length diameter;
  Layer layer = Layer::cut;
};
struct Arc {  // counter-clockwise from `from` to `to`
  Point centre;
  Length radius;
  Angle from;
  Angle to;
  Layer layer = Layer::cut;
};

enum class Across { left, centre, right };  // which part of the words lies at the point
enum class Up { base, middle, top };
/// Words; '\n' begins a new line. Not positive height: the height of notes.
struct Text {
  Point at;
  std::string words;
  Length height = 0.0 * mm;
  Across across = Across::left;
  Up up = Up::base;
  Angle rotation = {};
  Layer layer = Layer::text;
};

enum class Along { horizontal, vertical, aligned };  // which distance between two points is meant
/// A length between two points. The dimension line runs `away` from the outer point: up or right when positive, down or
/// left when negative; aligned: to the left of from-to when positive. The number is measured from the points, never
/// typed.
struct LinearDimension {
  Point from;
  Point to;
  Along along = Along::horizontal;
  Length away = 8.0 * mm;
  std::string before = {};  // "2 x "
  std::string after = {};   // " min"
  bool at_start = false;    // where the number has no room between the arrows it stands left or below them, not right
};
/// A line from the circle at `at`, with the diameter on a shoulder `away` from the circle: "3 x (sign)2.3 drill".
struct DiameterDimension {
  Point centre;
  Length diameter;
  Angle at = degrees(45.0);
  Length away = 8.0 * mm;
  std::string before = {};
  std::string after = {};
};
struct RadiusDimension {
  Point centre;
  Length radius;
  Angle at = degrees(45.0);
  Length away = 8.0 * mm;
  std::string before = {};
  std::string after = {};
};
/// The angle at `apex`, counter-clockwise from one ray to the other, on an arc of `radius`; the rays begin at `inner`.
struct AngularDimension {
  Point apex;
  Angle from;
  Angle to;
  Length radius;
  Length inner = 0.0 * mm;
  std::string before = {};
  std::string after = {};
};

/// A thin unbroken cross to prick, each arm `arm` long.
struct CentreMark {
  Point at;
  Length arm = 3.0 * mm;
};
/// An arrow at `tip`, a bend at `elbow` and the note on a shoulder; '\n' in the note begins a line beneath.
struct Leader {
  Point tip;
  Point elbow;
  std::string note;
  Layer layer = Layer::dimension;
};
/// A line with an arrowhead at its end, for the way of something.
struct Arrow {
  std::vector<Point> points;
  Layer layer = Layer::flow;
};

struct Disc {
  Point centre;
  Length diameter;
};
using Boundary = std::variant<std::vector<Point>, Disc>;
/// Slanting lines wherever an odd number of boundaries encloses: a polygon; a ring is two discs.
struct Hatch {
  std::vector<Boundary> boundaries;
  Length spacing = 2.0 * mm;
  Angle slant = degrees(45.0);
};

using Entity = std::variant<Line, Polyline, Circle, Arc, Text, LinearDimension, DiameterDimension, RadiusDimension,
                            AngularDimension, CentreMark, Leader, Arrow, Hatch>;
}  // namespace lumwright::drawing
