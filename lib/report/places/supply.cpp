#include "report/places/sketch.hpp"

namespace lumwright::report::places {
namespace {
constexpr Pane pack{26.0, 50.0, 130.0, 122.0};

/// The cells, each with its pole to the right; too many are drawn as many.
void draw_cells(chart::Figure& figure, int series, int parallel) {
  const double wide = pack.width() / series, high = pack.height() / parallel;
  for (int row = 0; row < parallel; ++row)
    for (int i = 0; i < series; ++i) {
      const Pane cell{pack.left + i * wide + 1.0, pack.top + row * high + 2.0, pack.left + (i + 1) * wide - 3.5,
                      pack.top + (row + 1) * high - 2.0};
      const double y = 0.5 * (cell.top + cell.bottom), pole = std::min(5.0, 0.25 * cell.height());
      figure.box(cell, "seen");
      figure.box({cell.right, y - pole, cell.right + 2.5, y + pole}, "soot");
    }
}
/// The step-up is dashed where none is described.
void draw_wires(chart::Figure& figure, bool step_up) {
  figure.trace({{130.0, 64.0}, {140.0, 64.0}, {140.0, 40.0}, {306.0, 40.0}, {306.0, 62.0}}, "seen");
  figure.trace({{40.0, 122.0}, {40.0, 136.0}, {306.0, 136.0}, {306.0, 108.0}}, "seen");
  figure.box({152.0, 34.0, 176.0, 46.0}, "void-seen");  // fuse
  figure.line({156.0, 40.0}, {172.0, 40.0}, "seen");
  figure.box({194.0, 56.0, 256.0, 120.0}, step_up ? "void-seen" : "ghost-box");
  figure.words({225.0, 92.0}, "step-up", "small", chart::Anchor::middle);
  for (const double x : {206.0, 244.0}) {
    figure.line({x, 40.0}, {x, 56.0}, "seen");
    figure.line({x, 120.0}, {x, 136.0}, "seen");
  }
  figure.line({208.0, 40.0}, {242.0, 40.0}, "gap");
  figure.circle({306.0, 85.0}, 23.0, "void-seen");
  figure.words({306.0, 89.0}, "fan", "small", chart::Anchor::middle);
}
/// A pair of wires, cut through and much enlarged.
void draw_pair(chart::Figure& figure) {
  for (const double x : {224.0, 246.0}) {
    figure.circle({x, 182.0}, 11.0, "seen");
    figure.circle({x, 182.0}, 5.0, "cut-metal");
  }
}
void draw_the_supply(Sketch& s) {
  draw_cells(s.figure(), s.sizes().count("supply.pack.series", 12), s.sizes().count("supply.pack.parallel", 4));
  const auto& step_up = s.sizes().build().supply.step_up;
  draw_wires(s.figure(), step_up.module || step_up.output);
  draw_pair(s.figure());
  s.between("supply.pack.series", {pack.right, pack.top}, {pack.left, pack.top}, 16.0);
  s.between("supply.pack.parallel", {pack.left, pack.top}, {pack.left, pack.bottom}, 15.0);
  s.at("supply.pack.capacity", {pack.left + 34.0, pack.bottom - 8.0}, {pack.left + 46.0, 162.0});
  s.at("supply.stop_at", {135.0, 64.0}, {120.0, 18.0});
  s.at("supply.fuse", {164.0, 46.0}, {172.0, 72.0});
  s.at("supply.step_up.output", {244.0, 40.0}, {244.0, 16.0});
  s.between("supply.leads.length", {130.0, 136.0}, {306.0, 136.0}, 20.0);
  s.at("supply.leads.section", {222.0, 184.0}, {196.0, 194.0});
  s.between("supply.leads.outside", {257.0, 182.0}, {213.0, 182.0}, -19.0);
}
}  // namespace

Drawing supply() {
  return {.id = "supply",
          .part = "supply",
          .title = "Pack and wires",
          .shows =
              "The pack with its cells, a fuse, the step-up and the fan, joined by wires; below a pair of wires "
              "cut through.",
          .height = 206.0,
          .marks = {{"supply.pack.series", "cells one behind the other"},
                    {"supply.pack.parallel", "strings side by side"},
                    {"supply.pack.capacity", "capacity of a cell"},
                    {"supply.stop_at", "stop at"},
                    {"supply.fuse", "fuse"},
                    {"supply.step_up.output", "step-up gives"},
                    {"supply.leads.length", "pack to fan, one way"},
                    {"supply.leads.section", "copper of each wire"},
                    {"supply.leads.outside", "the pair, outside"}},
          .draw = draw_the_supply};
}
}  // namespace lumwright::report::places
