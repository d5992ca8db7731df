#include "data/grommets.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<GrommetRow>& grommets() {
  static const std::vector<GrommetRow> all = [] {
    std::vector<GrommetRow> found;
    for (const Row& row : rows("grommets", "grommets"))
      found.push_back({row.quantity<Length>("hole"), row.quantity<Length>("lead"), row.quantity<Length>("thinnest"),
                       row.quantity<Length>("thickest"), row.basis()});
    return found;
  }();
  return all;
}
}  // namespace lumwright::data
