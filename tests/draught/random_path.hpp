// Gas paths and fans thrown by chance, within what people build and far outside it.
#pragma once
#include "draught/duty.hpp"
#include <cmath>
#include <random>

namespace lumwright {
/// Distribution by hand: the standard library's differ between vendors.
class Dice {
 public:
  explicit Dice(unsigned seed) : engine_(seed) {}
  double share() { return (static_cast<double>(engine_()) + 0.5) / 4294967296.0; }
  double between(double low, double high) { return low + (high - low) * share(); }
  double decade(double low, double high) { return low * std::pow(high / low, share()); }
  bool chance(double p) { return share() < p; }
  int whole(int low, int high) { return low + static_cast<int>(share() * (high - low + 1)); }

 private:
  std::mt19937 engine_;
};

inline draught::Leak random_leak(Dice& dice, bool as_share) {
  if (as_share) return draught::LeakShare{dice.between(0.0, 0.4)};
  return dice.decade(1e-7, 1e-4) * m2;
}

/// A path that somebody might build; every optional part is there with a chance of four in five.
inline draught::GasPath random_path(Dice& dice, bool shares) {
  draught::GasPath path;
  const auto part = [&] { return dice.chance(0.8); };
  const Area grate = dice.decade(8e-4, 8e-3) * m2;
  if (part()) path.air_entry = draught::Hole{.area = dice.decade(1e-4, 2e-3) * m2, .discharge = 0.62};
  if (part()) path.grate = draught::Grate{.area = grate, .open_share = dice.between(0.1, 0.6)};
  path.bed = draught::Bed{.particle = dice.decade(3e-3, 15e-3) * m,
                          .sphericity = dice.between(0.6, 0.9),
                          .voidage = dice.between(0.38, 0.55),
                          .depth = dice.decade(0.01, 0.08) * m,
                          .grate = grate};
  if (part()) path.past_bed = random_leak(dice, shares);
  path.tubes = draught::FireTubes{.count = dice.whole(1, 12),
                                  .each = {.bore = dice.decade(4e-3, 8e-3) * m,
                                           .length = dice.decade(0.08, 0.3) * m,
                                           .roughness = dice.between(0.0, 0.2) * mm},
                                  .firebox = dice.decade(1e-3, 1e-2) * m2,
                                  .rise = (dice.chance(0.2) ? 0.1 : 0.0) * m};
  if (part()) path.smokebox = random_leak(dice, shares);
  const Length bore = dice.decade(8e-3, 30e-3) * m;
  if (dice.chance(0.5)) path.blast_pipe_gap = dice.decade(3e-3, 40e-3) * m;
  if (part())
    path.annulus = draught::Annulus{.mean_diameter = bore + 2.0 * mm,
                                    .radial_gap = dice.decade(0.03e-3, 1e-3) * m,
                                    .engaged = dice.decade(5e-3, 40e-3) * m,
                                    .eccentricity = dice.share()};
  path.adapter =
      draught::Adapter{.tube = {.bore = bore, .length = dice.decade(0.02, 0.2) * m, .roughness = 0.0015 * mm},
                       .inlet = {.kind = static_cast<draught::Inlet>(dice.whole(0, 2)),
                                 .bore = bore,
                                 .wall = 0.4 * mm,
                                 .projection = 10.0 * mm,
                                 .radius = dice.between(0.0, 3.0) * mm},
                       .fittings = dice.chance(0.5) ? dice.between(0.0, 2.0) : 0.0,
                       .rise = dice.between(0.0, 0.3) * m,
                       .wall = std::nullopt};
  path.box =
      draught::Box{.bore = dice.between(1.2, 5.0) * bore,
                   .depth = {.fan_opening = dice.decade(35e-3, 110e-3) * m, .distance = dice.decade(10e-3, 60e-3) * m},
                   .rise = dice.between(0.0, 0.06) * m,
                   .wall = std::nullopt};
  if (part()) path.bleed = draught::Hole{.area = dice.decade(1e-6, 3e-4) * m2, .discharge = 0.61};
  return path;
}

/// Walls that lose heat, for a path whose gas is hot.
inline draught::GasPath with_walls(draught::GasPath path) {
  const draught::Tube tube = path.adapter->tube;
  path.adapter->wall =
      draught::TubeWall{.bore = tube.bore, .outside = tube.bore + 1.0 * mm, .length = tube.length, .emissivity = 0.4};
  path.box->wall = draught::BoxWall{.height = 30.0 * mm, .area = 0.0123 * m2, .emissivity = 0.6, .stirring = 2.0};
  return path;
}

inline draught::FixedTemperatures random_fire(Dice& dice) {
  const double firebox = dice.between(500.0, 1200.0), exit = dice.between(120.0, 400.0);
  return draught::FixedTemperatures({.bed_mean = degC(dice.between(400.0, 1100.0)),
                                     .firebox = degC(firebox),
                                     .tube_mean = degC(0.5 * (firebox + exit)),
                                     .tube_exit = degC(exit),
                                     .fuel_per_air = dice.between(0.0, 0.1)});
}

/// A data sheet without a spread.
inline draught::CurveBasis test_basis() {
  return {.origin = draught::CurveOrigin::data_sheet,
          .sentence = "",
          .standing = data::Standing::unsaid,
          .pressure = exactly(1.0),
          .flow = exactly(1.0)};
}

/// The curve of data::fan_shape's kind, with a knee: ends between those of a weak 40 mm fan and a strong 120 mm one.
inline draught::FanCurve random_curve(Dice& dice) {
  const Pressure p = dice.decade(20.0, 400.0) * Pa;
  const VolumeFlow q = dice.decade(2.0, 50.0) * litre_per_s;
  const double knee = dice.between(0.35, 0.75);
  return draught::FanCurve(dice.chance(0.5) ? data::FanKind::axial : data::FanKind::centrifugal, 4000.0 * rpm,
                           {{0.0 * q, p}, {0.2 * q, 0.8 * p}, {0.4 * q, knee * p}, {0.6 * q, 0.53 * p}, {q, 0.0 * p}},
                           test_basis());
}
inline draught::RunningFan random_fan(Dice& dice) {
  const draught::FanCurve curve = random_curve(dice);
  return draught::running(curve, dice.between(2000.0, 5000.0) * rpm);
}

inline const draught::Ambient room{.temperature = degC(20.0), .pressure = atmosphere};
}  // namespace lumwright
