// The interview: what it takes, what it refuses, and that its questions are keys of today.
#include "description/interview.hpp"
#include "data/questions.hpp"
#include "description/description.hpp"
#include "description/keys.hpp"
#include "description/writer.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <set>
using namespace lumwright;
using namespace lumwright::description;

TEST_CASE("answers stand under their sections in the order of a description, whatever order they came in") {
  Interview interview;
  CHECK(interview.knows_nothing());
  CHECK(interview.take("supply.pack.series", "5").empty());
  CHECK(interview.take("engine.chimney.bore", " 17,6 mm +- 0,02 mm ").empty());
  CHECK(interview.take("engine.boiler.water", "420 g\r").empty());
  CHECK(interview.take("engine.chimney.depth", "1 7/16 in").empty());
  CHECK(interview.take("adapter.tube.wall", "26 swg").empty());
  CHECK(interview.take("fan.mass", "   ").empty());
  CHECK(interview.take("name", "No 1: \"Beck\" # mine").empty());
  CHECK(interview.description() ==
        "name: \"No 1: \\\"Beck\\\" # mine\"\nengine:\n  boiler:\n    water: 420 g\n  chimney:\n"
        "    bore: \"17,6 mm +- 0,02 mm\"\n    depth: 1 7/16 in\nadapter:\n  tube:\n    wall: 26 swg\n"
        "supply:\n  pack:\n    series: 5\n");
  const Build build = read(interview.description());
  CHECK(*build.name == "No 1: \"Beck\" # mine");
  CHECK(build.engine.chimney.bore.has_spread);
  CHECK(*build.supply.pack.series == 5);
}

TEST_CASE("an answer that cannot be read is told in the reader's words and not taken") {
  Interview interview;
  CHECK(interview.take("engine.chimney.bore", "17.6 V") ==
        "expected a length, got '17.6 V'\n`V` measures a voltage; use one of mm, cm, m, um, in, thou, ft");
  for (const std::string bad : {"null", "~", "[1, 2]", "{a: b}", "&x", "# 3 mm", "17.6", "1e999 mm", "\x01", "\xff"}) {
    CAPTURE(bad);
    CHECK_FALSE(interview.take("engine.chimney.bore", bad).empty());
  }
  CHECK(interview.knows_nothing());
  CHECK(interview.take("adapter.tube.outside", "16 mm").empty());
  CHECK(interview.take("adapter.tube.wall", "8 mm").find("less than half of the tube's outside") != std::string::npos);
  CHECK(interview.take("adapter.tube.wall", "0.5 mm").empty());
  CHECK(interview.description() == "adapter:\n  tube:\n    outside: 16 mm\n    wall: 0.5 mm\n");
}

TEST_CASE("every question is of a key of its own, in one sentence, and its place in the order has a source") {
  std::set<std::string> asked;
  for (const data::QuestionRow& row : data::questions()) {
    CAPTURE(row.key);
    CHECK(asked.insert(row.key).second);
    CHECK(std::count_if(keys().begin(), keys().end(), [&](const Key& key) {
            return !key.is_section && key.section + "." + std::string(key.field.key) == row.key;
          }) == 1);
    CHECK(row.ask.ends_with("?"));
    CHECK(row.ask.size() <= 76);
    CHECK_FALSE(row.how.empty());
    CHECK_FALSE(row.usual.empty());
    CHECK(row.basis.standing == data::Standing::derived);
  }
  CHECK(asked.size() >= 15);
  CHECK(asked.size() <= 20);
}
