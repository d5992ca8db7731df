#include "plan/quiet.hpp"
#include "draught/fan_sound.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_raise.hpp"
#include <cmath>

namespace lumwright::plan {
namespace {
double level_at(const model::SolvedFan& fan, Rotation running) {
  draught::SoundingFan sounding = *fan.sounds;
  sounding.running = running;
  return draught::sound_level(sounding).value + 10.0 * std::log10(fan.sound_power);
}
std::optional<Duration> time_to_steam(const boiler::Raise& raise) {
  const auto own = raise.time_of(boiler::RaiseEventKind::own_blower);
  return own ? own : raise.time_of(boiler::RaiseEventKind::working);
}
/// With the fan held at a voltage; nothing where steam does not come in time.
std::optional<Duration> in_time(const model::SolvedRaise& solved, Voltage held) {
  boiler::RaiseInput input = solved.input;
  std::get<boiler::FanDraught>(input.draught).voltage = held;
  input.battery.reset();
  try {
    const auto takes = time_to_steam(boiler::raise(input));
    return takes && *takes <= solved.within ? takes : std::nullopt;
  } catch (const ModelError&) {  // a fan that slow draws nothing
    return std::nullopt;
  }
}
}  // namespace

std::optional<double> sound_of(const model::Solved& solved) {
  if (!solved.fan || !solved.fan->sounds) return std::nullopt;
  const bool runs = solved.draught && solved.draught->fan_speed > 0.0 * rpm;
  return level_at(*solved.fan, runs ? solved.draught->fan_speed : solved.fan->sounds->rated);
}

std::optional<QuietRun> quietest(const model::Solved& solved) {
  if (!solved.raise || !solved.fan || !solved.fan->sounds || !solved.fan->motor) return std::nullopt;
  if (!std::holds_alternative<boiler::FanDraught>(solved.raise->input.draught)) return std::nullopt;
  const draught::MotorLaw& motor = *solved.fan->motor;
  Voltage fails = motor.starts.value, holds = solved.draught->fan_voltage;
  auto takes = in_time(*solved.raise, holds);
  if (!takes || !(fails < holds)) return std::nullopt;
  if (const auto slowest = in_time(*solved.raise, fails)) {
    holds = fails;
    takes = slowest;
  }
  while (holds - fails > 0.01 * motor.rated_voltage) {
    const Voltage middle = 0.5 * (holds + fails);
    if (const auto then = in_time(*solved.raise, middle)) {
      holds = middle;
      takes = then;
    } else {
      fails = middle;
    }
  }
  return QuietRun{holds, *takes, level_at(*solved.fan, draught::fan_speed(motor, holds))};
}
}  // namespace lumwright::plan
