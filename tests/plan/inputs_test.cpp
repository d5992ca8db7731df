#include "model/inputs.hpp"
#include "data/table.hpp"
#include "near.hpp"
#include "plan/check.hpp"
#include "quantity/text.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <fstream>
#include <set>
#include <string>
#include <vector>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

TEST_CASE("a silent description takes the typical value and says so once") {
  Inputs inputs;
  const Build build;
  CHECK(inputs.usual(build.place.air) == inputs.usual(build.place.air));
  REQUIRE(inputs.assumed().size() == 1);
  CHECK(inputs.assumed()[0].key == "place.air");
  CHECK_FALSE(inputs.assumed()[0].basis.source.empty());
}
TEST_CASE("what is written is used and not listed as assumed") {
  Inputs inputs;
  Given<Length> bore;
  bore.band = exactly(17.0 * mm);
  bore.unit = "mm";
  bore.key.set("engine.chimney.bore");
  CHECK(*inputs.known(bore) == near(17.0 * mm, 1e-15));
  CHECK(inputs.assumed().empty());
  CHECK(inputs.find("engine.chimney.bore")->origin == Origin::written);
  CHECK_FALSE(inputs.known(Given<Length>{}).has_value());
}
TEST_CASE("a draw moves every value within its band") {
  Inputs inputs([](std::string_view, const Input& input) { return input.high; });
  CHECK(inputs.constant<double>("gas.box_stirring") == 4.0);
}
TEST_CASE("each typical row names a source and lies within its own band") {
  std::set<std::string> keys;
  for (const data::Row& row : data::rows("typical", "values")) {
    CAPTURE(row.text("key"));
    CHECK(keys.insert(row.text("key")).second);
    CHECK_FALSE(row.source().empty());
    CHECK(row.basis().standing != data::Standing::unsaid);
    if (row.has("word")) continue;
    const auto fits_some_kind = [&](Kind kind) {
      try {
        const WrittenBand value = parse_band(row.text("value"), kind), band = parse_band(row.text("band"), kind);
        return band.low <= value.value && value.value <= band.high && band.low < band.high;
      } catch (const QuantityError&) {
        return false;
      }
    };
    bool fits = false;
    for (Kind kind : {kind_of<double>, kind_of<Length>, kind_of<Temperature>, kind_of<Pressure>, kind_of<Duration>,
                      kind_of<Resistance>, kind_of<Area>, kind_of<HeatTransfer>, kind_of<SpecificEnergy>,
                      kind_of<ThermalConductance>, kind_of<Density>, kind_of<Volume>})
      fits = fits || fits_some_kind(kind);
    CHECK(fits);
  }
}
TEST_CASE("checks have distinct names") {
  std::set<std::string_view> ids;
  for (const Check& check : all_checks()) {
    CAPTURE(std::string(check.id));
    CHECK(ids.insert(check.id).second);
    CHECK(check.asks.ends_with('?'));
  }
  CHECK(ids.size() >= 20);
}
TEST_CASE("every check has its place in the one list of them") {
  std::ifstream list(std::string(SOURCE_DIR) + "/lib/plan/checks/order.txt");
  std::vector<std::string> places, told;
  for (std::string line; std::getline(list, line);)
    if (!line.empty() && line.front() != '#') places.push_back(line);
  for (const Check& check : all_checks()) {
    told.emplace_back(check.id);
    std::replace(told.back().begin(), told.back().end(), '.', '_');
  }
  CHECK(told == places);
}
