// What a line is for: cut here, drill here, fold here, read this. Each has its own pen.
#pragma once
#include "data/drawing.hpp"
#include <array>
#include <string_view>

namespace lumwright::drawing {
/// In the order in which they are drawn: what comes later lies on top.
enum class Layer {
  stamp,
  hatch,
  centre,
  hidden,
  outline,  // an edge that is seen, not cut: sections and side views
  flow,     // the way of the gas in a section
  cut,
  drill,
  fold,
  mark,  // crosses to prick
  dimension,
  text,
  calibration,
  frame
};
inline constexpr std::array all_layers = {
    Layer::stamp, Layer::hatch, Layer::centre, Layer::hidden,    Layer::outline, Layer::flow,        Layer::cut,
    Layer::drill, Layer::fold,  Layer::mark,   Layer::dimension, Layer::text,    Layer::calibration, Layer::frame};

/// The row of lib/data/drawing.yaml.
const data::Pen& pen(Layer layer);
}  // namespace lumwright::drawing
