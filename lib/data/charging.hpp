// How packs are charged, by chemistry.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct ChargingRow {
  std::string chemistry;
  std::string never;               // why it must not be charged; empty: it may, and the rest holds
  std::optional<double> by_timer;  // It, of a charger that does not stop by itself; nothing: it must
  double most;                     // It
  double put_back;                 // charge in over charge out
  Duration tail;                   // at the end, with the current falling
  Temperature coldest, hottest;
  std::string how;
  Basis basis{};
};
/// Throws ModelError for a chemistry that is not in the table.
const ChargingRow& charging(std::string_view chemistry);
}  // namespace lumwright::data
