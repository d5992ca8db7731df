#include "data/spreads.hpp"
#include "data/table.hpp"
#include <stdexcept>

namespace lumwright::data {
namespace {
Shape shape(const std::string& word) {
  if (word == "uniform") return Shape::uniform;
  if (word == "triangular") return Shape::triangular;
  throw std::logic_error("spreads.yaml: no shape is called " + word);
}
std::vector<ShapeRow> shapes(std::string_view list, std::string_view name) {
  std::vector<ShapeRow> found;
  for (const Row& row : rows("spreads", list))
    found.push_back({row.text(name), shape(row.text("shape")), row.text("why"), row.basis()});
  return found;
}
}  // namespace

const std::vector<ShapeRow>& origin_shapes() {
  static const std::vector<ShapeRow> all = shapes("origins", "of");
  return all;
}
const std::vector<ShapeRow>& key_shapes() {
  static const std::vector<ShapeRow> all = shapes("shapes", "key");
  return all;
}
Shape shape_of(std::string_view key, std::string_view origin) {
  if (origin == "assumed")
    for (const ShapeRow& row : key_shapes())
      if (row.of == key) return row.shape;
  for (const ShapeRow& row : origin_shapes())
    if (row.of == origin) return row.shape;
  throw std::logic_error("spreads.yaml has no shape for what is " + std::string(origin));
}
const std::vector<TogetherRow>& spreads_together() {
  static const std::vector<TogetherRow> all = [] {
    std::vector<TogetherRow> found;
    for (const Row& row : rows("spreads", "together"))
      found.push_back({row.text("first"), row.text("second"), row.number("correlation"), row.text("why"), row.basis()});
    return found;
  }();
  return all;
}
}  // namespace lumwright::data
