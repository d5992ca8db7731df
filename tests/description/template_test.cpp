#include "description/template.hpp"
#include "description/description.hpp"
#include "description/keys.hpp"
#include "description/taken_up.hpp"
#include "description/values.hpp"
#include "description/writer.hpp"
#include "quantity/units.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <sstream>
#include <string>
#include <vector>
using namespace lumwright;
using namespace lumwright::description;

namespace {
std::vector<std::string> lines(const std::string& text) {
  std::istringstream in(text);
  std::vector<std::string> out;
  for (std::string line; std::getline(in, line);) out.push_back(line);
  return out;
}
std::string joined(const std::vector<std::string>& all) {
  std::string out;
  for (const std::string& line : all) out += line + "\n";
  return out;
}
std::size_t characters(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}
// The one key that contradicts others when all are put to use.
std::string agreeing(const std::string& text) {
  return with(with(text, "duty: 60 %", "#duty: 60 %"), "kind: none", "kind: lower output");
}
}  // namespace

TEST_CASE("a new description says nothing but its name, with its comments and without them") {
  const std::string text = new_description();
  CHECK(write_build(read(text)) == "name: my build\n");
  std::vector<std::string> bare;
  for (const std::string& line : lines(text))
    if (line.find('#') == std::string::npos) bare.push_back(line);
  CHECK(write_build(read(joined(bare))) == "name: my build\n");
}

TEST_CASE("a new description with every key put to use reads without fault, each under its own section") {
  const std::string text = agreeing(taken_up(new_description()));
  CHECK(complaint(text) == "");
  const std::string again = write_build(read(text));
  for (const Key& key : keys())
    if (!key.is_section && key.field.key != "duty") {
      CAPTURE(key.section + "." + std::string(key.field.key));
      CHECK(again.find(std::string(key.field.key) + ": ") != std::string::npos);
    }
  CHECK(std::count(again.begin(), again.end(), '\n') + 1 == static_cast<std::ptrdiff_t>(keys().size()));  // less `duty`
}

TEST_CASE("every waiting key of a new description may be put to use, one at a time") {
  const std::vector<std::string> all = lines(new_description());
  int used = 0, need_another = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (!waits(all[i])) continue;
    std::vector<std::string> edited = all;
    edited[i] = without_mark(all[i]);
    const std::string said = complaint(joined(edited));
    CAPTURE(edited[i]);
    need_another += !said.empty();
    if (said.empty())
      CHECK(lines(write_build(read(joined(edited)))).size() > 1);
    else  // of a curve, a speed control, a measured load
      CHECK((said.find("needs `") != std::string::npos || said.find("a meaning only with") != std::string::npos));
    ++used;
  }
  CHECK(used + 1 == std::count_if(keys().begin(), keys().end(), [](const Key& key) { return !key.is_section; }));
  CHECK(need_another == 6);
}

TEST_CASE("an answer with nothing behind its colon is not known, as if its line were not there") {
  const std::vector<std::string> all = lines(agreeing(taken_up(new_description())));
  int used = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i].find(": ") == std::string::npos || all[i].find('#') != std::string::npos) continue;
    std::vector<std::string> emptied = all, left_out = all;
    emptied[i] = all[i].substr(0, all[i].find(':') + 1);
    left_out[i] = "#";
    CAPTURE(all[i]);
    CHECK(complaint(joined(emptied)) == complaint(joined(left_out)));
    if (complaint(joined(emptied)).empty())
      CHECK(write_build(read(joined(emptied))) == write_build(read(joined(left_out))));
    ++used;
  }
  CHECK(used > 100);
  for (const std::string nothing : {"", " ", " ~", " null", "  # not known yet"}) {
    CAPTURE(nothing);
    CHECK(write_build(read("name: x\nengine: { tubes: { bore: 8 mm } }\nfan:\n  curve:" + nothing + "\n")) ==
          write_build(read("name: x\nengine: { tubes: { bore: 8 mm } }\n")));
  }
  CHECK(write_build(read("name: x\nfuel: { kindling: }\n")) == "name: x\n");  // by its older name too
  CHECK(read("name: x\nfuel: { kindling: }\n").renamed.empty());
}

TEST_CASE("a new description shows every key with its meaning, and fits a terminal") {
  const std::string text = new_description();
  for (const Key& key : keys()) {
    CAPTURE(key.field.key);
    CHECK(text.find(std::string(key.field.key) + ":") != std::string::npos);
    CHECK_FALSE(key.field.meaning.empty());
    CHECK(key.is_section == key.field.example.empty());
  }
  for (const std::string& line : lines(text)) {
    CAPTURE(line);
    if (line.find("curve:") == std::string::npos) CHECK(characters(line) <= 80);
  }
}

TEST_CASE("the listing of units names each unit a description can use, in 80 columns") {
  const std::string text = units_listing();
  for (const std::string& line : lines(text)) {
    CAPTURE(line);
    CHECK(characters(line) <= 80);
  }
  for (const std::string& unit :
       std::vector<std::string>{"thou", "mmH2O", "inH2O", "CFM", "mAh", "bar g", "degF", "W/m2/K", "rpm", "mohm"}) {
    CAPTURE(unit);
    CHECK(text.find(unit) != std::string::npos);
  }
}

TEST_CASE("the examples that the listing of units gives are true") {
  for (const std::string& text :
       std::vector<std::string>{"17.2 mm", ".5 in", "9/16 in", "1 1/2 in", "17.20 mm +- 0.03 mm", "17.20 ± 0.03 mm",
                                "7..9 mm", "7 mm..0.4 in"})
    CHECK_NOTHROW(parse_band<Length>(text));
  CHECK_NOTHROW(parse_band<Pressure>("60 Pa +- 10 %"));
  CHECK_NOTHROW(parse_band<Pressure>("1e3 Pa"));
  CHECK_NOTHROW(parse_band<double>("35 % +- 5 %"));
  CHECK_NOTHROW(parse_band<Temperature>("15 degC +- 2 K"));
  CHECK_NOTHROW(parse_band<GaugePressure>("45 psi"));
}

TEST_CASE("help for an unknown key") {
  CHECK(key_help(keys(), "engine.chimney", "bor") == "did you mean `bore`?");
  CHECK(key_help(keys(), "", "chimney") == "`chimney` belongs under engine");
  CHECK(key_help(keys(), "want", "zzz") == "known here: steam_within, light_ups_per_charge");
}
