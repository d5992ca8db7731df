// Views onto sheets: first the tall ones, each as far up and left as it goes; the order that needs fewest sheets wins.
#include "drawing/detail/joining.hpp"
#include "drawing/detail/lettering.hpp"
#include "drawing/detail/page.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <numeric>

namespace lumwright::drawing {
namespace {
constexpr double view_gap = 6.0;  // between views
constexpr double heading = 6.0;   // above a piece: which one it is
constexpr double tiny = 1e-9;
constexpr int most_pieces = 64;  // of one view: more than anybody glues together

struct Piece {  // a view as a box to place
  const View* view;
  Extent box;
  double width() const { return box.high.x - box.low.x; }
  double height() const { return box.high.y - box.low.y; }
};
double wide(const Extent& e) { return e.high.x - e.low.x; }
double high(const Extent& e) { return e.high.y - e.low.y; }

Point point(Spot p) { return {p.x * mm, p.y * mm}; }
Box box_of(const Extent& e) { return {point(e.low), point(e.high)}; }

struct Filled {
  Sheet sheet;
  std::vector<Extent> taken;
};
bool clear_of(const Extent& a, const std::vector<Extent>& taken) {
  return std::none_of(taken.begin(), taken.end(), [&](const Extent& b) {
    return a.low.x < b.high.x + view_gap - tiny && b.low.x < a.high.x + view_gap - tiny &&
           a.low.y < b.high.y + view_gap - tiny && b.low.y < a.high.y + view_gap - tiny;
  });
}
// The highest, then leftmost free place: beside or beneath what is there.
std::optional<Extent> place(const Extent& area, const std::vector<Extent>& taken, double width, double height) {
  std::vector<double> lefts{area.low.x}, tops{area.high.y};
  for (const Extent& t : taken) lefts.push_back(t.high.x + view_gap), tops.push_back(t.low.y - view_gap);
  std::sort(lefts.begin(), lefts.end());
  std::sort(tops.begin(), tops.end(), std::greater<>());
  for (const double top : tops)
    for (const double left : lefts) {
      const Extent e{{left, top - height}, {left + width, top}};
      const bool inside = e.high.x <= area.high.x + tiny && e.low.y >= area.low.y - tiny;
      if (inside && clear_of(e, taken)) return e;
    }
  return std::nullopt;
}
bool put(Filled& filled, const Extent& area, const Piece& piece, bool turn) {
  const auto at = turn ? place(area, filled.taken, piece.height(), piece.width())
                       : place(area, filled.taken, piece.width(), piece.height());
  if (!at) return false;
  const Spot corner = turn ? Spot{-piece.box.high.y, piece.box.low.x} : piece.box.low;
  filled.taken.push_back(*at);
  filled.sheet.views.push_back({*piece.view, point(at->low - corner), turn});
  return true;
}
std::vector<Filled> pack(const Extent& area, const std::vector<Piece>& pieces) {
  std::vector<Filled> sheets;
  for (const Piece& piece : pieces) {
    const auto fits = [&](bool turn) {
      return std::any_of(sheets.begin(), sheets.end(), [&](Filled& f) { return put(f, area, piece, turn); });
    };
    if (fits(false) || fits(true)) continue;
    Filled fresh;
    if (!put(fresh, area, piece, false) && !put(fresh, area, piece, true))
      throw std::logic_error("a view that was to fit a sheet does not");
    sheets.push_back(std::move(fresh));
  }
  return sheets;
}
std::vector<Filled> fewest(const Extent& area, const std::vector<Piece>& pieces) {
  const auto by = [&](auto size) {
    std::vector<Piece> sorted = pieces;
    std::stable_sort(sorted.begin(), sorted.end(), [&](const Piece& a, const Piece& b) { return size(a) > size(b); });
    return pack(area, sorted);
  };
  std::vector<Filled> best = pack(area, pieces);
  const auto keep_better = [&](std::vector<Filled> other) {
    if (other.size() < best.size()) best = std::move(other);
  };
  keep_better(by([](const Piece& p) { return p.height(); }));
  keep_better(by([](const Piece& p) { return p.width(); }));
  keep_better(by([](const Piece& p) { return p.width() * p.height(); }));
  return best;
}

// A cross to lay on the same cross of the neighbouring piece.
void match_cross(View& marks, Spot at, const std::string& label, const Inks& drawn) {
  for (const Spot arm : {Spot{5.0, 0.0}, Spot{0.0, 5.0}})
    marks.entities.push_back(Line{point(at - arm), point(at + arm), Layer::calibration});
  marks.entities.push_back(Polyline{
      {point(at - Spot{2.5, 0.0}), point(at - Spot{0.0, 2.5}), point(at + Spot{2.5, 0.0}), point(at + Spot{0.0, 2.5})},
      true,
      Layer::calibration});  // a circle would look like a hole to drill
  marks.entities.push_back(
      Text{.at = point(clear_place(at, drawn)), .words = label, .height = 2.5 * mm, .layer = Layer::calibration});
}
struct TooManyPieces : ModelError {
  using ModelError::ModelError;
};
struct Grid {
  int columns;
  int rows;
  Extent box;  // of the whole, turned or not
  double width;
  double height;  // of one piece
  Extent cell(int i, int j) const {
    const Spot low{box.low.x + i * (width - overlap), box.high.y - height - j * (height - overlap)};
    return {low, low + Spot{width, height}};
  }
};
int pieces_for(double whole, double room) {
  return whole <= room + tiny ? 1 : static_cast<int>(std::ceil((whole - overlap) / (room - overlap) - tiny));
}
Grid grid_for(const Extent& box, double width, double height) {
  const int columns = pieces_for(wide(box), width), rows = pieces_for(high(box), height);
  return {columns, rows, box, (wide(box) + (columns - 1) * overlap) / columns,
          (high(box) + (rows - 1) * overlap) / rows};
}
// Two crosses in every seam of the piece, a quarter of its side from its ends, so that they fix the angle too.
void draw_crosses(View& marks, const Grid& grid, int i, int j, const Inks& drawn) {
  const Extent cell = grid.cell(i, j);
  const auto pair = [&](Spot middle, Spot half, const std::string& seam) {
    const double far = clear_share(middle, half, drawn);
    match_cross(marks, middle - far * half, seam + "a", drawn);
    match_cross(marks, middle + far * half, seam + "b", drawn);
  };
  const Spot centre = 0.5 * (cell.low + cell.high), up{0.0, grid.height / 4.0}, along{grid.width / 4.0, 0.0};
  const auto upright = [&](int k) { return fmt::format("{}", j * (grid.columns - 1) + k + 1); };
  const auto level = [&](int k) {
    return fmt::format("{}", grid.rows * (grid.columns - 1) + k * grid.columns + i + 1);
  };
  if (i > 0) pair({cell.low.x + overlap / 2.0, centre.y}, up, upright(i - 1));
  if (i + 1 < grid.columns) pair({cell.high.x - overlap / 2.0, centre.y}, up, upright(i));
  if (j > 0) pair({centre.x, cell.high.y - overlap / 2.0}, along, level(j - 1));
  if (j + 1 < grid.rows) pair({centre.x, cell.low.y + overlap / 2.0}, along, level(j));
}
// Without its caption, which a seam would cut through: the heading of each piece and the title block say the same.
std::vector<Sheet> split(const View& view, const Extent& area) {
  const Spot pen_room{1.0, 1.0};  // half of a line along the edge would be lost
  Extent standing = extent(ink(view));
  standing = {standing.low - pen_room, standing.high + pen_room};
  const Extent lying{{-standing.high.y, standing.low.x}, {-standing.low.y, standing.high.x}};
  const double room = high(area) - heading;
  const Grid upright = grid_for(standing, wide(area), room), turned = grid_for(lying, wide(area), room);
  const bool turn = turned.columns * turned.rows < upright.columns * upright.rows;
  Grid grid = turn ? turned : upright;
  if (grid.columns * grid.rows > most_pieces)
    throw TooManyPieces(fmt::format("drawing `{}` of {:.0f} x {:.0f} mm would need {} sheets", clean(view.name),
                                    wide(standing), high(standing), grid.columns * grid.rows));
  const Inks drawn = turn ? drawing::turned(ink(view)) : ink(view);
  const auto x = [](Spot p) { return p.x; };
  const auto y = [](Spot p) { return p.y; };
  lay_pieces(drawn, x, {grid.box.low.x, 1.0, wide(grid.box), wide(area)}, grid.columns, grid.width);
  lay_pieces(drawn, y, {grid.box.high.y, -1.0, high(grid.box), room}, grid.rows, grid.height);
  std::vector<Sheet> sheets;
  for (int j = 0; j < grid.rows; ++j)
    for (int i = 0; i < grid.columns; ++i) {
      const Extent cell = grid.cell(i, j);
      const Spot shift = Spot{area.low.x, area.high.y - heading - grid.height} - cell.low;
      View marks{.name = ""};
      draw_crosses(marks, grid, i, j, drawn);
      const int pieces = grid.columns * grid.rows;
      const std::string title =
          clean(view.name, 40) +
          (pieces > 1 ? fmt::format(": piece {} of {}, lay cross on cross, then cut", sheets.size() + 1, pieces) : "");
      marks.entities.push_back(Text{.at = point({cell.low.x, cell.high.y + 2.0}), .words = title, .height = 2.5 * mm});
      Sheet sheet;
      sheet.views.push_back({view, point(shift), turn, box_of({cell.low + shift, cell.high + shift}), false});
      sheet.views.push_back({marks, point(shift), false, std::nullopt, false});
      sheets.push_back(std::move(sheet));
    }
  return sheets;
}
// What stands in the place of a view that is not drawn; short lines, so that it fits any paper beside others.
View instead_of(const View& view, const TooManyPieces& why) {
  View said{.name = view.name, .material = view.material, .thickness = view.thickness};
  double down = 0.0;
  for (const std::string& line : {std::string("Not drawn here:"), std::string(why.what()),
                                  std::string("Mark it out from holes.csv and the cut list.")}) {
    said.entities.push_back(Text{.at = point({0.0, down}), .words = line, .height = 2.5 * mm});
    down -= 5.0;
  }
  return said;
}
}  // namespace

Box room_on(const Paper& paper, bool to_cut) { return box_of(regions(paper, to_cut).area); }

Drawing lay_out(const TitleBlock& title, const Paper& paper, const std::vector<View>& views, Oversize oversize) {
  const Extent area = regions(paper).area;
  std::vector<Piece> fitting;
  Drawing out{title, paper, {}};
  std::vector<Sheet> large;
  std::vector<View> said;
  for (const View& view : views) {
    const Extent box = extent(captioned_ink(view));
    if (box.empty()) continue;
    const Piece piece{&view, box};
    const double w = piece.width() - tiny, h = piece.height() - tiny;
    if ((w <= wide(area) && h <= high(area)) || (h <= wide(area) && w <= high(area))) {
      fitting.push_back(piece);
      continue;
    }
    if (oversize == Oversize::refuse)
      throw ModelError(fmt::format("drawing `{}` of {:.1f} x {:.1f} mm does not fit the {:.1f} x {:.1f} mm of {} paper",
                                   clean(view.name), piece.width(), piece.height(), wide(area), high(area),
                                   clean(paper.name)));
    try {
      for (Sheet& sheet : split(view, area)) large.push_back(std::move(sheet));
    } catch (const TooManyPieces& why) {
      if (oversize != Oversize::say) throw;
      said.push_back(instead_of(view, why));
    }
  }
  for (const View& view : said) fitting.push_back({&view, extent(captioned_ink(view))});
  if (!fitting.empty())
    for (Filled& filled : fewest(area, fitting)) out.sheets.push_back(std::move(filled.sheet));
  for (Sheet& sheet : large) out.sheets.push_back(std::move(sheet));
  return out;
}
}  // namespace lumwright::drawing
