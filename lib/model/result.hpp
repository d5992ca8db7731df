// The numbers that come of a build. Here and not with the assessment, since a solved model carries them to the checks.
#pragma once
#include "quantity/kind.hpp"
#include <optional>
#include <string>
#include <variant>

namespace lumwright::model {
/// A number ready to be shown: the quantity, and the unit the user wrote for things of its kind (empty: no preference).
struct Measure {
  AnyQuantity quantity;
  std::string unit{};
};

/// `low` and `high` are there when many samples were tried: eight in ten lie between them. `high` is missing where more
/// than one sample in ten never comes to it (a pressure that is not reached).
struct Result {
  std::string key;                           // "draught.air_flow"
  std::variant<Measure, std::string> value;  // text only for power.stop_reason
  std::optional<Measure> low{}, high{};
  std::optional<double> share{};  // of the samples in which it exists; of a text: in which it is the same
};
}  // namespace lumwright::model
