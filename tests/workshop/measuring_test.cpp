#include "workshop/detail/measuring.hpp"
#include "data/gauges.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <cmath>

using namespace lumwright;
using namespace lumwright::workshop;

TEST_CASE("uncertainties of two instruments combine by root sum of squares") {
  const auto with_micrometer = [](const char* id) {
    return combined_uncertainty(
        {data::measuring_method(id).uncertainty, data::measuring_method("micrometer").uncertainty});
  };
  // hand: sqrt(0.05^2 + 0.005^2) and sqrt(0.02^2 + 0.005^2), shop values printed to 0.001
  CHECK(with_micrometer("caliper_inside") == near(0.050 * mm, 0.01));
  CHECK(with_micrometer("telescopic_gauge") == near(0.021 * mm, 0.03));
  CHECK(combined_uncertainty({3.0 * um, 4.0 * um}) == near(5.0 * um, 1e-12));  // hand: 3-4-5
  CHECK(combined_uncertainty({}) == 0.0 * mm);
  CHECK_THROWS_WITH_AS(combined_uncertainty({-0.01 * mm}), "measuring uncertainty -0.01 mm is not zero or more",
                       ModelError);
}

TEST_CASE("every way to measure says what it measures") {
  for (const data::MeasuringMethod& method : data::measuring_methods()) {
    CAPTURE(method.id);
    CHECK((method.bore || method.outside));
    CHECK(method.uncertainty > 0.0 * mm);
  }
  CHECK_THROWS_AS(data::measuring_method("thumb"), std::logic_error);
}

TEST_CASE("a gauge number stands for three thicknesses") {
  for (const data::Row& row : published("fits", "gauges")) {
    CAPTURE(row.text("id"));
    const auto found = data::gauge_candidates(static_cast<int>(row.number("number")));
    REQUIRE(found.size() == 3);
    // half a thousandth of a millimetre, the last printed digit
    CHECK(std::abs(in(found[0].thickness - row.quantity<Length>("swg"), mm)) <= 0.00051);
    CHECK(std::abs(in(found[1].thickness - row.quantity<Length>("awg"), mm)) <= 0.00051);
    CHECK(std::abs(in(found[2].thickness - row.quantity<Length>("us_steel"), mm)) <= 0.00051);
  }
  CHECK(data::gauge_candidates(22)[0].series == "SWG");
  CHECK(data::gauge_candidates(2).empty());
  CHECK(data::gauge_candidates(37).empty());
}

TEST_CASE("American wire gauge is the formula of ASTM B258, and every series gets thinner with its number") {
  for (int n = 3; n <= 36; ++n) {
    CAPTURE(n);
    const auto found = data::gauge_candidates(n);
    REQUIRE(found.size() == 3);
    CHECK(std::abs(in(found[1].thickness, mm) - 0.127 * std::pow(92.0, (36.0 - n) / 39.0)) <= 0.00051);
    if (n == 3) continue;
    const auto thicker = data::gauge_candidates(n - 1);
    for (std::size_t i = 0; i < 3; ++i) CHECK(found[i].thickness < thicker[i].thickness);
  }
}
