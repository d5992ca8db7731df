#include "data/tubes.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<TubeRow>& tubes() {
  static const std::vector<TubeRow> all = [] {
    std::vector<TubeRow> found;
    for (const Row& row : rows("tubes", "tubes"))
      found.push_back({row.text("name"), row.text("series"), row.quantity<Length>("outside"),
                       row.quantity<Length>("wall"), row.yes("documented"), row.basis()});
    return found;
  }();
  return all;
}

const std::vector<TubeTolerance>& tube_tolerances() {
  static const std::vector<TubeTolerance> all = [] {
    std::vector<TubeTolerance> found;
    for (const Row& row : rows("tubes", "tolerances"))
      found.push_back({row.quantity<Length>("over"), row.quantity<Length>("upto"), row.quantity<Length>("within"),
                       row.basis()});
    return found;
  }();
  return all;
}
}  // namespace lumwright::data
