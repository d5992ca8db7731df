#include "workshop/detail/tube_heating.hpp"
#include "matter/air.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::workshop {
namespace {
constexpr std::size_t engaged_cells = 30, most_free_cells = 120;
constexpr double first_second = 1.0, later = 1.15;
constexpr double never = 1e12;  // s: a step that settles everything

double plain(AnyQuantity q) { return q.si; }
double plain(Temperature t) { return in(above_absolute_zero(t), K); }

void check_walls(const TubeInChimney& in) {
  for (const HeatWall* wall : {&in.tube, &in.chimney}) {
    require_above_zero("thickness of a wall", wall->thickness);
    require_above_zero("density of a wall", wall->density);
    require_above_zero("specific heat of a wall", wall->specific_heat);
    require_above_zero("conductivity of a wall", wall->conductivity);
  }
  require_above_zero("tube outside diameter", in.outside);
  require_above_zero("bore of the tube", in.outside - 2.0 * in.tube.thickness);
  require_above_zero("engaged length", in.engaged);
  require_not_negative("length of the tube above the chimney", in.free);
  require_above_zero("heat from gas to tube", in.gas_side);
  require_above_zero("heat from tube to chimney", in.gap_factor);
  require_above_zero("heat from chimney to air", in.air_side);
}

/// All in SI, for each square metre of the tube's outside.
class Walls {
 public:
  Walls(const TubeInChimney& in, const std::vector<Temperature>& chimney_first)
      : gas_(plain(in.gas)), air_(plain(in.air)), h_free_(plain(in.air_side)) {
    const double cell = plain(in.engaged) / engaged_cells, wall = plain(in.tube.thickness), d = plain(in.outside);
    const double free_cells = std::round(plain(in.free) / cell);
    const auto free = static_cast<std::size_t>(std::min(free_cells, static_cast<double>(most_free_cells)));
    along_ = plain(in.tube.conductivity) * wall / (cell * cell);
    holds_ = plain(in.tube.density) * plain(in.tube.specific_heat) * wall;
    h_gas_ = plain(in.gas_side) * (d - 2.0 * wall) / d;
    const double gap = plain(std::max(in.gap, roughness)), bore = d + 2.0 * gap, shell = plain(in.chimney.thickness);
    h_gap_ = in.gap_factor * plain(matter::air_conductivity(kelvin(0.5 * (gas_ + air_)))) / gap;
    h_out_ = h_free_ * (bore + 2.0 * shell) / d;
    chimney_holds_ = plain(in.chimney.density) * plain(in.chimney.specific_heat) * shell * (bore + shell) / d;
    tube_.assign(engaged_cells + free, air_);
    upper_ = right_ = tube_;
    chimney_.assign(engaged_cells, air_);
    for (std::size_t i = 0; i < std::min(engaged_cells, chimney_first.size()); ++i)
      chimney_[i] = plain(chimney_first[i]);
  }
  /// Backward Euler: the chimney's balance at each place is put into the tube's, which leaves three diagonals.
  void step(double dt) {
    const std::size_t n = tube_.size();
    const double stores = chimney_holds_ / dt, shares = stores + h_gap_ + h_out_, kept = holds_ / dt;
    const double to_chimney = h_gap_ / shares;
    for (std::size_t i = 0; i < n; ++i) {
      double middle = kept + h_gas_, known = kept * tube_[i] + h_gas_ * gas_;
      if (i < engaged_cells) {
        middle += h_gap_ * (1.0 - to_chimney);
        known += to_chimney * (stores * chimney_[i] + h_out_ * air_);
      } else {
        middle += h_free_;
        known += h_free_ * air_;
      }
      const double below = i > 0 ? along_ : 0.0, above = i + 1 < n ? along_ : 0.0;
      const double over_pivot = 1.0 / (middle + below + above - (i > 0 ? below * upper_[i - 1] : 0.0));
      upper_[i] = above * over_pivot;
      right_[i] = (known + (i > 0 ? below * right_[i - 1] : 0.0)) * over_pivot;
    }
    for (std::size_t i = n; i-- > 0;) tube_[i] = right_[i] + (i + 1 < n ? upper_[i] * tube_[i + 1] : 0.0);
    for (std::size_t i = 0; i < engaged_cells; ++i)
      chimney_[i] = (stores * chimney_[i] + h_gap_ * tube_[i] + h_out_ * air_) / shares;
  }
  HeatingMoment at(double seconds) const {
    HeatingMoment moment{.time = seconds * s, .places = {}};
    moment.places.reserve(engaged_cells);
    for (std::size_t i = 0; i < engaged_cells; ++i) moment.places.push_back({kelvin(tube_[i]), kelvin(chimney_[i])});
    return moment;
  }

 private:
  double gas_, air_, h_free_, along_ = 0.0, holds_ = 0.0, h_gas_ = 0.0, h_gap_ = 0.0, h_out_ = 0.0,
                              chimney_holds_ = 0.0;
  std::vector<double> tube_, chimney_, upper_, right_;
};
}  // namespace

HeatingCourse heat_tube(const TubeInChimney& input, const std::vector<Temperature>& chimney_first, Duration until) {
  check_walls(input);
  require_above_zero("time to follow the tube's heat", until);
  Walls walls(input, chimney_first);
  HeatingCourse course;
  double before = 0.0;
  for (double t = first_second; before < in(until, s); t *= later) {
    const double now = std::min(t, in(until, s));
    walls.step(now - before);
    course.moments.push_back(walls.at(now));
    before = now;
  }
  walls.step(never);
  course.settled = walls.at(never);
  return course;
}
HeatingCourse heat_tube(const TubeInChimney& input, Duration until) { return heat_tube(input, {}, until); }
}  // namespace lumwright::workshop
