#include "workshop/stability.hpp"
#include "data/shop_rules.hpp"
#include "data/strengths.hpp"
#include "quantity/require.hpp"
#include "workshop/plane.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <numbers>

namespace lumwright::workshop {
namespace {
constexpr Length no_arm = 0.0 * mm;
constexpr Force newton = kg * m / s / s;

void check(const Stack& stack) {
  for (const StackPart& part : stack.parts) {
    require_not_negative(("mass of the " + part.name).c_str(), part.mass, "g");
    require_finite("height of a part over the mouth", part.centre, "mm");
    require_finite("distance of a part from the axis", part.off_axis, "mm");
  }
  require_above_zero("engaged length", stack.engaged, "mm");
  require_not_negative("clearance in the chimney", stack.clearance, "mm");
  require_not_negative("radius of the seat", stack.seat, "mm");
  require_not_negative("height of the knock", stack.top, "mm");
  if (!(stack.push >= 0.0 * newton) || !is_finite(stack.push))  // the table of units has none of force
    throw ModelError(fmt::format("push of {:.6g} N is not zero or more", in(stack.push, newton)));
  require_above_zero("chimney bore", stack.chimney.bore, "mm");
  if (stack.chimney.wall) require_above_zero("chimney wall", *stack.chimney.wall, "mm");
  if (stack.chimney.height) require_above_zero("free height of the chimney", *stack.chimney.height, "mm");
}

struct Balance {
  Mass mass;
  Length centre;
  Length off_axis;
};
Balance balance(const std::vector<StackPart>& parts) {
  Mass mass = 0.0 * g;
  auto height = mass * no_arm, side = mass * no_arm;
  for (const StackPart& part : parts) {
    mass += part.mass;
    height += part.mass * part.centre;
    side += part.mass * part.off_axis;
  }
  require_above_zero("mass of the fan stack", mass, "g");
  return {mass, height / mass, side / mass};
}

// integral of cos(n x)/(n^2 - 1) summed over n >= 2, from 0 to x; odd, x within a turn
double ring_integral(double x) {
  const double a = std::abs(x), pi = std::numbers::pi;
  const double value = 0.5 * a + 0.75 * std::sin(a) - 0.5 * pi + 0.5 * (pi - a) * std::cos(a);
  return x < 0.0 ? -value : value;
}
double ring_point(double x) {  // the sum itself
  return 0.5 + 0.25 * std::cos(x) - 0.5 * (std::numbers::pi - x) * std::sin(x);
}

struct Lean {
  Force weight;
  Moment at_mouth;  // knocked, about the mouth
  Length offset;    // of the weight, sideways
};
void stresses(const Stack& stack, ChimneyLoad& load) {
  const ChimneyTube& chimney = stack.chimney;
  if (!chimney.wall) return;
  const data::StrengthRow& metal = data::strength(chimney.metal);
  const Length outside = chimney.bore + 2.0 * *chimney.wall, radius = 0.5 * (chimney.bore + *chimney.wall);
  const Moment ring = ring_moment(
      {.push = load.at_mouth, .mean_radius = radius, .half_angle = data::shop_number("load spread").value.value});
  load.ring_stress = 6.0 * ring / (radius * *chimney.wall * *chimney.wall);
  Pressure worst = *load.ring_stress;
  if (load.at_foot) {
    const Volume modulus = std::numbers::pi / 32.0 * (pow<4>(outside) - pow<4>(chimney.bore)) / outside;
    load.foot_stress = *load.at_foot / modulus;
    worst = std::max(worst, *load.foot_stress);
  }
  const Pressure left = metal.hot_share * metal.proof;
  load.allowed = left / data::shop_number("strength reserve").value.value;
  if (worst > 0.0 * Pa) load.reserve = left / worst;
}
ChimneyLoad chimney_load(const Stack& stack, const Lean& lean) {
  const Length engaged = stack.engaged;
  const Force end = lean.at_mouth / engaged, mouth = stack.push + end;
  ChimneyLoad load{
      .at_mouth = mouth,
      .at_tube_end = end,
      .bearing = (4.0 * stack.push / engaged + 6.0 * lean.at_mouth / (engaged * engaged)) / stack.chimney.bore,
      .at_foot = std::nullopt,
      .foot_stress = std::nullopt,
      .ring_stress = std::nullopt,
      .allowed = std::nullopt,
      .reserve = std::nullopt};
  if (stack.chimney.height) load.at_foot = stack.push * (stack.top + *stack.chimney.height) + lean.weight * lean.offset;
  stresses(stack, load);
  return load;
}
std::optional<double> over(Moment holds, Moment tips) {
  return tips > 0.0 * newton * m ? std::optional<double>(holds / tips) : std::nullopt;
}
}  // namespace

Force usual_knock() { return data::shop_mass("knock").value.value * standard_gravity; }

Moment ring_moment(const RingLoad& load) {
  require_above_zero("mean radius of the ring", load.mean_radius, "mm");
  if (!(load.half_angle >= 0.0 && load.half_angle <= 90.0 * degree))
    throw ModelError(
        fmt::format("half angle of the push {:.6g} degrees is not between 0 and 90", load.half_angle / degree));
  double largest = ring_point(0.0);
  if (load.half_angle > 1e-6) {  // below, the difference of integrals loses its digits
    largest = 0.0;
    for (int step = 0; step <= 180; ++step) {
      const double at = step * degree, a = load.half_angle;
      largest = std::max(largest, std::abs(ring_integral(at + a) - ring_integral(at - a)) / (2.0 * std::sin(a)));
    }
  }
  return load.push * load.mean_radius * (largest / std::numbers::pi);
}

Stability stability(const Stack& stack) {
  check(stack);
  const Balance whole = balance(stack.parts);
  const Force weight = whole.mass * standard_gravity;
  const double lean = stack.clearance / stack.engaged;
  const auto offset_at = [&](Length height) -> Length { return 0.5 * stack.clearance + lean * height; };
  const Length offset = offset_at(whole.centre) + whole.off_axis;
  const Moment at_lean = weight * (offset > no_arm ? offset : -offset), knock = stack.push * stack.top;
  const Moment holds = weight * std::max(stack.seat, 0.5 * stack.chimney.bore);
  const Lean load{weight, at_lean + knock, offset > no_arm ? offset : -offset};
  return {.mass = whole.mass,
          .centre = whole.centre,
          .lean = lean,
          .top_offset = offset_at(stack.top),
          .centre_offset = offset,
          .at_lean = at_lean,
          .knocked = at_lean + knock,
          .holds = holds,
          .free_reserve = over(holds, at_lean),
          .knock_reserve = over(holds, at_lean + knock),
          .leans_too_far = lean > data::shop_number("tilt").value.value,
          .chimney = chimney_load(stack, load)};
}
}  // namespace lumwright::workshop
