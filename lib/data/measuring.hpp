// Ways to measure a bore or a tube, and how far each can be trusted.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct MeasuringMethod {
  std::string id;
  std::string name;
  bool bore;           // measures a bore
  bool outside;        // measures an outside diameter
  Length uncertainty;  // expanded (k = 2), on 10 to 40 mm
  Basis basis{};
};
const std::vector<MeasuringMethod>& measuring_methods();

/// One method by id. Throws std::logic_error for an id that the table lacks.
const MeasuringMethod& measuring_method(const std::string& id);
/// How far what was measured with workshop means may be off either way, over its value, where no spread is written.
struct MeasuringShare {
  std::string id;  // a key of a description
  double value;
  Basis basis{};
};
/// Throws std::logic_error for a key that the table lacks.
const MeasuringShare& measuring_share(std::string_view key);
}  // namespace lumwright::data
