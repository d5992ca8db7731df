// A load as the pack's open-circuit voltage sees it: its working point at each voltage, and where that ends.
#pragma once
#include "power/constant_power.hpp"
#include "power/discharge.hpp"
#include <functional>
#include <optional>
#include <vector>

namespace lumwright::power {
/// The law that the load follows between two voltages at its terminals.
struct LoadRegime {
  Voltage from;
  Voltage to;
  std::function<Current(Voltage)> current;  // mean; called only between the two
  std::optional<Power> power;               // where it takes one power whatever the voltage
};

struct WorkingPoint {
  Voltage voltage;  // while on
  Current current;  // mean
};

/// How fast a current uses up charge that is counted at the rated current: Peukert's law applied at each moment, from
/// the rated current upwards.
struct Drain {
  Current rated;
  double exponent;

  Current of(Current i) const;
  /// The integral of di/of(i) from `low` to `high`.
  double inverse_integral(Current low, Current high) const;
};

/// Follows the stable branch E = V + R I(V) downwards from a charged pack. A load of rising current meets a fold there,
/// where the pack gives the most it can; any load ends at its floor.
class LoadCurve {
 public:
  /// `floor`: the voltage at which somebody or something switches off; zero if nothing does. `highest`: EMF of the
  /// charged pack. Throws ModelError for a load out of range.
  LoadCurve(const Load& load, Resistance resistance, Voltage floor, Voltage highest);

  /// False when the load cannot be carried at any EMF up to `highest`; nothing else may be asked then.
  bool answers() const { return !stretches_.empty() || done_; }
  /// At an EMF from `end_emf` to `highest`.
  WorkingPoint at(Voltage emf) const;
  Voltage end_emf() const { return end_emf_; }
  WorkingPoint end() const { return end_; }
  bool collapses() const { return collapses_; }  // ends at the fold, not at the floor
  /// EMFs at which the law changes, falling.
  std::vector<Voltage> bends() const;
  /// The power taken, if it is the same from end to end.
  std::optional<Power> constant_power() const;
  /// The time in which the load draws a straight piece that lies between two bends. dt = dq/I is separable; along a
  /// straight piece dq goes with dE, and since E = V + R I the integral of dE/I is that of dV/I(V), smooth even at the
  /// fold and free of root-finding (Gauss and Kronrod, 15 points, 1e-10), plus R ln(I) between the ends.
  Duration time_to_draw(const StraightPiece& piece, const Drain& drain) const;

 private:
  struct Stretch {  // one regime, with the EMF at its lower end
    LoadRegime regime;
    Voltage emf;
  };
  const Stretch& stretch(Voltage emf) const;
  Voltage emf_for(const LoadRegime& regime, Voltage v) const;
  WorkingPoint solve(const LoadRegime& regime, Voltage emf) const;
  void add(const LoadRegime& regime, Voltage floor);

  Resistance pulse_resistance_;  // seen by the mean current: a chopped lead draws it in the on-time only
  Voltage highest_;
  std::vector<Stretch> stretches_;  // falling
  Voltage end_emf_;
  WorkingPoint end_;
  bool collapses_ = false;
  bool done_ = false;
};
}  // namespace lumwright::power
