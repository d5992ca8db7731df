// What checks say of builds that nobody wrote, read for sentences that make no sense.
#include "build/random_build.hpp"
#include "findings.hpp"
#include <doctest/doctest.h>
#include <regex>
using namespace lumwright;

TEST_CASE("two hundred builds are told in sentences that make sense, or as many as are asked for") {
  // each was seen: "let about 0 of cool air", "can lean 1 in -12", "sideways by -11", "-0.0116 ft of wall"
  const std::regex nonsense(
      "about [0-9.]+ of cool air|sideways by -|1 in -|leaving -|stands it there|steam space -|driven out -|: 1 times");
  for (unsigned number = 40000; number < 40000 + how_many_builds(200); ++number) {
    CAPTURE(number);
    const Assessment a =
        assess(read_build({"random.yaml", RandomBuild(number, number % 5 == 0 ? 0.5 : 0.95, number % 2 == 0).text()}));
    for (const Finding& f : a.checks)
      for (const std::string& text : {f.why, f.action}) {
        CAPTURE(f.id);
        CAPTURE(text);
        CHECK_FALSE(std::regex_search(text, nonsense));
      }
    for (const Remark& remark : a.remarks) {
      CAPTURE(remark.text);
      CHECK_FALSE(std::regex_search(remark.text, nonsense));
    }
  }
}
