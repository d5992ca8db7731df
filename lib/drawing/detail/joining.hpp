// How a view that is larger than a sheet is parted, so that its pieces can be laid together: no joint through a hole,
// no mark over words, no label over a line.
#pragma once
#include "drawing/detail/ink.hpp"

namespace lumwright::drawing {
inline constexpr double overlap = 20.0;  // of the pieces of a split view, mm
/// Pieces in one direction: from `start` on, `way` 1 or -1, together as long as `whole`, none longer than `most`.
struct Row {
  double start, way, whole, most;
};
/// Sizes the pieces so that no hole is cut in two where they are joined, if possible not even where the window of
/// one ends, nor any words there;
/// one piece more where there is no other way. `along`: x or y of a spot.
void lay_pieces(const Inks& drawn, double (*along)(Spot), const Row& row, int& pieces, double& size);
/// How far along its seam a pair of crosses stands, as a share of `half`, so that they lie over no words: alike for
/// both pieces.
double clear_share(Spot middle, Spot half, const Inks& drawn);
/// The nearest place beside a cross where its label lies over no line.
Spot clear_place(Spot cross, const Inks& drawn);
}  // namespace lumwright::drawing
