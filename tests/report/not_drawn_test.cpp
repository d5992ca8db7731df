#include "report/../plan/describe.hpp"
#include "report/drawings.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;

// A drill list ends at 0.5 mm (ISO 235 jobber drills, from memory); 64 sheets of A4 glued together is an estimate of
// what nobody does.
TEST_CASE("what cannot be drawn is a sentence in its place, and the rest is written") {
  const auto files_of = [](std::vector<std::pair<std::string, std::string>> changes) {
    const Build build = example("tarn-beck", changes);
    return drawing_files(assess(build), solve(build), {"A4", {}, true});
  };
  const auto text_of = [](const std::vector<NamedText>& files, const std::string& name) {
    for (const NamedText& file : files)
      if (file.name == name) return file.text;
    return std::string();
  };
  for (const char* bore : {"0.2 mm", "0.49 mm", "0.5 mm"}) {
    CAPTURE(bore);
    const std::string bleed = "bleed: { holes: 8, diameter: ";
    const auto files = files_of({{bleed + "8 mm", bleed + bore}});
    const bool pricked = text_of(files, "sheet.txt").find("prick") != std::string::npos;
    CHECK(pricked == (std::string(bore) != "0.5 mm"));
    CHECK(!text_of(files, "side_mm.dxf").empty());
  }
  const auto files = files_of({{"diameter: 78 mm, height: 46 mm", "diameter: 1 m, height: 1 m"}});
  std::string sheets;
  for (const NamedText& file : files)
    if (file.name.ends_with(".svg")) sheets += file.text;
  CHECK(sheets.find("Not drawn here") != std::string::npos);
  CHECK(sheets.find("sheets") != std::string::npos);
  CHECK(text_of(files, "side_mm.dxf").size() > 1000);  // a machine has no paper to run out of
  CHECK(!text_of(files, "flange_mm.dxf").empty());
}
