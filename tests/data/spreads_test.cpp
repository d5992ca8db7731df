#include "data/spreads.hpp"
#include "data/measurements.hpp"
#include "data/table.hpp"
#include "quantity/text.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <set>
using namespace lumwright;

TEST_CASE("shapes, and spreads that go together, are of keys that there are") {
  std::set<std::string> assumed;
  for (const data::Row& row : data::rows("typical", "values")) assumed.insert(row.text("key"));
  for (const data::ShapeRow& row : data::key_shapes()) {
    CAPTURE(row.of);
    CHECK(assumed.contains(row.of));
  }
  for (const data::TogetherRow& row : data::spreads_together()) {
    CHECK(row.first != row.second);
    CHECK(std::abs(row.correlation) < 1.0);
  }
  CHECK(data::shape_of("place.air", "assumed") == data::Shape::uniform);
  CHECK(data::shape_of("place.air", "tuned") == data::Shape::triangular);
  CHECK(data::shape_of("anything", "written") == data::Shape::uniform);
  CHECK_THROWS_AS(data::shape_of("anything", "guessed"), std::logic_error);
}
TEST_CASE("every measurement says how, with what, how well and where to write it") {
  std::set<std::string> ids;
  for (const data::MeasurementRow& row : data::measurements()) {
    CAPTURE(row.id);
    CHECK(ids.insert(row.id).second);
    CHECK(row.how.size() > 20);
    CHECK_FALSE(row.tool.empty());
    CHECK_FALSE(row.write.empty());
  }
}
