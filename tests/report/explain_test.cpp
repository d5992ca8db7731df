#include "report/explain.hpp"
#include "golden.hpp"
#include "plan/assess.hpp"
#include "specimen.hpp"

using namespace lumwright;
using namespace lumwright::plan;
using namespace lumwright::report;

TEST_CASE("a check is explained from its question to its source") {
  check_golden("explain.txt", explain_report(specimen(), "fit.hot", {}));
}
TEST_CASE("an explanation follows the units that are asked for") {
  const std::string text = explain_report(specimen(), "fit.hot", {.units = UnitSystem::imperial});
  CHECK(text.find("0.6299 in") != std::string::npos);   // 16 mm / 25.4, by hand
  CHECK(text.find("1.969 thou") != std::string::npos);  // 0.05 mm / 0.0254, by hand
}
TEST_CASE("an unknown says which keys would settle it") {
  check_golden("explain_unknown.txt", explain_report(specimen(), "power.runtime", {}));
}
TEST_CASE("a check that is not there: the nearest is named and all are listed") {
  CHECK_THROWS_WITH_AS(explain_report(specimen(), "fit.hto", {}),
                       "no check of this build is called `fit.hto`; did you mean `fit.hot`?\n"
                       "the checks are:\n"
                       "  draught.flow                 Air through the fire\n"
                       "  fit.hot                      Tube in the chimney, hot\n"
                       "  power.fuse                   The fuse\n"
                       "  power.runtime                Running time",
                       UnknownCheck);
}
TEST_CASE("a check that exists but has nothing to judge here says so") {
  CHECK_THROWS_WITH_AS(explain_report(specimen(), "power.bank", {}),
                       "the check `power.bank` (The power bank) does not apply to this build", UnknownCheck);
}
TEST_CASE("every check of the program has an id, a title and a question") {
  REQUIRE(!check_names().empty());
  for (const CheckName& name : check_names()) {
    CAPTURE(name.id);
    CHECK(name.id.find('.') != std::string_view::npos);
    CHECK(!name.title.empty());
    CHECK(name.asks.ends_with('?'));
  }
}
