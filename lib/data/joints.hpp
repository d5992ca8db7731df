// What joins tube and flange, and how hot that may get.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct JointRow {
  std::string name;                  // as users write it: "soft solder"
  std::optional<Temperature> melts;  // where the joining metal begins to; nothing if none is used
  TemperatureRise reserve;           // to stay below that; zero if nothing melts
  Basis basis{};
  /// The hottest that the joint may get, if it has a limit.
  std::optional<Temperature> limit() const { return melts ? std::optional(*melts - reserve) : std::nullopt; }
};
const std::vector<JointRow>& joints();

/// The row of this name. Throws ModelError that lists the known names for any other.
const JointRow& joint(std::string_view name);
}  // namespace lumwright::data
