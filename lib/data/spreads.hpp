// How a value lies in its spread, and which spreads go together.
#pragma once
#include "data/basis.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
enum class Shape { uniform, triangular };

struct ShapeRow {
  std::string of;  // an origin ("written", "assumed", "tuned") or a key
  Shape shape;
  std::string why;
  Basis basis{};
};
const std::vector<ShapeRow>& origin_shapes();
const std::vector<ShapeRow>& key_shapes();
/// Shape of a spread: a key's own if it is assumed and listed, else its origin's. Throws std::logic_error for an origin
/// that is not in the table.
Shape shape_of(std::string_view key, std::string_view origin);

/// Two values whose spreads go together.
struct TogetherRow {
  std::string first, second;
  double correlation;  // of their normal scores
  std::string why;
  Basis basis{};
};
const std::vector<TogetherRow>& spreads_together();
}  // namespace lumwright::data
