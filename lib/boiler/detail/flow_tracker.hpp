// The operating point of fan and gas path, followed from one instant to the next.
#pragma once
#include "draught/duty.hpp"
#include "draught/gas_path.hpp"
#include "draught/temperature_source.hpp"
#include <vector>

namespace lumwright::boiler {
/// Where the fan and the path balance is searched for in full only once (solve_duty: every crossing, the rightmost
/// stable one taken). After that the flow is guessed from instants nearby, and the guess proved: the gap between the
/// fan's pressure and the path's suction is positive on one side of the flow and negative on the other, as it is at a
/// stable crossing. A fan thus stays on its own branch until that ends; then it goes to the next balance on the way, or
/// the full search is made again. Keeps a reference.
class FlowTracker {
 public:
  explicit FlowTracker(const draught::GasNetwork& network) : network_(network) {}

  /// To 1e-6 of the flow. `along` is any number on which the flow depends smoothly until the next corner, such as the
  /// time: only the guess is made of it. Throws ModelError as solve_duty does.
  draught::PathFlow solve(const draught::TemperatureSource& source, const draught::RunningFan& fan, double along);
  /// From here on the flow follows another curve: guesses begin at the last flow alone.
  void corner();

  int paths_followed() const { return followed_; }
  int full_searches() const { return searched_; }

 private:
  struct Probe {
    double bed;  // kg/s
    double gap;  // Pa
    draught::PathFlow flow;
  };
  struct Known {
    double along;
    double log_bed;
  };
  Probe probe(double bed, const draught::TemperatureSource& source, const draught::RunningFan& fan);
  draught::PathFlow search(const draught::TemperatureSource& source, const draught::RunningFan& fan, double along);
  draught::PathFlow keep(const Probe& found, double slope, double along);
  double guess(double along) const;

  const draught::GasNetwork& network_;
  std::vector<Known> known_;  // the latest, oldest first
  double bed_ = 0.0;          // kg/s, the last
  double slope_ = -1.0;       // of the gap over bed, Pa/(kg/s)
  draught::WallGuess walls_;
  int followed_ = 0, searched_ = 0;
};
}  // namespace lumwright::boiler
