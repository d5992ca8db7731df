// What the drawings print as limits, held to the checks that they come from.
#include "data/fillers.hpp"
#include "description/random_build.hpp"
#include "drawing/detail/ink.hpp"
#include "model/fan_unit.hpp"
#include "model/solved.hpp"
#include "model/solved_fit.hpp"
#include "near.hpp"
#include "plan/check.hpp"
#include "quantity/format.hpp"
#include "report/../plan/describe.hpp"
#include "report/templates/templates.hpp"
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <regex>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;

namespace {
/// A fit that nobody wrote: chimney, tube, metals, ridge, soot, how well all was measured.
std::string random_fit(std::mt19937& random) {
  const auto some = [&](double low, double high) { return std::uniform_real_distribution(low, high)(random); };
  const auto one_of = [&](std::vector<const char*> words) {
    return words[std::uniform_int_distribution<std::size_t>(0, words.size() - 1)(random)];
  };
  const double bore = some(11.0, 40.0), gap = some(-0.25, 0.9);
  const char* spread = one_of({"", "", " +- 0.02 mm", " +- 0.05 mm"});
  std::string text = fmt::format(
      "engine: {{ chimney: {{ bore: {:.3f} mm{}, depth: {:.1f} mm, wall: {:.2f} mm, material: {}, seam_ridge: {:.2f} "
      "mm "
      "}} }}\nadapter:\n  tube: {{ outside: {:.3f} mm{}, wall: {:.2f} mm, length: {:.1f} mm, engaged: {:.1f} mm, "
      "material: {}, soot: {:.3f} mm }}\n  flange: {{ outside: {:.1f} mm, thickness: 2 mm }}\n  joint: {}\n",
      bore, spread, some(25.0, 60.0), some(1.0, 4.0), one_of({"cast iron", "steel", "brass", "gunmetal"}),
      one_of({"0", "0", "0", "1"})[0] == '1' ? some(0.02, 0.1) : 0.0, bore - gap, one_of({"", "", " +- 0.01 mm"}),
      some(0.3, 0.9), some(50.0, 80.0), some(15.0, 40.0), one_of({"brass", "steel", "copper"}), some(0.02, 0.1),
      2.0 * bore, one_of({"silver braze", "soft solder", "press fit"}));
  return text + fmt::format("place: {{ air: {:.0f} degC }}\n", some(-5.0, 30.0));
}
std::string changed(const std::string& text, const std::string& key, double millimetres) {
  const std::regex size(key + ": [0-9.]+ mm( \\+- [0-9.]+ mm)?");
  return std::regex_replace(text, size, fmt::format("{}: {:.6f} mm", key, millimetres),
                            std::regex_constants::format_first_only);
}
plan::Verdict judged(const std::string& id, const std::string& text) {
  const Build build = described(text);
  const Solved solved = solve_cold(build);
  for (const plan::Check& check : plan::all_checks())
    if (check.id == id) return check.judge(solved)->verdict;
  throw std::logic_error("no check " + id);
}
void never_fails(const std::string& text) {
  CAPTURE(text);
  for (const char* id : {"fit.cold", "fit.hot", "fit.leak"}) {
    CAPTURE(id);
    CHECK(judged(id, text) != plan::Verdict::fail);
  }
}
/// The numbers "(17.05 to 17.28)" that stand behind `words` on a view; mm.
std::optional<std::pair<double, double>> printed(const drawing::View& view, const std::string& words) {
  const std::regex limits(words + ".*\\(([0-9.]+) to ([0-9.]+)\\)");
  for (const drawing::Ink& ink : drawing::ink(view))
    if (const auto* line = std::get_if<drawing::Words>(&ink.shape))
      if (std::smatch found; std::regex_search(line->text, found, limits))
        return std::pair(std::stod(found[1]), std::stod(found[2]));
  return std::nullopt;
}
const drawing::View* view_of(const std::vector<report::Template>& parts, const char* id) {
  for (const report::Template& part : parts)
    if (part.id == id) return &part.view;
  return nullptr;
}
}  // namespace

TEST_CASE("limits printed on a fit never allow what the fit check fails: 300 builds") {
  std::mt19937 random(19);
  int tubes = 0, bores = 0;
  for (unsigned i = 0; i < how_many_builds(300); ++i) {
    const std::string text = random_fit(random);
    const Build build = described(text);
    const Solved solved = solve_cold(build);
    REQUIRE(solved.unit);
    CAPTURE(text);
    const auto parts = report::templates(*solved.unit, build, UnitSystem::metric);
    const drawing::View* tube = view_of(parts, "tube");
    REQUIRE(tube != nullptr);
    if (const auto limits = printed(*tube, "outside")) {
      ++tubes;
      CHECK(limits->first < limits->second);
      for (const double size : {limits->first, 0.5 * (limits->first + limits->second), limits->second})
        never_fails(changed(text, "outside", size));
    }
    if (const auto& bore = solved.unit->tube->limits().bore) {
      ++bores;
      CHECK_FALSE(solved.unit->tube->limits().tube);  // one of the two is made to the other
      const std::string words = drawing::limits_text(bore->least, bore->most, drawing::Figures::mm);
      for (const double size : {std::stod(words), std::stod(words.substr(words.find("to") + 2))})
        never_fails(
            std::regex_replace(changed(text, "bore", size), std::regex("seam_ridge: [0-9.]+"), "seam_ridge: 0"));
    }
  }
  CHECK((tubes > 100 || !enough_builds(300)));
  CHECK((bores > 30 || !enough_builds(300)));
}
TEST_CASE("what lies beyond the limits of a tube fails, or leaks, or has no room left for measuring") {
  // The other side of the same law: limits that were needlessly narrow would be found here.
  const std::string text =
      "engine: { chimney: { bore: 17.60 mm, depth: 37 mm, wall: 1.8 mm, material: cast iron, measured_within: 0 mm } "
      "}\n"
      "adapter:\n  tube: { outside: 17.30 mm, wall: 0.45 mm, length: 44 mm, engaged: 33 mm, material: brass, "
      "measured_within: 0 mm }\n  flange: { outside: 38 mm, thickness: 2 mm }\n";
  const Build build = described(text);
  const Solved solved = solve_cold(build);
  const auto limits = workshop::fit_limits(solved.fit->input, solved.fit->fit).tube;
  REQUIRE(limits);
  CHECK(judged("fit.cold", changed(text, "outside", in(limits->most, mm) + 0.002)) == plan::Verdict::fail);
  CHECK(judged("fit.cold", changed(text, "outside", in(limits->most, mm) - 0.002)) == plan::Verdict::pass);
  CHECK(judged("fit.leak", changed(text, "outside", in(limits->least, mm) - 0.002)) != plan::Verdict::pass);
  CHECK(judged("fit.leak", changed(text, "outside", in(limits->least, mm) + 0.002)) == plan::Verdict::pass);
  // hand: d where (17.6^2 - d^2) / (d - 0.9)^2 = 0.05: 1.05 d^2 - 0.09 d + 0.0405 - 309.76 = 0 gives 17.2178
  CHECK(std::abs(in(limits->least, mm) - 17.2178) < 1e-3);
}
TEST_CASE("every hole that the limits of the flange allow leaves the gap that the filler asks for") {
  // Machinery's Handbook, table of AWS A5.8: 0.002 to 0.005 in a side; at brazing heat, of brass in brass
  const Build build = example("tarn-beck");
  const Solved solved = solve_cold(build);
  const MadeFlange& flange = *solved.unit->flange;
  REQUIRE(flange.tube_hole_limits);
  CHECK(*flange.tube_hole >= flange.tube_hole_limits->least);
  CHECK(*flange.tube_hole <= flange.tube_hole_limits->most);
  for (const Length& hole : {flange.tube_hole_limits->least, flange.tube_hole_limits->most})
    for (const double tube : {17.23, 17.25}) {  // as it was measured: 17.24 +- 0.01 mm
      const workshop::BrazeGap gap = workshop::braze_gap(
          {exactly(tube * mm), exactly(hole), solved.unit->tube->metal, flange.metal, data::filler("Ag 155")});
      CHECK(in(gap.hot.value, inch) > 0.002 - 5e-5);
      CHECK(in(gap.hot.value, inch) < 0.005 + 2e-4);
    }
}
TEST_CASE("sizes are told in the steps of the work that makes them") {
  // common practice, no source: snips 0.5 mm, file 0.1 mm, lathe 0.05 mm; a 64th on a rule in inches
  const auto whole = [](Length size, Length step) {
    return std::abs(in(size, step) - std::round(in(size, step))) < 1e-6;
  };
  const Build metric = example("tarn-beck");
  const Solved solved = solve_cold(metric);
  const MadeBox& box = *solved.unit->box;
  CHECK(whole(box.round->strip_length, 0.5 * mm));
  CHECK(whole(box.round->disc_blank, 0.5 * mm));
  CHECK(whole(*box.tube_hole, 0.1 * mm));
  CHECK(whole(*solved.unit->flange->tube_hole, 0.05 * mm));
  const Build inches = example("high-tarn-32mm");
  const Solved other = solve_cold(inches);
  CHECK(whole(other.unit->box->round->strip_length, 1.0 / 64.0 * inch));
}
TEST_CASE("screws enter wherever their holes may stray, and not much beyond") {
  // ASME Y14.5 appendix B, from memory: floating T = H - F, fixed T = (H - F) / 2; a hole may stray half its zone.
  // hand: M3 in 3.4 mm: 0.4 mm of play; with nuts 0.2 mm, tapped 0.1 mm
  CHECK(workshop::may_stray({3.4 * mm, 3.0 * mm, false}) == near(0.2 * mm, 1e-9));
  CHECK(workshop::may_stray({3.4 * mm, 3.0 * mm, true}) == near(0.1 * mm, 1e-9));
  CHECK(workshop::may_stray({2.9 * mm, 3.0 * mm, true}) == 0.0 * mm);
}
TEST_CASE("mirror holes mirror to the digit") {
  // three holes on 27.5 mm: y = -6.875 on both sides, between two digits
  const Build build = example("tarn-beck");
  const Solved solved = solve_cold(build);
  std::vector<std::string> y;
  for (const report::HolePlace& hole : report::hole_places(*solved.unit))
    if (hole.part == "flange" && (hole.what == "screw 2" || hole.what == "screw 3"))
      y.push_back(fixed_number(in(hole.centre.y, mm), 2) + " " + fixed_number(in(hole.from_edges(0.01 * mm).y, mm), 2));
  REQUIRE(y.size() == 2);
  CHECK(y[0] == "-6.88 12.12");
  CHECK(y[1] == y[0]);
  CHECK(fixed_number(-0.001, 2) == "0.00");
  CHECK(fixed_number(2.675, 2) == "2.68");  // stored as 2.67499999999999982
  CHECK(fixed_number(-2.675, 2) == "-2.68");
}
