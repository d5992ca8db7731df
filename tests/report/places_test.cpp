// Every size that a description asks for is marked in exactly one drawing of a part, and nothing else is.
#include "report/places/places.hpp"
#include "description/key_value.hpp"
#include "description/keys.hpp"
#include "description/random_build.hpp"
#include "description/reader.hpp"
#include "report/picture/picture_file.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <map>
#include <pugixml.hpp>
#include <set>
#include <sstream>

using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::report;
namespace {
struct Drawn {
  std::map<std::string, std::string> part_of;  // by the key of a place
  std::map<std::string, std::string> look_of, words_of;
};
Drawn drawn(const Build& build, const std::vector<model::Assumed>& assumed) {
  Drawn all;
  for (const places::PartPicture& one : places::pictures(build, assumed, {})) {
    pugi::xml_document read;
    REQUIRE(read.load_string(picture_file(one.picture, 340.0).c_str()));
    CHECK(std::string(read.child("svg").child_value("title")) == one.picture.title);
    CHECK(std::string(read.child("svg").child_value("desc")).find("Marked are A: ") != std::string::npos);
    for (const pugi::xml_node place : read.child("svg").children("g")) {
      const std::string key = place.attribute("data-key").value();
      CAPTURE(key);
      CHECK(all.part_of.emplace(key, one.part).second);
      all.look_of[key] = place.attribute("class").value();
      all.words_of[key] = place.child_value("title");
    }
  }
  return all;
}
/// Lengths, areas, volumes, counts and tables of lengths: what is measured or counted on a part.
bool is_size(const Build& build, const std::string& key) {
  const KeyValue value = value_at(build, key);
  if (value.form == KeyValue::Form::count || key == "fan.holes.lugs") return true;
  return value.form == KeyValue::Form::quantity &&
         (value.kind == kind_of<Length> || value.kind == kind_of<Area> || value.kind == kind_of<Volume>);
}
Build kind(const std::string& word) { return read_build({"k.yaml", "name: x\nfan: { kind: " + word + " }\n"}); }

// how well something was measured has no place on the part, nor have days; plugs are counted along a wire
const std::set<std::string> without_a_place{"engine.chimney.measured_within", "adapter.tube.measured_within",
                                            "supply.pack.days_since_charge", "supply.plugs"};
// marked though they are no sizes: where a gauge, a meter or an eye finds them
const std::set<std::string> beside_sizes{
    "engine.boiler.own_blower_from", "engine.boiler.working", "engine.grate.open_share",
    "supply.pack.capacity",          "supply.fuse",           "supply.stop_at",
    "supply.step_up.output"};
// of one kind of fan alone
const std::set<std::string> axial{"fan.holes.pitch"},
    centrifugal{"fan.holes.lugs", "fan.holes.inlet_x", "fan.holes.inlet_y"};
}  // namespace

TEST_CASE("every size of a description is marked in exactly one drawing of its part") {
  for (const auto& [word, other_kind] : {std::pair{"axial", &centrifugal}, std::pair{"centrifugal", &axial}}) {
    CAPTURE(word);
    const Build build = kind(word);
    const Drawn all = drawn(build, {});  // throws for a mark whose key no description has
    std::set<std::string> wanted = beside_sizes;
    for (const Key& key : keys())
      if (!key.is_section && is_size(build, key.path) && !without_a_place.contains(key.path) &&
          !other_kind->contains(key.path))
        wanted.insert(key.path);
    CHECK(wanted.size() > 35);
    for (const std::string& key : wanted) {
      CAPTURE(key);
      CHECK(all.part_of.contains(key));
    }
    for (const auto& [key, part] : all.part_of) {
      CAPTURE(key);
      CHECK(wanted.contains(key));
      const std::string_view owner = std::string_view(part).substr(0, part.find('.'));
      CHECK((key.starts_with(std::string(owner) + ".")));
    }
  }
}
TEST_CASE("a drawing shows what is written, what was assumed in grey, and what nobody knows as such") {
  const Build build = read_build({"b.yaml", "name: x\nengine: { chimney: { bore: 16.25 mm +- 0.02 mm } }\n"});
  const Drawn all = drawn(build, {{.key = "fuel.bed", .value = "30 mm", .band = "", .why = ""}});
  CHECK(all.look_of.at("engine.chimney.bore") == "place known");
  CHECK(all.words_of.at("engine.chimney.bore").ends_with(" 16.25 mm"));
  CHECK(all.look_of.at("fuel.bed") == "place assumed");
  CHECK(all.words_of.at("fuel.bed").ends_with(" 30 mm, assumed"));
  CHECK(all.look_of.at("engine.grate.length") == "place not-known");
  CHECK(all.words_of.at("engine.grate.length").ends_with(" not known"));
}
TEST_CASE("a longer tube in the chimney is drawn longer, and more holes are more holes") {
  const auto svg_of = [](const std::string& tube, int holes) {
    const Build build =
        read_build({"b.yaml", "name: x\nadapter: { tube: { length: 60 mm, engaged: " + tube +
                                  " }, flange: { holes: { count: " + std::to_string(holes) + " } } }\n"});
    for (const places::PartPicture& one : places::pictures(build, {}, {}))
      if (one.picture.id == "places-tube") return picture_file(one.picture, 340.0);
    return std::string();
  };
  const auto count = [](const std::string& svg) {
    std::size_t circles = 0;
    for (std::size_t at = 0; (at = svg.find("class=\"void-seen\"", at)) != std::string::npos; ++at) ++circles;
    return circles;
  };
  CHECK(count(svg_of("30 mm", 5)) == 5);
  CHECK(count(svg_of("30 mm", 3)) == 3);
  CHECK(svg_of("24 mm", 3) != svg_of("40 mm", 3));
}
TEST_CASE("random builds are drawn: every mark lies on the paper, no letter on another") {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    CAPTURE(seed);
    const Build build = read_build({"random.yaml", RandomBuild(seed, 0.7, seed % 2 == 0).text()});
    for (const double width : {340.0, 700.0})
      for (const places::PartPicture& one : places::pictures(build, {}, {})) {
        CAPTURE(one.picture.id);
        pugi::xml_document read;
        REQUIRE(read.load_string(picture_file(one.picture, width).c_str()));
        std::istringstream box(read.child("svg").attribute("viewBox").value());
        double left = -1.0, top = -1.0, right = 0.0, bottom = 0.0;
        box >> left >> top >> right >> bottom;
        CHECK(right == width);
        std::vector<std::pair<double, double>> letters;
        for (const pugi::xml_node place : read.child("svg").children("g"))
          for (const pugi::xml_node circle : place.children("circle")) {
            const double x = circle.attribute("cx").as_double(), y = circle.attribute("cy").as_double();
            CAPTURE(place.attribute("data-key").value());
            CHECK((x >= 2.0 && x <= right - 2.0 && y >= 2.0 && y <= bottom - 2.0));
            if (std::string(circle.attribute("class").value()) != "balloon") continue;
            for (const auto& [other_x, other_y] : letters) CHECK(std::hypot(x - other_x, y - other_y) >= 16.0);
            letters.emplace_back(x, y);
          }
        CHECK(letters.size() % 2 == 0);
      }
  }
}
