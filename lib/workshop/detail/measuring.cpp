#include "workshop/detail/measuring.hpp"
#include "quantity/require.hpp"

namespace lumwright::workshop {
Length combined_uncertainty(std::initializer_list<Length> parts) {
  Area sum = 0.0 * mm2;
  for (const Length& part : parts) {
    require_not_negative("measuring uncertainty", part, "mm");
    sum += part * part;
  }
  return square_root(sum);
}
}  // namespace lumwright::workshop
