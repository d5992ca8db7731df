#include "description/template.hpp"
#include "description/description.hpp"
#include "description/keys.hpp"
#include "description/values.hpp"
#include "quantity/units.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <sstream>
#include <string>
#include <vector>
using namespace lumwright;

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
std::string trimmed(const std::string& line) { return line.substr(std::min(line.find_first_not_of(' '), line.size())); }
// `#key: value`: a key that waits to be used. Prose has a blank behind the `#`.
bool is_waiting_key(const std::string& line) {
  const std::string rest = trimmed(line);
  return rest.size() > 1 && rest[0] == '#' && rest[1] != ' ' && rest.find(':') != std::string::npos;
}
}  // namespace

TEST_CASE("a new description reads without fault, with its comments and without them") {
  const std::string text = new_description();
  CHECK(complaint(text) == "");
  std::vector<std::string> bare;
  for (const std::string& line : lines(text))
    if (!trimmed(line).starts_with('#')) bare.push_back(line);
  CHECK(complaint(joined(bare)) == "");
}

TEST_CASE("every waiting key of a new description may be put to use, one at a time") {
  const std::vector<std::string> all = lines(new_description());
  int used = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (!is_waiting_key(all[i])) continue;
    std::vector<std::string> edited = all;
    const auto uncomment = [](std::string& line) { line.erase(line.find('#'), 1); };
    uncomment(edited[i]);
    const std::size_t margin = all[i].find('#');
    for (std::size_t j = i + 1; j < all.size() && all[i].ends_with(':'); ++j) {  // a whole section
      if (all[j].size() <= margin || all[j][margin] != '#' || !all[j].substr(margin).starts_with("#  ")) break;
      uncomment(edited[j]);
    }
    const std::string key = trimmed(edited[i]).substr(0, trimmed(edited[i]).find(':'));
    std::string text = joined(edited);
    if (key == "duty") text = with(text, "kind: none", "kind: chopped supply");
    if (key == "output") text = with(text, "kind: none", "kind: lower output");
    CAPTURE(key);
    CHECK(complaint(text) == "");
    ++used;
  }
  CHECK(used == std::count_if(keys().begin(), keys().end(), [](const Key& key) { return key.field.expert; }));
  CHECK(used > 20);
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
