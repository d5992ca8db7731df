#include "input/utf8.hpp"
#include <doctest/doctest.h>
#include <string>
using namespace lumwright;
using namespace lumwright::input;

TEST_CASE("well-formed UTF-8 is told from the rest") {
  struct Row {
    std::string text;
    std::optional<std::size_t> bad;
  };
  // RFC 3629, sections 3, 4 and 10: overlong forms, surrogates, above U+10FFFF, stray and missing continuation bytes
  const Row rows[] = {{"plain\ttext\r\n", {}}, {"\xC3\xA9 \xE2\x84\xA6 \xF0\x9F\x94\xA5", {}},
                      {"a\xC0\x80", 1},        {"\xE0\x80\xAF", 0},
                      {"\xED\xA0\x80", 0},     {"\xF4\x90\x80\x80", 0},
                      {"ab\x80", 2},           {"\xE2\x84", 0},
                      {"\xF5\x80\x80\x80", 0}, {std::string("a\0b", 3), 1},
                      {"a\x1B[31m", 1},        {"a\x7F", 1},
                      {"\xC2\x9B", 0},         {"\xC2\xA0", {}},
                      {"\xFF\xFE", 0},         {"\xEF\xBB\xBFok", {}},
                      {"\xF0\x82\x82\xAC", 0}, {"", {}}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(first_unreadable_byte(row.text) == row.bad);
  }
}
TEST_CASE("a byte order mark is three bytes at the start") {
  CHECK(byte_order_mark("\xEF\xBB\xBFx") == 3);
  CHECK(byte_order_mark("x\xEF\xBB\xBF") == 0);
  CHECK(byte_order_mark("") == 0);
}
TEST_CASE("text for a terminal holds no control characters") {
  CHECK(printable("a\x1B[31mb\n\tc") == "a?[31mb??c");
  CHECK(printable("\xC2\x9Bx") == "?x");
  CHECK(printable("\xFFx") == "?x");
  CHECK(printable("17 \xC2\xB1 2 \xE2\x84\xA6") == "17 \xC2\xB1 2 \xE2\x84\xA6");
}
TEST_CASE("what is shown stands in the order in which it is read") {  // Unicode UAX 9, table 1: explicit formatting
  CHECK(printable("a\u202Eb\u2066c") == "a?b?c");
  CHECK(printable("a\u200Eb\u2028c\u2029d") == "a?b?c?d");
  CHECK(printable("\u2027\u202F\u2065") == "\u2027\u202F\u2065");  // their neighbours
}
