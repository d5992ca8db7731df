#include "workshop/measuring.hpp"
#include "quantity/errors.hpp"
#include <fmt/format.h>

namespace lumwright {
Length combined_uncertainty(std::initializer_list<Length> parts) {
  Area sum = 0.0 * mm2;
  for (const Length& part : parts) {
    if (!(part >= 0.0 * mm) || !is_finite(part))
      throw ModelError(fmt::format("measuring uncertainty {:.6g} mm is not zero or more", in(part, mm)));
    sum += part * part;
  }
  return root<2>(sum);
}

Length caliper_land_error(CaliperReading reading) {
  if (!(reading.bore > 0.0 * mm) || !is_finite(reading.bore))
    throw ModelError(fmt::format("bore {:.6g} mm is not above zero", in(reading.bore, mm)));
  if (!(reading.jaw_land >= 0.0 * mm && reading.jaw_land < reading.bore))
    throw ModelError(fmt::format("land of the caliper jaw {:.6g} mm is not between zero and the bore {:.6g} mm",
                                 in(reading.jaw_land, mm), in(reading.bore, mm)));
  const Area chord = reading.bore * reading.bore - reading.jaw_land * reading.jaw_land;
  return reading.bore - root<2>(chord);
}
}  // namespace lumwright
