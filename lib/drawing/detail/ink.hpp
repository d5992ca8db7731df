// What entities come down to before they are written: strokes, bows and words. Numbers are millimetres here.
#pragma once
#include "drawing/drawing.hpp"
#include <string>
#include <variant>
#include <vector>

namespace lumwright::drawing {
struct Spot {
  double x;
  double y;
};
inline Spot operator+(Spot a, Spot b) { return {a.x + b.x, a.y + b.y}; }
inline Spot operator-(Spot a, Spot b) { return {a.x - b.x, a.y - b.y}; }
inline Spot operator*(double k, Spot a) { return {k * a.x, k * a.y}; }
inline double dot(Spot a, Spot b) { return a.x * b.x + a.y * b.y; }
inline Spot left_of(Spot direction) { return {-direction.y, direction.x}; }
inline Spot toward(double radians) { return {std::cos(radians), std::sin(radians)}; }
inline Spot spot(Point p) { return {in(p.x, mm), in(p.y, mm)}; }
inline constexpr double pi = 3.14159265358979323846;

struct Stroke {
  std::vector<Spot> points;
  bool closed;
  bool filled;  // arrowheads: three points
};
struct Bow {
  Spot centre;
  double radius;
  double from;   // radians
  double sweep;  // counter-clockwise; 2 pi: a whole circle
  bool whole() const { return sweep >= 2.0 * pi; }
};
struct Words {
  Spot at;  // on the base line
  double height;
  double turn;  // radians
  Across across;
  std::string text;  // one line, cleaned
};
struct Ink {
  std::variant<Stroke, Bow, Words> shape;
  Layer layer;
  Layer look;  // whose pen: differs from the layer in the legend alone
};
using Inks = std::vector<Ink>;

/// Numbers of a box.
struct Extent {
  Spot low{1e300, 1e300};
  Spot high{-1e300, -1e300};
  bool empty() const { return high.x < low.x; }
  void add(Spot p);
};
Extent extent(const Inks& inks);
Inks turned(Inks inks);  // a quarter turn to the left about the origin; words stay readable from below and the right
Inks shifted(Inks inks, Spot by);

/// All of the view but its caption, as ink. Throws ModelError as `pdf` does.
Inks ink(const View& view);
/// The lines of the caption: name, then material and thickness, then the remarks of the note, parted by "; ".
std::vector<std::string> caption_lines(const View& view);
/// With the caption beneath.
Inks captioned_ink(const View& view);

// The pieces it is made of.
void stroke(Inks& out, std::vector<Spot> points, Layer layer, bool closed = false);
void arrowhead(Inks& out, Spot tip, Spot pointing, Layer layer);
/// How a view writes its sizes: the numbers are true, the lines to its scale.
struct Written {
  Figures figures;
  double scale;
};
struct Lettering {
  double height;
  Across across = Across::left;
  Up up = Up::base;
  double turn = 0.0;
};
void letter(Inks& out, Spot at, const std::string& words, Lettering how, Layer layer);
void add_dimension(Inks& out, const LinearDimension& d, const Written& written);
void add_dimension(Inks& out, const DiameterDimension& d, const Written& written);
void add_dimension(Inks& out, const RadiusDimension& d, const Written& written);
void add_dimension(Inks& out, const AngularDimension& d, double scale);
void add_leader(Inks& out, const Leader& leader, double scale);
void add_hatch(Inks& out, const Hatch& hatch, double scale);
}  // namespace lumwright::drawing
