// Any bytes as a quantity of any kind: the first byte chooses the kind.
#include "description/written.hpp"
#include "oracle.hpp"
#include "quantity/text.hpp"
#include <array>
#include <cmath>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;

namespace {
constexpr std::array kinds = {kind_of<Length>,          kind_of<Area>,          kind_of<Volume>,
                              kind_of<Pressure>,        kind_of<GaugePressure>, kind_of<Temperature>,
                              kind_of<TemperatureRise>, kind_of<double>,        kind_of<Duration>,
                              kind_of<Voltage>,         kind_of<Current>,       kind_of<Rotation>,
                              kind_of<MassFlow>,        kind_of<VolumeFlow>,    kind_of<Mass>,
                              kind_of<Charge>};
void judge(const std::string& text, Kind kind) {
  const WrittenBand band = parse_band(text, kind);
  fuzz::must(std::isfinite(band.low) && std::isfinite(band.high), "a quantity is finite");
  fuzz::must(band.low <= band.value && band.value <= band.high, "a value lies within its spread");
  const std::string again = written(band, kind);
  const WrittenBand reread = parse_band(again, kind);
  const double size = std::abs(band.value) + std::abs(band.high) + std::abs(band.low);
  fuzz::must(std::abs(reread.value - band.value) <= 1e-9 * size && std::abs(reread.low - band.low) <= 1e-9 * size &&
                 std::abs(reread.high - band.high) <= 1e-9 * size,
             "what is written reads back to the same quantity");
}
}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const std::string text(data + 1, data + size);
  try {
    judge(text, kinds[data[0] % kinds.size()]);
  } catch (const QuantityError& error) {
    fuzz::must(error.what()[0] != '\0', "a refusal says something");
    fuzz::must(error.width >= 1, "a refusal points at something");
    fuzz::must(error.at <= std::max<std::size_t>(text.size(), 1), "a refusal points into the text");
  }
  return 0;
}
