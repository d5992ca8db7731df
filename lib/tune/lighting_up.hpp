// One logged lighting-up as the model sees it: what each instrument would have shown, for any values of the factors.
#pragma once
#include "boiler/raise.hpp"
#include "description/log.hpp"
#include "model/solved.hpp"
#include "model/tuning.hpp"
#include "numeric/curve.hpp"
#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace lumwright::tune {
/// What can be read while steam is raised, in the order of the keys of a log.
enum class Observable { water, gauge, smokebox, fan_current, pack_voltage, fuel };
inline constexpr std::size_t observables = 6;
std::string_view name(Observable observable);  // "water temperature"

/// The instruments' readings through time, for one set of factors.
class Prediction {
 public:
  /// The thermometer is behind the water by `probe_lag` (a lag of the first order).
  Prediction(const boiler::RaiseInput& input, const boiler::Raise& raise, Duration probe_lag = 0.0 * s);
  bool tells(Observable observable) const;
  /// SI. From zero to `end()`; beyond, curves go on straight, which only guides a search. A gauge reads less than
  /// nothing before the boil: saturation pressure over the barometer, smooth for a search. Within 0.02 K of the raise.
  double at(Observable observable, Duration time) const;
  Duration end() const { return end_; }
  bool pack_stops() const { return pack_stops_; }

 private:
  Pressure barometer_;
  std::array<std::optional<numeric::MonotoneCurve>, observables> curves_;
  std::optional<numeric::MonotoneCurve> boiler_;  // the water itself, where the thermometer is behind it
  Duration end_;
  bool pack_stops_;
};

class LightingUp {
 public:
  /// The engine of the description with the water, the air, the fire and the pack of the log, whose thermometer is
  /// `probe_lag` behind where it does not say. Throws ModelError where a raise cannot be
  /// solved: a key is missing, or physics forbids it.
  LightingUp(description::Build build, const description::Log& log, Duration probe_lag = 0.0 * s);
  /// Throws ModelError where the model has no answer, or the water would take more heat than the fire gives.
  Prediction predict(const model::Tuning& factors) const;
  /// From the start of the fan to that pressure, however long it takes; nothing where it is not reached. Throws
  /// ModelError as `predict` does.
  std::optional<Duration> time_to(GaugePressure gauge, const model::Tuning& factors) const;
  /// What the raise asked for, with the factors at their usual or written values.
  const model::Inputs& inputs() const { return base_.inputs; }
  const description::Build& build() const { return build_; }

 private:
  bool moves(const model::Tuning& factors, std::string_view key) const;
  boiler::RaiseInput input_with(const model::Tuning& factors) const;

  description::Build build_;
  model::Solved base_;
  Duration until_, probe_lag_;
  std::optional<Temperature> started_at_;
};
}  // namespace lumwright::tune
