// Silver and soft solders: where they melt and where they run.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
enum class FillerKind { silver, soft };
struct FillerRow {
  std::string name;               // "Ag 155", "Sn60Pb40"
  std::vector<std::string> also;  // other words for the same alloy
  FillerKind kind;
  std::string composition;
  Temperature solidus;   // begins to melt
  Temperature liquidus;  // runs
  bool not_on_iron;      // phosphorus in it makes joints on iron and steel brittle
  bool not_in_sulphur;   // hot gas with sulphur in it, as of coal, eats the joint
  Basis basis{};
};
const std::vector<FillerRow>& fillers();

/// The filler of that name or other name; letter case does not matter. Throws ModelError, listing the names, for any
/// other.
const FillerRow& filler(std::string_view name);
}  // namespace lumwright::data
