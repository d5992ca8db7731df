#include "description/stock_name.hpp"
#include "description/description.hpp"
#include "description/reader.hpp"
#include "quantity/text.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::description;

namespace {
Given<Length> given(const char* text) {
  const WrittenBand band = parse_band(text, kind_of<Length>);
  return {Band<Length>{band.value * m, band.low * m, band.high * m}, band.unit, band.has_spread, {}};
}
}  // namespace

TEST_CASE("a tube keeps its stockist's name, with what the other rule reads behind it") {
  // by hand: 9/16 in = 14.2875 mm, 0.014 in = 0.3556 mm, 33/64 in = 13.0969 mm; 14 mm = 0.5512 in, 0.5 mm = 0.0197 in
  struct Row {
    const char *outside, *wall;
    UnitSystem units;
    std::string name;
  };
  const Row rows[] = {
      {"9/16 in", "0.014 in", UnitSystem::as_written, "9/16 in x 0.014 in (14.29 x 0.36 mm)"},
      {"9/16 in", "0.014 in", UnitSystem::metric, "9/16 in x 0.014 in (14.29 x 0.36 mm)"},
      {"0.5625 in", "14 thou", UnitSystem::as_written, "9/16 in x 14 thou (14.29 x 0.36 mm)"},
      {"33/64 in +- 0.001 in", "0.014 in", UnitSystem::imperial, "33/64 in x 0.014 in (13.10 x 0.36 mm)"},
      {"14 mm", "0.5 mm", UnitSystem::as_written, "14 mm x 0.5 mm"},
      {"14 mm", "0.5 mm", UnitSystem::imperial, "14 mm x 0.5 mm (0.551 x 0.020 in)"}};
  for (const Row& row : rows) {
    CAPTURE(row.outside);
    CHECK(stock_tube(given(row.outside), given(row.wall), row.units) == row.name);
  }
  CHECK(stock_tube(given("9/16 in"), {}, UnitSystem::as_written) == "9/16 in (14.29 mm)");
  CHECK(stock_size({}, UnitSystem::as_written).empty());
}
TEST_CASE("every row of the table of tubes is told by its own name") {
  for (const data::TubeRow& tube : data::tubes()) {
    CAPTURE(tube.name);
    const auto by = tube.name.find(" x ");
    const Given<Length> outside = given(tube.name.substr(0, by).c_str()),
                        wall = given(tube.name.substr(by + 3).c_str());
    for (const UnitSystem units : {UnitSystem::as_written, UnitSystem::metric, UnitSystem::imperial}) {
      CHECK(stock_tube(tube, units).starts_with(tube.name));
      CHECK(stock_tube(tube, units) == stock_tube(outside, wall, units));
    }
    CHECK(outside.unit == stock_unit(tube));
  }
}
