#include "input/source.hpp"
#include <doctest/doctest.h>
#include <string>
using namespace lumwright;
using namespace lumwright::input;

TEST_CASE("a fault is shown with its line and a caret under it") {
  const Source source{"b.yaml", "engine:\n  bore: 14 V\n"};
  CHECK(render(source, {{2, 9, 4}, "engine.bore", "expected a length, got '14 V'", "write mm"}) ==
        "b.yaml:2:9: engine.bore: expected a length, got '14 V'\n"
        "    2 |   bore: 14 V\n"
        "      |         ^^^^\n"
        "        write mm");
}
TEST_CASE("columns and carets count characters, not bytes") {
  const Source source{"b.yaml", "n\xC3\xA4me: \xC3\xA9t\xC3\xA9 \xE2\x84\xA6 x\n"};
  CHECK(render(source, {{1, 8, 5}, "", "odd", ""}) ==
        "b.yaml:1:7: odd\n"
        "    1 | n\xC3\xA4me: \xC3\xA9t\xC3\xA9 \xE2\x84\xA6 x\n"
        "      |       ^^^");
}
TEST_CASE("a byte order mark, carriage returns and tabs do not move the caret") {
  const Source source{"b.yaml",
                      "\xEF\xBB\xBF"
                      "a:\tb\r\nc: d\r\n"};
  CHECK(render(source, {{1, 4, 1}, "", "odd", ""}) == "b.yaml:1:4: odd\n    1 | a: b\n      |    ^");
  CHECK(render(source, {{2, 4, 1}, "", "odd", ""}) == "b.yaml:2:4: odd\n    2 | c: d\n      |    ^");
}
TEST_CASE("a long line is cut around the caret") {
  const Source source{"b.yaml", std::string(300, 'x') + "HERE" + std::string(300, 'y')};
  const std::string text = render(source, {{1, 301, 4}, "", "odd", ""});
  CHECK(text.find("| ...x") != std::string::npos);
  CHECK(text.find("HEREyyy") != std::string::npos);
  const std::size_t here = text.find("HERE") - text.find("\n    1 |") - 1,
                    caret = text.find("^^^^") - text.find("\n      |") - 1;
  CHECK(here == caret);
  CHECK(text.size() < 400);
}
TEST_CASE("long help is broken at blanks") {
  const Source source{"b.yaml", "a\n"};
  std::string help;
  for (int i = 0; i < 40; ++i) help += "word" + std::to_string(i) + " ";
  const std::string text = render(source, {{1, 1, 1}, "", "odd", help});
  std::size_t widest = 0, at = 0;
  while (at < text.size()) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    widest = std::max(widest, end - at);
    at = end + 1;
  }
  CHECK(widest <= 100);
  CHECK(text.find("word39") != std::string::npos);
}
TEST_CASE(
    "faults come in the order of their places, all inside the file, and no control character reaches the terminal") {
  const Source source{"b.yaml", "one\ntwo"};
  const InputError error(
      source,
      {{{9, 99, 3}, "", "last", ""}, {{1, 2, 1}, "k\x1B[31m", "first \x07", ""}, {{-1, -5, -2}, "", "start", ""}});
  REQUIRE(error.faults().size() == 3);
  CHECK(error.faults()[0].message == "start");
  CHECK(error.faults()[1].message == "first \x07");
  CHECK(error.faults()[2].at.line == 2);
  CHECK(error.faults()[2].at.column == 4);
  CHECK(std::string(error.what()) ==
        "b.yaml:1:1: start\n    1 | one\n      | ^\n"
        "b.yaml:1:2: k?[31m: first ?\n    1 | one\n      |  ^\n"
        "b.yaml:2:4: last\n    2 | two\n      |    ^");
}
TEST_CASE("of very many faults the first fifty are shown and the rest are counted") {
  std::vector<Fault> faults(80, Fault{{1, 1, 1}, "", "odd", ""});
  const std::string text = InputError({"b.yaml", "x"}, faults).what();
  CHECK(text.find("\n... and 30 more") != std::string::npos);
}
TEST_CASE(
    "bytes that are no text, and a name that is none, are shown as question marks, the caret below the right one") {
  CHECK(render({"a\x1B[2Jb\xFF.yaml", "x: \xE9\xE9 \xC2\xB1\x80z\n"}, {{1, 9, 1}, "", "odd", ""}) ==
        "a?[2Jb?.yaml:1:8: odd\n    1 | x: ?? \xC2\xB1?z\n      |        ^");
}
