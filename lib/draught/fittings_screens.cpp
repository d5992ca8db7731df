// Plates, screens and obstacles: the second half of fittings.hpp.
#include "draught/detail/fittings_charts.hpp"
#include "draught/fittings.hpp"
#include "quantity/require.hpp"

namespace lumwright::draught {
namespace {
/// The gas turns through a curtain pi D h instead of pi D^2 / 4; the heads of both differ by (D / 4h)^2.
double curtain_loss(Length opening, Length gap) {
  const double ratio = opening / (4.0 * gap);
  return ratio * ratio;
}
}  // namespace

double perforated_plate(double open_share) {
  require_above_zero("open share of a plate", open_share);
  require_within("open share of a plate", open_share, {0.0, 1.0});
  const double closed = 1.0 - open_share;
  const double root = (0.707 * std::sqrt(closed) + closed) / open_share;
  return root * root;
}

double wire_screen(double open_share) {
  require_above_zero("open share of a screen", open_share);
  require_within("open share of a screen", open_share, {0.0, 1.0});
  const double closed = 1.0 - open_share, narrows = closed / open_share;
  return 1.3 * closed + narrows * narrows;
}

double blast_pipe_obstruction(const MouthGap& mouth) {
  require_above_zero("tube bore", mouth.tube_bore);
  require_above_zero("gap between blast pipe and tube", mouth.gap);
  return curtain_loss(mouth.tube_bore, mouth.gap);
}

double box_shadow(const BoxDepth& box) {
  require_above_zero("opening in front of the fan", box.fan_opening);
  require_above_zero("depth of the box in front of the fan", box.distance);
  return curtain_loss(box.fan_opening, box.distance);
}
}  // namespace lumwright::draught
