// One sheet as it is written: everything on it as ink, in millimetres from the lower left corner of the paper.
#pragma once
#include "drawing/detail/ink.hpp"
#include <optional>

namespace lumwright::drawing {
/// Ink that is clipped to one window, or to none.
struct Patch {
  std::optional<Extent> window;
  Inks inks;
};
struct Page {
  double width;
  double height;
  Inks fixed;                   // stamp, frame, title block: stays where it is
  std::vector<Patch> to_scale;  // views and bars: takes the stretch, about `pivot`
  Spot pivot;
};
Page compose(const Drawing& drawing, std::size_t sheet);

/// Throws ModelError where a stretch is beyond 3 %.
void require_stretch(const PrintOptions& options);
Spot stretched(Spot p, Spot pivot, const PrintOptions& options);

/// What the numbers of a sheet are in: those of its first part, for all of one drawing are alike.
Figures figures_of(const Sheet& sheet);

// Its parts.
struct Regions {
  Extent frame;
  Extent title;
  Extent strip;  // above the title block: level bar and legend
  Extent area;
};
Regions regions(const Paper& paper, bool to_cut = true);
void draw_title_block(Inks& out, const Extent& box, const Drawing& drawing, std::size_t sheet);
void draw_bars(Inks& out, const Regions& where, bool inches);  // said in inches too
void draw_legend(Inks& out, const Regions& where, const std::vector<Patch>& patches);
}  // namespace lumwright::drawing
