// The page of a choice and its pictures, read back as XML.
#include "report/choice.hpp"
#include "report/detail/choice_words.hpp"
#include "report/files.hpp"
#include "report/html/choice.hpp"
#include "report/picture/choice.hpp"
#include <algorithm>
#include <cstring>
#include <doctest/doctest.h>
#include <fstream>
#include <iterator>
#include <limits>
#include <pugixml.hpp>
#include <set>
#include <sstream>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::choose;
using namespace lumwright::plan;
using namespace lumwright::report;

namespace {
std::string shed_text() {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/bins/tarn-beck-shed.yaml", std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}
std::string changed(const std::string& from, const std::string& to) {
  std::string text = shed_text();
  REQUIRE(text.find(from) != std::string::npos);
  return text.replace(text.find(from), from.size(), to);
}
std::string of_one_engine() {
  const std::string text = shed_text();
  return text.substr(0, text.find("  - name: Low Gill tank"));
}
Choice chosen(const std::string& text) { return choose::choose(read_bin({"shed.yaml", text})); }
const Choice& shed_choice() {
  static const Choice made = chosen(shed_text());
  return made;
}
struct Mark {
  std::string look;
  double x, y;
};
/// A picture read back: the area between its axes by its clip path, and the marks on it.
struct Drawn {
  double left, top, right, bottom;
  std::vector<Mark> marks, legend;
  std::vector<std::string> words;
  std::size_t specks = 0;
  bool specks_inside = true;
};
void add_mark(Drawn& drawn, const Mark& mark) {
  const bool inside = mark.x >= drawn.left && mark.x <= drawn.right && mark.y >= drawn.top && mark.y <= drawn.bottom;
  (inside ? drawn.marks : drawn.legend).push_back(mark);
}
void add_specks(Drawn& drawn, const std::string& path) {
  if (std::count(path.begin(), path.end(), 'M') == 1 && path.size() < 40) {  // that of the legend lies beneath
    std::istringstream in(path.substr(1));
    double x = 0.0, y = 0.0;
    in >> x >> y;
    if (y > drawn.bottom) return;
  }
  std::string part;
  std::istringstream parts(path);
  std::getline(parts, part, 'M');
  while (std::getline(parts, part, 'M')) {
    std::istringstream in(part);
    double x = 0.0, y = 0.0;
    in >> x >> y;  // the upper left end of the cross
    ++drawn.specks;
    drawn.specks_inside = drawn.specks_inside && x + 2.5 >= drawn.left - 0.01 && x + 2.5 <= drawn.right + 0.01 &&
                          y + 2.5 >= drawn.top - 0.01 && y + 2.5 <= drawn.bottom + 0.01;
  }
}
Drawn drawn(const EngineChoice& engine, double width) {
  const Markup page("div");
  picture_of_choice(engine, "choice", {}).draw(page.root(), "choice", width);
  pugi::xml_document read;
  REQUIRE(read.load_string(page.html().c_str()));
  const pugi::xml_node svg = read.child("div").child("svg"), clip = svg.child("defs").child("clipPath").child("rect");
  Drawn out{.left = clip.attribute("x").as_double(),
            .top = clip.attribute("y").as_double(),
            .right = 0,
            .bottom = 0,
            .marks = {},
            .legend = {},
            .words = {}};
  out.right = out.left + clip.attribute("width").as_double();
  out.bottom = out.top + clip.attribute("height").as_double();
  REQUIRE(out.right > out.left);
  for (const pugi::xml_node node : svg.children()) {
    const std::string look = node.attribute("class").value(), name = node.name();
    if (name == "circle")
      add_mark(out, {look, node.attribute("cx").as_double(), node.attribute("cy").as_double()});
    else if (name == "polygon") {  // a diamond begins at its upper corner, and its second is the right one
      double x = 0.0, y = 0.0, x2 = 0.0, y2 = 0.0;
      char comma = 0;
      std::istringstream(node.attribute("points").value()) >> x >> comma >> y >> x2 >> comma >> y2;
      add_mark(out, {look, x, y2});
    } else if (name == "path" && look == "speck") {
      add_specks(out, node.attribute("d").value());
    } else if (name == "text") {
      out.words.emplace_back(node.child_value());
    }
  }
  return out;
}
std::vector<std::string> all_texts(const std::string& html) {
  pugi::xml_document read;
  REQUIRE(read.load_string(html.c_str(), pugi::parse_default | pugi::parse_doctype));
  std::vector<std::string> out;
  for (const pugi::xpath_node& node : read.select_nodes("//*[not(self::style)]/text()"))
    out.emplace_back(node.node().value());
  return out;
}
bool says(const std::vector<std::string>& texts, const std::string& words) {
  return std::any_of(texts.begin(), texts.end(), [&](std::string text) {
    for (std::size_t at = 0; (at = text.find("\u00A0", at)) != std::string::npos;) text.replace(at, 2, " ");
    return text.find(words) != std::string::npos;
  });
}
}  // namespace

TEST_CASE("every combination of ranking and front has one mark, in the plot, of the shape that tells what it is") {
  for (const EngineChoice& engine : shed_choice().engines)
    for (const double width : {340.0, 700.0}) {
      CAPTURE(engine.engine);
      CAPTURE(width);
      const Drawn picture = drawn(engine, width);
      const auto dots = choice_dots(engine);
      REQUIRE(dots.size() >= 10);
      CHECK(picture.marks.size() == dots.size());
      CHECK(picture.legend.size() <= 2);
      const auto count = [&](const char* look) {
        return std::count_if(picture.marks.begin(), picture.marks.end(), [&](const Mark& m) { return m.look == look; });
      };
      const auto on_front = std::count_if(dots.begin(), dots.end(), [](const ChoiceDot& d) { return d.on_front; });
      CHECK(count("dot-hot") == on_front);
      CHECK(count("dot-cold") == static_cast<long>(dots.size()) - on_front);
      for (std::size_t place = 1; place <= engine.places.size(); ++place)
        CHECK(std::count(picture.words.begin(), picture.words.end(), std::to_string(place)) >= 1);
      // the others that raise steam: never more crosses than there are, none outside the plot
      const auto others = std::count_if(engine.judged.begin(), engine.judged.end(), [](const Judged& j) {
        return j.loss != Loss::none && j.to_steam > 0.0 * unit::s;
      });
      CHECK(picture.specks > 0);
      CHECK(picture.specks <= static_cast<std::size_t>(others));
      CHECK(picture.specks_inside);
    }
}

TEST_CASE("a faster combination stands further left, one with more light-ups higher, both in proportion") {
  for (const EngineChoice& engine : shed_choice().engines) {
    const Drawn picture = drawn(engine, 700.0);
    const auto dots = choice_dots(engine);
    // identity: a straight scale keeps sums, so the mean of the marks is the mark of the mean; and the outermost agree
    const auto mean = [](const auto& items, auto&& number) {
      double sum = 0.0;
      for (const auto& item : items) sum += number(item);
      return sum / static_cast<double>(items.size());
    };
    const auto time = [](const ChoiceDot& d) { return in(d.to_steam, unit::s); };
    const auto ups = [](const ChoiceDot& d) { return static_cast<double>(d.light_ups); };
    const auto [fast, slow] =
        std::minmax_element(dots.begin(), dots.end(), [&](const auto& a, const auto& b) { return time(a) < time(b); });
    const auto [few, many] =
        std::minmax_element(dots.begin(), dots.end(), [&](const auto& a, const auto& b) { return ups(a) < ups(b); });
    const auto [left, right] = std::minmax_element(picture.marks.begin(), picture.marks.end(),
                                                   [](const Mark& a, const Mark& b) { return a.x < b.x; });
    const auto [top, low] = std::minmax_element(picture.marks.begin(), picture.marks.end(),
                                                [](const Mark& a, const Mark& b) { return a.y < b.y; });
    const double across = (mean(dots, time) - time(*fast)) / (time(*slow) - time(*fast)),
                 up = (mean(dots, ups) - ups(*few)) / (ups(*many) - ups(*few));
    const double mean_x = mean(picture.marks, [](const Mark&m) { return m.x; }),
                 mean_y = mean(picture.marks, [](const Mark&m) { return m.y; });
    CHECK((mean_x - left->x) / (right->x - left->x) == doctest::Approx(across).epsilon(1e-3));
    CHECK((mean_y - low->y) / (top->y - low->y) == doctest::Approx(up).epsilon(1e-3));
  }
}

TEST_CASE("a picture is drawn whatever is wanted, and not where nothing raises steam") {
  for (const char* want :
       {"steam_within: 1 min, light_ups_per_charge: 1000", "steam_within: 200 min, light_ups_per_charge: 1"}) {
    const Choice made = chosen(changed("steam_within: 12 min, light_ups_per_charge: 5", want));
    for (const EngineChoice& engine : made.engines)
      CHECK(drawn(engine, 340.0).marks.size() == choice_dots(engine).size());
  }
  EngineChoice none{};
  none.engine = "Cold";
  const Picture picture = picture_of_choice(none, "none", {});
  CHECK_FALSE(picture.draw);
  CHECK(picture.not_drawn.find("nothing here raises steam") != std::string::npos);
}

TEST_CASE("the first sentence says what to take") {
  const Advice several = advice_of(shed_choice(), {});
  const Unit& unit = shed_choice().for_all.front().unit;
  CHECK(several.sentence.starts_with("Make one unit of " + unit.fan_name + ", " + unit.pack_name + ", " +
                                     unit.step_up_name));
  CHECK(several.sentence.find("both engines as you want it") != std::string::npos);

  const Choice alone = chosen(of_one_engine());
  REQUIRE(alone.engines.size() == 1);
  const Candidate& best = alone.engines[0].places[0].candidate;
  const Advice one = advice_of(alone, {});
  CHECK(one.sentence.starts_with("Make the unit of " + name_of(best) + ": steam on Tarn Beck in "));
  CHECK(one.verdict == (alone.engines[0].places[0].watches.empty() ? Verdict::pass : Verdict::watch));

  const Choice hasty = chosen(changed("steam_within: 12 min", "steam_within: 1 min"));
  CHECK(advice_of(hasty, {}).verdict != Verdict::pass);
  CHECK(advice_of(Choice{}, {}).verdict == Verdict::unknown);
}

TEST_CASE("a unit for all that check passes with care is to be watched, on the page and in the text") {
  const Advice advice = advice_of(shed_choice(), {});
  CHECK(advice.verdict == Verdict::watch);
  REQUIRE(!advice.cautions.empty());
  const auto texts = all_texts(html_choice(shed_choice(), {}));
  for (const std::string& caution : advice.cautions) CHECK(says(texts, caution));
  const std::string text = choice_report(shed_choice(), {.width = 200});
  const auto& watches = shed_choice().for_all.front().engines[0].watches;
  REQUIRE(!watches.empty());
  CHECK(text.find(watches.front(), text.find("An adapter tube for each")) != std::string::npos);
}

TEST_CASE("the page holds what the text holds: places, front, reasons, things, cautions, what is wanted") {
  const auto texts = all_texts(html_choice(shed_choice(), {}));
  CHECK(says(texts, advice_of(shed_choice(), {}).sentence));
  CHECK(says(texts, tie_sentence(shed_choice())));
  for (const std::string& sentence : shed_choice().shared) CHECK(says(texts, sentence));
  for (const EngineChoice& engine : shed_choice().engines) {
    CHECK(says(texts, wanted_sentence(engine, {})));
    for (const Place& place : engine.places) {
      CHECK(says(texts, name_of(place.candidate)));
      CHECK(says(texts, grade_words(place.candidate)));
      for (const std::string& point : place.watches) CHECK(says(texts, point));
      if (!place.sized.empty()) CHECK(says(texts, place.sized));
    }
    for (const Candidate& candidate : engine.front) CHECK(says(texts, name_of(candidate)));
    for (const LossCount& loss : engine.losses) {
      CHECK(says(texts, std::string(words(loss.loss))));
      CHECK(says(texts, std::to_string(loss.count)));
    }
    for (const ItemFate& item : engine.items) {
      CHECK(says(texts, item.name));
      CHECK(says(texts, fate_words(item)));
    }
  }
}

TEST_CASE("the page runs nothing, styles no element, fetches nothing, and every reference in it leads somewhere") {
  const std::string html = html_choice(shed_choice(), {}, {{"choice.csv", "every combination"}});
  CHECK(html.find("default-src 'none'") != std::string::npos);
  CHECK(html.find("http:") == std::string::npos);
  CHECK(html.find("https:") == std::string::npos);
  pugi::xml_document read;
  REQUIRE(read.load_string(html.c_str(), pugi::parse_default | pugi::parse_doctype));
  CHECK(read.select_nodes("//script | //img | //link | //iframe | //object | //embed").empty());
  CHECK(read.select_nodes("//@style").empty());
  std::set<std::string> ids;
  for (const pugi::xpath_node& id : read.select_nodes("//@id")) CHECK(ids.insert(id.attribute().value()).second);
  for (const pugi::xpath_node& link : read.select_nodes("//a/@href")) {
    const std::string to = link.attribute().value();
    CHECK((to.starts_with("./") || ids.contains(to.substr(1))));
  }
  CHECK(read.select_nodes("//svg[@role='img'][title][desc]").size() == 2 * shed_choice().engines.size());
}

TEST_CASE("hostile names stay text, and an engine that lacks something says what") {
  const auto texts = all_texts(html_choice(
      chosen(changed("name: quick 40 mm", "name: '<script>alert(1)</script>\"><img src=x onerror=1>'")), {}));
  CHECK(says(texts, "<script>alert(1)</script>\"><img src=x onerror=1>"));

  const Choice lacking =
      chosen(changed("chimney: { bore: 13.6 mm +- 0.02 mm, depth: 32 mm,", "chimney: { depth: 32 mm,"));
  CHECK(says(all_texts(html_choice(lacking, {})), "Nothing can be said of it: the bin lacks"));
}

TEST_CASE("the files of a choice are the same every time, and hold what the command prints") {
  const auto files = choice_files(shed_choice(), {}), again = choice_files(shed_choice(), {});
  REQUIRE(files.size() == 8);  // with two first places and the unit for both engines
  for (std::size_t i = 0; i < files.size(); ++i) CHECK(files[i].text == again[i].text);
  CHECK(files[0].name == "choice.html");
  CHECK(files[0].text.size() < 400'000);
  CHECK(files[1].text == choice_report(shed_choice(), {}));
  CHECK(files[2].text == choice_json(shed_choice()));
  CHECK(files[3].text == choice_csv(shed_choice()));
  for (std::size_t i = 1; i < files.size(); ++i) CHECK(files[0].text.find("./" + files[i].name) != std::string::npos);
}

TEST_CASE("a number that is not finite is our mistake and never drawn") {
  Choice made = shed_choice();
  made.engines[0].places[0].candidate.to_steam = std::numeric_limits<double>::quiet_NaN() * unit::s;
  CHECK_THROWS_AS(html_choice(made, {}), std::logic_error);
}
