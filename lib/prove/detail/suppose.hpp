// A cause of some size, as the model is to take it.
#pragma once
#include "data/causes.hpp"
#include "model/solved.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::prove {
/// What the shares in which the sizes of causes are given are shares of: of the unit as it was planned.
struct Scales {
  std::optional<Area> opening;  // that lets in as much as the fan draws, under the suction of the box
  std::optional<Length> gap;    // by which the bore must be wider to let in as much as the engine draws
  std::optional<Resistance> load, cell_resistance;
  std::optional<Voltage> cell;
};
Scales scales_of(const model::Solved& planned);
/// The size of a move at `u` as a quantity: a share where it multiplies.
AnyQuantity size_of(const data::CauseMove& move, double u, const Scales& scales);
/// Resistance of the cells themselves, without what holds them.
Resistance cells_alone(const model::SolvedSupply& supply);

/// Why a cause is no question of this unit; empty where it is one.
std::string not_asked(const data::CauseRow& cause, const model::Solved& planned);

/// A cause of some size; nothing is supposed without a cause.
class Supposed {
 public:
  Supposed() = default;
  /// `places`: of each move in its range, 0 to 1.
  Supposed(const data::CauseRow& cause, const std::vector<double>& places, const Scales& scales);
  model::Draw on(model::Draw base) const;
  bool stands() const { return cause_ != nullptr && cause_->fan == "stands"; }
  bool blows() const { return cause_ != nullptr && cause_->fan == "blows"; }
  /// What was added to a key, in SI; zero where it was not moved.
  double added(std::string_view key) const;

 private:
  struct Moved {
    std::string_view key;
    double times, plus;
  };
  const data::CauseRow* cause_ = nullptr;
  std::vector<Moved> moved_{};
};
}  // namespace lumwright::prove
