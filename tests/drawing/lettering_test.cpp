#include "drawing/detail/lettering.hpp"
#include <doctest/doctest.h>
using namespace lumwright::drawing;

TEST_CASE("hostile text becomes one harmless line") {
  struct Row {
    std::string text, cleaned;
  };
  const Row rows[] = {{"plain", "plain"},
                      {"two\nlines\r\nand\ttab", "two lines  and tab"},
                      {std::string("nul\0l", 5), "nul?l"},
                      {"\x1b[31mred", "?[31mred"},
                      {"broken \xff\xc3"
                       "x",
                       "broken ??x"},
                      {"\xed\xa0\x80", "???"},              // a surrogate, no character (RFC 3629)
                      {"a\u202Eb\u200Bc\uFEFF", "a?b?c?"},  // direction override, zero width, byte order mark
                      {"\uFFFE\U0001FFFF", "??"},           // non-characters, forbidden in XML 1.0
                      {"\u65E5\u672C \U0001F525", "\u65E5\u672C \U0001F525"},
                      {"", ""}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(clean(row.text) == row.cleaned);
  }
  CHECK(clean(std::string(5000, 'x')) == std::string(197, 'x') + "...");
  CHECK(clean_lines("a\nb\n").size() == 3);
  CHECK(clean_lines(std::string(1000, '\n')).size() == 12);
}
TEST_CASE("the signs of drawings survive in the character set of PDF") {  // code points of Windows-1252
  CHECK(to_cp1252("\u230016 \u00B10.1 90\u00B0 5 \u00B5m") ==
        "\xD8"
        "16 \xB1"
        "0.1 90\xB0 5 \xB5m");
  CHECK(to_cp1252("\u03BCm \u2212"
                  "1 \u2264 \u65E5") == "\xB5m -1 <= ?");
}
TEST_CASE("DXF gets its own codes, and the user's words cannot form one") {
  struct Row {
    std::string text, written;
  };
  const Row rows[] = {{"\u230016 \u00B10.1 90\u00B0", "%%c16 %%p0.1 90%%d"},
                      {"50 \u00B5m", "50 \\U+00B5m"},
                      {"100 %", "100 %"},
                      {"%%c", "%c"},
                      {"%%%%%%d", "%d"},
                      {"5%\u00B01", "5% %%d1"},
                      {"\\U+0041 \\P", "/U+0041 /P"},
                      {"^J", "^ J"},
                      {"\u65E5", "?"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(to_dxf(row.text) == row.written);
  }
  std::string degrees;
  for (int i = 0; i < 200; ++i) degrees += "\u00B0";
  CHECK(to_dxf(degrees).size() <= 255);
  CHECK(to_dxf(degrees).ends_with("%%d..."));
}
TEST_CASE("numbers of dimensions") {
  CHECK(dimension_number(30.0) == "30");
  CHECK(dimension_number(16.10000001) == "16.1");
  CHECK(dimension_number(45.254) == "45.25");
  CHECK(dimension_number(100.0) == "100");
  CHECK(dimension_number(-0.001) == "0");
  CHECK(dimension_number(1.18110236, 3) == "1.181");
  CHECK(dimension_number(10.0, 0) == "10");
}
TEST_CASE("words are cut to the room there is") {
  CHECK(fitted("short", 100.0) == "short");
  const std::string cut = fitted("a rather long sentence", 8.0);
  CHECK(cut.ends_with("..."));
  CHECK(width_to_height(cut) <= 8.0);
  CHECK(fitted("W", 0.0) == "...");
}
