// What checks say of builds that nobody wrote, read for sentences that make no sense.
#include "description/random_build.hpp"
#include "findings.hpp"
#include <doctest/doctest.h>
#include <map>
#include <regex>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
// Each was seen: "let about 0 of cool air", "can lean 1 in -12", "sideways by -11", "-0.0116 ft of wall", "tips by 1932
// in every 100", "the gap is -8.97 mm", "-589 mm of tin", "holds it up 0.016 times over", "strains to 1/0.0074".
const std::regex nonsense(
    "about [0-9.]+ of cool air|sideways by -|1 in -|leaving -|stands it there|steam space -|driven out -|: 1 times|"
    "by [0-9]{3,} in every 100|gap is -|gap -|-[0-9.]+ [a-z]+ of tin|it is -|up 0\\.[0-9]+ times|1/0\\.|has 1 holes|"
    "coat of tin runs|should read -");
const std::regex power_of_ten("[0-9]e[+-][0-9]");  // a remark says what is written, which may hold one
// And these, the words of an equation about its inputs, told as they stood under a check that they have nothing to do
// with.
const std::regex words_of_code(
    "wide bore minus narrow|is not zero or more|is not less than|of the table|drives nothing in|where it needs|"
    "is not between|is not above zero|is not below");
constexpr const char* of_an_equation = "cannot be ";  // worked out, made so, put together: said before them of what

void makes_sense(const std::string& text) {
  CAPTURE(text);
  CHECK_FALSE(std::regex_search(text, nonsense));
  if (text.find(of_an_equation) == std::string::npos) CHECK_FALSE(std::regex_search(text, words_of_code));
}
Assessment random_assessment(unsigned number) {
  return assess(read_build({"random.yaml", RandomBuild(number, number % 5 == 0 ? 0.5 : 0.95, number % 2 == 0).text()}));
}
bool waits(const Finding& f) { return f.verdict == Verdict::unknown && f.why.starts_with("no answer while "); }
/// The check that a waiting one names: it is there, and it fails.
void waits_for_a_failure(const Assessment& a, const Finding& f) {
  CAPTURE(f.why);
  const auto open = f.why.find('"');
  REQUIRE(open != std::string::npos);
  const std::string title = f.why.substr(open + 1, f.why.size() - open - 2);
  int found = 0;
  for (const Finding& other : a.checks)
    if (other.title == title) {
      ++found;
      CHECK(other.verdict == Verdict::fail);
    }
  CHECK(found == 1);
}
}  // namespace

TEST_CASE("two hundred builds are told in sentences that make sense, or as many as are asked for") {
  for (unsigned number = 40000; number < 40000 + how_many_builds(200); ++number) {
    CAPTURE(number);
    const Assessment a = random_assessment(number);
    for (const Finding& f : a.checks) {
      CAPTURE(f.id);
      for (const std::string& text : {f.why, f.action}) {
        makes_sense(text);
        CAPTURE(text);
        CHECK_FALSE(std::regex_search(text, power_of_ten));
      }
    }
    for (const Remark& remark : a.remarks) makes_sense(remark.text);
  }
}

TEST_CASE("what stops a part is said once, by the check that asks after it, and all others wait for that one") {
  std::map<std::string, int> told;
  int waiting = 0;
  for (unsigned number = 40000; number < 40000 + how_many_builds(200); ++number) {
    CAPTURE(number);
    const Assessment a = random_assessment(number);
    std::map<std::string, int> times;
    for (const Finding& f : a.checks) {
      CAPTURE(f.id);
      CHECK(++times[f.id] == 1);  // a check that was put in was not there already
      if (waits(f)) {
        waits_for_a_failure(a, f);
        ++waiting;
      }
      if (f.stands_still.empty()) continue;
      CHECK(f.told_by == f.id);
      ++told[f.id];
      for (const Finding& other : a.checks) CHECK((other.id == f.id || other.why != f.why));
      CHECK_FALSE(f.action.empty());
    }
    for (const Finding& f : a.checks) {  // the fuse is no matter of light-ups, nor frost of anything but the cells
      CAPTURE(f.why);
      if (f.why.find("a fuse of ") != std::string::npos) CHECK(f.id == "power.fuse");
      if (f.why.find("cells do not work at") != std::string::npos) CHECK(f.id == "power.cells");
      if (f.why.find("fan's curve begins at") != std::string::npos) CHECK(f.id == "fan.curve");
      if (f.why.find("bores of the fire tubes") != std::string::npos) CHECK(f.id == "draught.flow");
      if (f.why.find("grommet that is listed") != std::string::npos) CHECK(f.id == "power.leads");
    }
  }
  if (!enough_builds(200)) return;
  CHECK(waiting > 100);
  for (const char* id :
       {"fan.curve", "power.fuse", "power.cells", "draught.flow", "fit.cold", "make.lid", "make.thread"}) {
    CAPTURE(id);
    CHECK(told[id] > 0);
  }
}

TEST_CASE("nothing is judged of a tube in a chimney that it does not enter") {
  int outside = 0, inside = 0;
  for (unsigned number = 40000; number < 40000 + how_many_builds(200); ++number) {
    CAPTURE(number);
    const Assessment a = random_assessment(number);
    const Result* gap = find_result(a, "fit.clearance_cold");
    if (gap == nullptr) continue;
    const bool enters = std::get<Measure>(gap->value).quantity.si > 0.0;
    ++(enters ? inside : outside);
    for (const char* id : {"fit.hot", "fit.leak", "fit.engaged"}) {
      const Finding* f = find_check(a, id);
      REQUIRE(f != nullptr);
      CAPTURE(id);
      if (enters) {
        CHECK(f->why.find("does not enter") == std::string::npos);
      } else {
        CHECK(f->verdict == Verdict::unknown);
        CHECK(f->why.find("does not enter") != std::string::npos);
      }
    }
    if (!enters) CHECK(finding(a, "fit.cold").verdict == Verdict::fail);
  }
  if (!enough_builds(200)) return;
  CHECK(outside > 20);
  CHECK(inside > 20);
}

TEST_CASE("a U-tube is told as its owner reads it, in millimetres of water, and what that is in pascal") {
  const Assessment a = assess(example("tarn-beck"));
  const Finding& f = finding(a, "draught.cold");
  CAPTURE(f.why);
  REQUIRE(f.value);
  CHECK(f.value->unit == "mmH2O");
  std::smatch read;
  REQUIRE(std::regex_search(f.why, read, std::regex("should read ([0-9.]+) mmH2O \\(([0-9.]+) Pa\\)")));
  // 1 mmH2O = 9.80665 Pa: conventional water of 1000 kg/m3 under standard gravity (NIST SP 811); two and three digits
  CHECK(std::stod(read[1]) * 9.80665 == doctest::Approx(std::stod(read[2])).epsilon(0.05));
  CHECK(value(f) == doctest::Approx(std::stod(read[2])).epsilon(0.005));
}
