#include "report/text.hpp"
#include "data/first_words.hpp"
#include "golden.hpp"
#include "report/detail/standing.hpp"
#include "report/detail/wrap.hpp"
#include "report/judged.hpp"
#include "specimen.hpp"
#include <random>

using namespace lumwright;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;
namespace {
std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}
std::string without_colour(std::string text) {
  for (std::size_t at = 0; (at = text.find('\x1b', at)) != std::string::npos;)
    text.erase(at, text.find('m', at) - at + 1);
  return text;
}
std::string first_paragraph(const Assessment& a) {
  std::string text;
  const std::string whole = text_report(a, {}), head = data::first_lines() + "\n";
  REQUIRE(whole.starts_with(head));
  for (const std::string& line : lines_of(whole.substr(head.size()))) {
    if (line.empty()) break;
    text += (text.empty() ? "" : " ") + line;
  }
  return text;
}
/// The lines of the specimen's report that are not as they are in the units that were written.
std::vector<std::string> changed_lines(const TextStyle& style) {
  const std::vector<std::string> written = lines_of(text_report(specimen(), {}));
  const std::vector<std::string> asked = lines_of(text_report(specimen(), style));
  REQUIRE(written.size() == asked.size());
  std::vector<std::string> changed;
  for (std::size_t i = 0; i < asked.size(); ++i)
    if (asked[i] != written[i]) changed.push_back(asked[i]);
  return changed;
}
bool contains(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }
}  // namespace

TEST_CASE("the whole report, in the units that were written") {
  check_golden("as_written.txt", text_report(specimen(), {}));
}
TEST_CASE("another system of units changes the numbers of its kinds and nothing else") {
  CHECK(changed_lines({.units = UnitSystem::metric}) ==
        std::vector<std::string>{"  suction at the fan                              29.4 Pa"});
  CHECK(changed_lines({.units = UnitSystem::imperial}) ==
        std::vector<std::string>{"  gas at the fan                                142 degF",
                                 "  clearance of the tube in the chimney, cold    8.66 thou",
                                 "           -0.472 thou, at least 1.18 thou to pass",
                                 "  suction at the fan                              0.118 inH2O",
                                 "  tube friction                                   0.0169 inH2O",
                                 "  later.invention                                 17.4 psi (gauge)"});
}
TEST_CASE("colour adds nothing but colour") {
  const std::string coloured = text_report(specimen(), {.colour = true});
  CHECK(contains(coloured, "\x1b[1;31mfail\x1b[0m"));
  CHECK(without_colour(coloured) == text_report(specimen(), {}));
  CHECK_FALSE(contains(text_report(specimen(), {}), "\x1b"));
}

TEST_CASE("the verdict comes first and counts what it rests on") {
  Assessment a = specimen();
  CHECK(first_paragraph(a) ==
        "Test Valley fan: do not build it like this. 1 check fails out of 3. 1 more is to watch. 1 check could not be "
        "judged.");
  a.checks.erase(a.checks.begin() + 1);
  a.verdict = Verdict::watch;
  CHECK(first_paragraph(a) ==
        "Test Valley fan: what can be judged will do, with 1 point to watch. 1 check could not be judged.");
  a.checks.erase(a.checks.begin() + 1);  // still `watch`: what is not known has not passed
  CHECK(first_paragraph(a) ==
        "Test Valley fan: what can be judged will do. The one check passes. 1 check could not be judged.");
  a.checks.pop_back();
  a.verdict = Verdict::pass;
  CHECK(first_paragraph(a) == "Test Valley fan: it will do. The one check passes.");
  a.checks.clear();
  a.build.clear();
  CHECK(first_paragraph(a) == "valley.yaml: nothing can be judged yet. The description says too little.");
}

TEST_CASE("whatever the texts hold, no line is wider than the page and nothing steers the terminal") {
  std::mt19937 random(7);
  std::uniform_int_distribution<int> byte(0, 255), length(0, 300);
  const auto noise = [&] {
    std::string text;
    for (int n = length(random); n > 0; --n) text += n % 9 == 0 ? ' ' : static_cast<char>(byte(random));
    return text;
  };
  for (int round = 0; round < 100; ++round) {
    Assessment a = specimen();
    a.build = noise();
    a.file = noise();
    for (Finding& f : a.checks)
      f.title = noise(), f.why = noise(), f.action = noise(), f.basis.source = noise(), f.missing = {noise()};
    for (Assumed& one : a.assumed) one.key = noise(), one.value = noise(), one.band = noise(), one.why = noise();
    for (Caution& c : a.cautions) c.title = noise(), c.text = noise(), c.authority = noise();
    const std::string report = text_report(a, {});
    CHECK_FALSE(contains(report, "\x1b"));
    for (const std::string& line : lines_of(report)) {
      CHECK(legible(line) == line);
      CHECK(columns(line) <= 80);
    }
  }
}

TEST_CASE("a page too narrow for its margin is a mistake of the caller") {
  CHECK_THROWS_AS(text_report(specimen(), {.width = 19}), std::logic_error);
  for (const int width : {20, 40})
    for (const std::string& line : lines_of(text_report(specimen(), {.width = width})))
      CHECK(columns(line) <= static_cast<std::size_t>(width));
}

TEST_CASE("the limit that decided is printed by its name and on its side") {
  Assessment a = specimen();
  Finding& f = a.checks[1];
  CHECK(against_limit(f, a, {}) == "-0.0120 mm, at least 0.0300 mm to pass");
  f.limit_name = LimitName::not_to_fail;
  CHECK(against_limit(f, a, {}) == "-0.0120 mm, at least 0.0300 mm, or it fails");
  f.bound = Bound::at_most;
  CHECK(against_limit(f, a, {}) == "-0.0120 mm, at most 0.0300 mm, or it fails");
  f.value = Measure{0.03 * mm * (1.0 - 1e-4), "mm"};  // a hair beyond its limit: the hair is shown
  CHECK(against_limit(f, a, {}) == "0.0300 mm, at most 0.0300 mm, or it fails, a hair below it");
}

TEST_CASE("gauge pressures say so, unless their unit does") {
  CHECK(show(Measure{GaugePressure{1.2 * bar}, "bar"}, {}) == "1.20 bar (gauge)");
  CHECK(show(Measure{GaugePressure{20.0 * psi}, "psig"}, {}) == "20.0 psig");
  CHECK(show(Measure{GaugePressure{1.2 * bar}, "bar g"}, {}) == "1.20 bar g");
  CHECK(show(Measure{1.2 * bar, "bar"}, {}) == "1.20 bar");
}

TEST_CASE("every standing has its words, and a source is not told twice") {
  for (const char* word : {"standard", "secondary", "derived", "measured", "memory", "practice", "estimate"}) {
    const data::Standing standing = data::standing_of(word);
    CHECK(data::word_of(standing) == word);
    CHECK(source_in_words({standing, "A book"}) == "A book (" + std::string(standing_in_words(standing)) + ")");
  }
  CHECK(source_in_words(data::Basis{data::Standing::memory, "IEC 60127-2, from memory"}) == "IEC 60127-2, from memory");
  CHECK(source_in_words({data::Standing::unsaid, "A book"}) == "A book");
  CHECK_THROWS_AS(data::standing_of("hearsay"), std::logic_error);
  CHECK_THROWS_AS(data::standing_of(""), std::logic_error);
}
