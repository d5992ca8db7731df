// Older names: our own rule, that they are read for one release with a remark.
#include "data/renamed.hpp"
#include "description/bin.hpp"
#include "description/description.hpp"
#include "description/keys.hpp"
#include "description/writer.hpp"
#include <algorithm>
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::description;

TEST_CASE("what has a new name is a key or a word of today, the old one is not") {
  const auto known = [](const std::string& path) {
    return std::any_of(keys().begin(), keys().end(), [&](const Key& key) { return key.section + "." + std::string(key.field.key) == path; });
  };
  for (const data::RenamedKey& key : data::renamed_keys()) {
    CAPTURE(key.now);
    CHECK(known(key.now));
    CHECK_FALSE(known(key.old));
  }
  for (const data::RenamedWord& word : data::renamed_words()) CHECK(known(word.key));
}
TEST_CASE("an older key is read as the new one, and written by its new name") {
  const std::string old = with(full_description, "catches_in: 150 s", "kindling: 150 s");
  const Build build = read(old);
  CHECK(*build.fuel.catches_in == *read(full_description).fuel.catches_in);
  REQUIRE(build.renamed.size() == 1);
  CHECK(build.renamed[0].key == "fuel.kindling");
  CHECK(build.renamed[0].old == "fuel.kindling");
  CHECK(build.renamed[0].now == "fuel.catches_in");
  CHECK(write_build(build) == write_build(read(full_description)));
  CHECK(read(full_description).renamed.empty());
}
TEST_CASE("an older word is read as the new one") {
  const std::string now = with(full_description, "kind: series regulator, output: 9 V", "kind: chopped supply, duty: 60 %");
  const Build build = read(with(now, "chopped supply", "lead pwm"));
  CHECK(*build.supply.control.kind == "chopped supply");
  REQUIRE(build.renamed.size() == 1);
  CHECK(build.renamed[0].key == "supply.control.kind");
  CHECK(build.renamed[0].old == "lead pwm");
  CHECK(build.renamed[0].now == "chopped supply");
}
TEST_CASE("both names at once are a fault at the older one") {
  const std::string both = with(full_description, "catches_in: 150 s", "catches_in: 150 s, kindling: 150 s");
  CHECK_THROWS_WITH_AS(read(both), doctest::Contains("fuel.kindling: this key is not known"), InputError);
}
TEST_CASE("a fault in the value of an older key names the new one") {
  const std::string odd = with(full_description, "catches_in: 150 s", "kindling: 150 mm");
  CHECK_THROWS_WITH_AS(read(odd), doctest::Contains("fuel.catches_in"), InputError);
}
