// A true-scale drawing: views of parts, the sheets that they lie on, the title block, and how it is to be printed.
#pragma once
#include "drawing/entities.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::drawing {
/// What sizes are written in: over the line of a dimension, and beneath it.
enum class Figures { mm, mm_inches, inches_mm, inches };
/// A size within words, in the same: "1.2 mm", "1/16 in (1.59 mm)".
std::string size_text(Length size, Figures figures);
/// "17.05 to 17.28", each rounded inwards, so that what is printed never allows more: hundredths of a millimetre or, in
/// inches, thou; finer where the limits lie nearer together. Without the unit.
std::string limits_text(Length least, Length most, Figures figures);

/// One part as seen from one side, at true size in co-ordinates of its own.
struct View {
  std::string name;                      // written beneath, with what follows
  std::string material = {};             // "brass CZ108"; empty: nothing is said
  std::optional<Length> thickness = {};  // of the sheet it is cut from
  std::string note = {};                 // "make 2"
  Figures figures = Figures::mm;         // of its dimensions
  double scale = 1.0;                    // of what is drawn; letters, arrows and `away` are millimetres of paper
  std::vector<Entity> entities = {};
};

/// The box round all that is drawn, with the caption and all dimensions. Throws ModelError as `pdf` does.
Box bounds(const View& view);

struct Paper {
  std::string name;
  Length width;
  Length height;
};
/// "A4", "Letter" or "A3", upright, whatever the case. Throws ModelError for another word.
Paper paper(std::string_view name);

struct TitleBlock {
  std::string name;
  std::string number = {};  // drawing or file name
  std::string date = {};    // as given: nothing is read from a clock
  std::string drawn_by = {};
  std::string tolerance = {};  // "turned ±0.05, the rest ISO 2768-m": where no limits are written
  bool draft = false;          // DRAFT across every sheet
};

struct Placed {
  View view;
  Point at;                        // where the view's own origin lies, from the lower left corner of the paper
  bool turned = false;             // a quarter turn to the left about that origin
  std::optional<Box> window = {};  // on the paper: what lies outside is left out
  bool captioned = true;
};
struct Sheet {
  std::vector<Placed> views;
  bool to_cut = true;    // with the bars to measure; else all of the paper is for the drawing
  bool to_scale = true;  // false: a diagram
};
struct Drawing {
  TitleBlock title;
  Paper paper;
  std::vector<Sheet> sheets;
};

/// What a sheet has for its views, from the lower left corner of the paper. Throws ModelError for too small a paper.
Box room_on(const Paper& paper, bool to_cut);

enum class Oversize {
  refuse,
  split,
  say  // split, and where that takes more than 64 sheets the view gives way to a sentence that says so
};
/// Puts the views on few sheets, side by side and never over each other; a quarter turn where that saves a sheet. A
/// view larger than a sheet is split over several, with crosses to lay on each other, or refused: ModelError with its
/// size.
Drawing lay_out(const TitleBlock& title, const Paper& paper, const std::vector<View>& views, Oversize oversize);

/// What to multiply by so that a printer that drew `measured` for `true_length` draws true: 100/99.2. Throws ModelError
/// beyond 3 %: such a print was fitted to the page.
double stretch(Length true_length, Length measured);
struct PrintOptions {
  double stretch_x = 1.0;  // across the upright paper, from its 100 mm bar
  double stretch_y = 1.0;  // along it, from its 150 mm bar
};

/// All sheets as one PDF that asks not to be scaled. The same drawing gives the same bytes. Throws ModelError where a
/// number is not finite, a size is not positive or a stretch is beyond 3 %; text that the font lacks becomes `?`.
std::string pdf(const Drawing& drawing, const PrintOptions& options = {});
/// One SVG in millimetres a sheet. Throws as `pdf` does.
std::vector<std::string> svg(const Drawing& drawing, const PrintOptions& options = {});
/// One part as DXF R12 in millimetres, at the view's own co-ordinates, with a line of 100 mm beneath to check by. No
/// stretch: it goes to a machine. Throws as `pdf` does.
std::string dxf(const View& view, const TitleBlock& title);

/// Things that templates need again and again.
void add_hole(View& view, Point centre, Length diameter);  // to drill, with its cross
void add_bore(View& view, Point centre, Length diameter);  // to cut, with a cross at its centre
void add_rectangle(View& view, Box box, Layer layer = Layer::cut);
void add_centre_lines(View& view, Point centre, Length reach);
}  // namespace lumwright::drawing
