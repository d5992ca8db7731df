// What the pages of the guide may hold, and that nothing in them stands for nothing.
#include "guide/blocks.hpp"
#include "guide/facts.hpp"
#include "guide/guide_page.hpp"
#include "guide/markdown.hpp"
#include "guide/pages.hpp"
#include <doctest/doctest.h>
#include <set>
#include <stdexcept>

using namespace lumwright::cli;
namespace {
Facts& facts() {
  static Facts all(0);  // without samples: the figures themselves are held by guide.py
  return all;
}
std::string written_by(const std::string& kind, const std::string& text) {
  const lumwright::report::Markup page("section");
  write_block(page.root(), {.kind = Piece::Kind::fence, .text = text, .info = kind}, facts());
  return page.html();
}
}  // namespace

TEST_CASE("a placeholder is filled from the example that it names, and a number stays with its unit") {
  CHECK(facts().filled("bored {{written tarn-beck engine.chimney.bore}}.") == "bored 17.60\u00A0mm +- 0.02\u00A0mm.");
  CHECK(facts().filled("{{check high-tarn-32mm fit.hot verdict}} and {{check tarn-beck fit.hot verdict}}") ==
        "fail and pass");
  CHECK(facts().filled("a bed of {{usual fuel.bed}}") == "a bed of 30\u00A0mm");
  CHECK(facts().filled("nothing to fill") == "nothing to fill");
  CHECK(facts().filled("{{value tarn-beck power.stop_reason}}").find("stop voltage") != std::string::npos);
}

TEST_CASE("a placeholder that stands for nothing is refused") {
  for (const char* text :
       {"{{value tarn-beck raise.nothing}}", "{{value no-such raise.to_own_blower}}", "{{value tarn-beck}}",
        "{{written tarn-beck engine.chimney}}", "{{written tarn-beck engine.chimney.colour}}", "{{usual nothing}}",
        "{{check tarn-beck fit.nothing value}}", "{{check tarn-beck fit.hot colour}}",
        "{{band tarn-beck power.stop_reason}}", "{{sum 1 2}}", "{{value tarn-beck raise.to_own_blower", "{{}}"}) {
    CAPTURE(text);
    CHECK_THROWS_AS(facts().filled(text), std::logic_error);
  }
}

TEST_CASE("a run is shown as it came out, and must leave as the page says") {
  const std::string shown = written_by("run", "lumwright check examples/tarn-beck.yaml --only fit.hot --samples 0\n");
  CHECK(shown.find("$ lumwright check examples/tarn-beck.yaml --only fit.hot --samples 0") != std::string::npos);
  CHECK(shown.find("Tube in the chimney, hot [fit.hot]") != std::string::npos);
  CHECK(written_by("run", "lumwright check examples/no-such.yaml\nexits: 2\n").find("No such file") !=
        std::string::npos);
  for (const char* text : {"lumwright check examples/high-tarn-32mm.yaml --samples 0\n",       // it fails
                           "lumwright check examples/tarn-beck.yaml --samples 0\nexits: 1\n",  // it does not
                           "lumwright chekc examples/tarn-beck.yaml\n", "check examples/tarn-beck.yaml\n",
                           "lumwright units\nfrom: No line is like this\n", "lumwright units\ncolour: red\n",
                           "lumwright check \"open\n"}) {
    CAPTURE(text);
    CHECK_THROWS_AS(written_by("run", text), std::logic_error);
  }
}

TEST_CASE("a run keeps what it writes for the runs behind it, and nothing of it reaches the disk") {
  CHECK_THROWS_AS(facts().file("shelf.yaml"), std::logic_error);
  CHECK(facts().run("new shelf.yaml").status == fine);
  CHECK(facts().file("shelf.yaml").find("engine:") != std::string::npos);
  CHECK(facts().run("new shelf.yaml ").status == bad_input);  // it is there already
  CHECK(facts().run("units").text.find("thou") != std::string::npos);
}

TEST_CASE("a long command is parted as a shell would take it") {
  const std::string shown = written_by(
      "run", "lumwright check examples/tarn-beck.yaml --samples 0 --only fit.hot --set fuel.bed=\"30 mm\" --untuned\n");
  CHECK(shown.find("--only fit.hot \\") != std::string::npos);
  CHECK(shown.find("    --set fuel.bed=\"30 mm\" --untuned") != std::string::npos);
}

TEST_CASE("other blocks are refused where they name nothing") {
  CHECK(written_by("picture", "tarn-beck fit\n").find("picture-fit-tarn-beck") != std::string::npos);
  CHECK(written_by("cautions", "lithium-cells over-voltage\n").find("protection board") != std::string::npos);
  const std::pair<const char*, const char*> wrong[] = {{"picture", "tarn-beck sunset\n"},
                                                       {"picture", "no-such fit\n"},
                                                       {"cautions", "lithium-cells no-such\n"},
                                                       {"cautions", ""},
                                                       {"drawing", "tarn-beck templates-1.svg\n"},
                                                       {"drawing", "tarn-beck no-such.svg\nshows: nothing\n"},
                                                       {"choice", "tarn-beck-shed\nengine: no such engine\n"},
                                                       {"file", "no-such.yaml\n"},
                                                       {"dance", ""},
                                                       {"", "plain code\n"}};
  for (const auto& [kind, text] : wrong) {
    CAPTURE(kind);
    CAPTURE(text);
    CHECK_THROWS_AS(written_by(kind, text), std::logic_error);
  }
}

TEST_CASE("words of a command are parted as a shell parts them") {
  CHECK(shell_words("check  a.yaml --set fuel.bed=\"30 mm\" 'b c'") ==
        std::vector<std::string>{"check", "a.yaml", "--set", "fuel.bed=30 mm", "b c"});
  CHECK(shell_words("a \"\"") == std::vector<std::string>{"a", ""});
  CHECK_THROWS_AS(shell_words("a \"b"), std::logic_error);
}

TEST_CASE("a page is plain Markdown: no HTML, no entities, no pictures from elsewhere") {
  const Piece page = read_markdown("# Title\n\nWords **strong** and `code`.\n\n| a | b |\n|---|---|\n| 1 | 2 |\n");
  REQUIRE(page.children.size() == 3);
  CHECK(page.children[0].level == 1);
  CHECK(page.children[1].children.size() == 5);
  CHECK(page.children[2].kind == Piece::Kind::table);
  for (const char* text :
       {"<b>bold</b>\n", "<script>alert(1)</script>\n", "a &amp; b\n", "![x](y.png)\n", "a\n\n---\n", "a  \nb\n"}) {
    CAPTURE(text);
    CHECK_THROWS_AS(read_markdown(text), std::logic_error);
  }
}

TEST_CASE("every page has a name of its own, and they stand in the order of their numbers") {
  std::set<std::string> names;
  std::string last;
  for (const auto& page : guide_pages()) {
    CHECK(page.name > last);
    last = page.name;
    names.insert(page.name.substr(3));
  }
  CHECK(names.size() == guide_pages().size());
  CHECK(names.size() >= 8);
}
