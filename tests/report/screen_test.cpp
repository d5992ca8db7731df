#include "report/screen.hpp"
#include "description/random_build.hpp"
#include "plan/describe.hpp"
#include "plan/moves.hpp"
#include <algorithm>
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::report;

namespace {
void check_screen(const Assessment& a) {
  const std::string text = screen_report(a, TextStyle{}, "mine.yaml");
  CAPTURE(text);
  CHECK(std::count(text.begin(), text.end(), '\n') <= 40);
  std::string flat = text;  // titles may be broken between words
  for (auto at = flat.find('\n'); at != std::string::npos; at = flat.find('\n', at)) {
    const auto next = flat.find_first_not_of(' ', at + 1);
    flat.replace(at, (next == std::string::npos ? flat.size() : next) - at, " ");
  }
  for (const Finding& f : a.checks)
    if (f.verdict == Verdict::fail) {
      CAPTURE(f.title);
      CHECK(flat.find(f.title) != std::string::npos);
    }
  for (const Caution& c : a.cautions)
    if (!c.brief.empty()) CHECK(flat.find(c.brief) != std::string::npos);
}
}  // namespace

TEST_CASE("the screen holds 40 lines, every failing check and what can kill") {
  for (unsigned seed = 0; seed < how_many_builds(60); ++seed) {
    CAPTURE(seed);
    const Build build =
        read_build({"r.yaml", RandomBuild(7300 + seed, seed % 3 == 0 ? 0.6 : 1.0, seed % 2 == 0).text()});
    Assessment a = assess(build);
    if (seed % 6 == 1) try_moves(a, build, UnitSystem::as_written, nullptr);
    check_screen(a);
  }
  for (const char* name : {"tarn-beck", "great-fell-5in", "high-tarn-32mm"}) {
    SamplesAsked few;
    few.count = 64;
    check_screen(assess(example(name), UnitSystem::as_written, nullptr, few));
  }
}
TEST_CASE("a part of the checks is told alone, with its verdict") {
  const Assessment a = assess(example("high-tarn-32mm"));
  CHECK(known_part("fit"));
  CHECK(known_part("fit.hot"));
  CHECK_FALSE(known_part("fi"));
  const std::string text = part_report(a, TextStyle{}, "fit");
  CHECK(text.find("[fit.hot]") != std::string::npos);
  CHECK(text.find("[power.fuse]") == std::string::npos);
  CHECK(text.find("clearance of the tube, lighting up") != std::string::npos);
  CHECK(verdict_of_part(a, "fit") == Verdict::fail);
  CHECK(verdict_of_part(a, "engine") == Verdict::pass);
  CHECK(part_report(a, TextStyle{}, "fit.hot").find("[fit.cold]") == std::string::npos);
}
