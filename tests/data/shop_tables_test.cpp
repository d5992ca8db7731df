#include "data/drills.hpp"
#include "data/metals.hpp"
#include "data/sheet.hpp"
#include "data/strengths.hpp"
#include "data/threads.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <set>
using namespace lumwright;

namespace {
bool is_metal(const std::string& name) {
  const auto& all = data::metals();
  return std::any_of(all.begin(), all.end(), [&](const data::MetalRow& row) { return row.name == name; });
}
}  // namespace

TEST_CASE("tables of the shop speak of metals that metals.yaml knows") {
  for (const data::StrengthRow& row : data::strengths()) {
    CAPTURE(row.metal);
    CHECK(is_metal(row.metal));
    CHECK(row.proof < 0.01 * row.modulus);  // no metal yields at more than a hundredth of its modulus
    CHECK(data::engagement_rule(row.metal).prefer >= data::engagement_rule(row.metal).least);
    if (row.metal == "cast iron")  // it does not bend
      CHECK_THROWS_AS(data::bend_row(row.metal), ModelError);
    else
      for (const std::string& metal : data::bend_row(row.metal).metals) CHECK(is_metal(metal));
  }
}

TEST_CASE("threads are named once and each has a form") {
  std::set<std::string> names;
  for (const data::ThreadRow& row : data::threads()) {
    CAPTURE(row.name);
    CHECK(names.insert(row.name).second);
    CHECK(data::thread_form(row.form).depth < data::thread_form(row.form).root);
    CHECK(row.pitch < row.major);
  }
  CHECK_THROWS_AS(data::thread_form("buttress"), std::logic_error);
  CHECK_THROWS_AS(data::engagement_rule("wood"), ModelError);
}

TEST_CASE("every series of drills is there, with the ends it should have") {
  const auto ends = [](const std::string& series) {
    Length first = 1.0 * m, last = 0.0 * m;
    for (const data::DrillRow& row : data::drills())
      if (row.series == series) {
        first = std::min(first, row.diameter);
        last = std::max(last, row.diameter);
      }
    return std::pair(first, last);
  };
  CHECK(ends("number").first == near(0.0400 * inch, 1e-9));   // no. 60, ASME B94.11M from memory
  CHECK(ends("number").second == near(0.2280 * inch, 1e-9));  // no. 1, a tool shop's chart
  CHECK(ends("fractional").first == near(inch / 32.0, 1e-9));
  CHECK(ends("fractional").second == near(0.5 * inch, 1e-9));
  CHECK(ends("metric").second == near(13.0 * mm, 1e-9));
}

TEST_CASE("saw blades grow coarser, thicker and deeper") {
  const auto& blades = data::saw_blades();
  REQUIRE(blades.size() == 14);
  for (std::size_t i = 1; i < blades.size(); ++i) {
    CHECK(blades[i].tooth_pitch > blades[i - 1].tooth_pitch);
    CHECK(blades[i].thickness > blades[i - 1].thickness);
    CHECK(blades[i].depth > blades[i - 1].depth);
  }
}
