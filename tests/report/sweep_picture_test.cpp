#include "report/../plan/describe.hpp"
#include "report/picture/sweep.hpp"
#include <doctest/doctest.h>
#include <pugixml.hpp>
#include <string>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::report;

namespace {
std::size_t shapes(const pugi::xml_document& document, const std::string& element, const std::string& look) {
  return document.select_nodes(("//" + element + "[contains(concat(' ', @class, ' '), ' " + look + " ')]").c_str())
      .size();
}
}  // namespace

TEST_CASE("the picture of a sweep is well-formed, has a mark for each value and a band where samples were tried") {
  const Build build = example("tarn-beck");
  const std::vector<SweepAxis> axes{sweep_axis(build, "supply.step_up.output", "8 V..12 V", 5)};
  for (const std::size_t samples : {std::size_t{0}, std::size_t{16}}) {
    const auto points = sweep(build, axes, UnitSystem::as_written, nullptr, 1, {.count = samples});
    pugi::xml_document document;
    REQUIRE(document.load_string(sweep_picture("Tarn Beck", axes, points, {}).c_str()));
    CHECK(shapes(document, "circle", "dot-hot") == 15);  // three answers of five values
    CHECK(shapes(document, "polyline", "line") == 5);    // all of the chief answers
    CHECK(shapes(document, "polygon", "band") == (samples > 0 ? 5 : 0));
    CHECK(std::string(document.document_element().attribute("xmlns").value()) == "http://www.w3.org/2000/svg");
  }
}
TEST_CASE("over two keys there is a cell for each pair, with its minutes and a cross where a check fails") {
  const Build build = example("high-tarn-32mm");
  const std::vector<SweepAxis> axes{sweep_axis(build, "fuel.bed", "20 mm..30 mm", 2),
                                    sweep_axis(build, "fuel.lump", "6 mm..9 mm", 3)};
  const auto points = sweep(build, axes, UnitSystem::as_written, nullptr, 1);
  pugi::xml_document document;
  const std::string text = sweep_picture("High Tarn", axes, points, {});
  REQUIRE(document.load_string(text.c_str()));
  CHECK(shapes(document, "rect", "cell") == 6);
  CHECK(shapes(document, "line", "dot-bad") == 12);  // this build fails everywhere: two strokes each
  CHECK(text.find("never") != std::string::npos);    // its fan never raises steam
}
