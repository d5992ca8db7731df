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
  Prediction(const boiler::RaiseInput& input, const boiler::Raise& raise);
  bool tells(Observable observable) const;
  /// SI. From zero to `end()`; beyond, curves go on straight, which only guides a search. A gauge reads less than
  /// nothing before the boil: saturation pressure over the barometer, smooth for a search. Within 0.02 K of the raise.
  double at(Observable observable, Duration time) const;
  Duration end() const { return end_; }
  bool pack_stops() const { return pack_stops_; }

 private:
  Pressure barometer_;
  std::array<std::optional<numeric::MonotoneCurve>, observables> curves_;
  Duration end_;
  bool pack_stops_;
};

class LightingUp {
 public:
  /// The engine of the description with the water and the air of the log. Throws ModelError where a raise cannot be
  /// solved: a key is missing, or physics forbids it.
  LightingUp(description::Build build, const description::Log& log);
  /// Throws ModelError where the model has no answer, or the water would take more heat than the fire gives.
  Prediction predict(const model::Tuning& factors) const;
  /// What the raise asked for, with the factors at their usual or written values.
  const model::Inputs& inputs() const { return base_.inputs; }
  const description::Build& build() const { return build_; }

 private:
  bool moves(const model::Tuning& factors, std::string_view key) const;

  description::Build build_;
  model::Solved base_;
  Duration until_;
  std::optional<Temperature> started_at_;
};
}  // namespace lumwright::tune
