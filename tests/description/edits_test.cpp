// Random edits of good descriptions: each gives a Build or faults that lie inside the file; nothing else.
#include "description/description.hpp"
#include "description/taken_up.hpp"
#include "description/template.hpp"
#include "description/writer.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <random>
#include <string>
#include <vector>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;

namespace {
class Editor {
 public:
  explicit Editor(unsigned start) : random_(start) {}
  std::string edit(std::string text) {
    const auto n = static_cast<int>(pick(3)) + 1;
    for (int i = 0; i < n; ++i) once(text);
    return text;
  }

 private:
  std::size_t pick(std::size_t below) { return std::uniform_int_distribution<std::size_t>(0, below - 1)(random_); }
  // A stretch of letters, digits and such: a key, a number, a unit.
  std::pair<std::size_t, std::size_t> word(const std::string& text) {
    const auto inside = [](char c) { return std::string_view(" \n:,{}[]#").find(c) == std::string_view::npos; };
    std::size_t at = pick(text.size()), end = at;
    while (at > 0 && inside(text[at - 1])) --at;
    while (end < text.size() && inside(text[end])) ++end;
    return {at, std::max<std::size_t>(end - at, 1)};
  }
  std::pair<std::size_t, std::size_t> line(const std::string& text) {
    const std::size_t at = text.rfind('\n', pick(text.size())) + 1;
    return {at, std::min(text.find('\n', at), text.size() - 1) - at + 1};
  }
  void once(std::string& text) {
    if (text.size() < 2) text = "a: 1\n";
    static const std::vector<std::string> swaps{"14 V",     "mm",
                                                "V",        "[1, 2]",
                                                "{a: b}",   "nan",
                                                "1e400 mm", "",
                                                "-5 mm",    "1/0 in",
                                                "22 swg",   "\"",
                                                "'",        "\t",
                                                "é",        "~",
                                                "1e308",    "5 %",
                                                "..",       "+-",
                                                "±",        "&a",
                                                "*a",       "!t",
                                                "<<",       "? ",
                                                "- ",       "|",
                                                ">",        "null",
                                                "0x10",     "99999999999999999999",
                                                "50 degC",  "3 bar a",
                                                "chopped supply", "\xEF\xBB\xBF",
                                                "#",        ":",
                                                "{",        "}",
                                                "]",        std::string(1, '\0'),
                                                "\x80"};
    switch (pick(9)) {
      case 0: {
        const auto [at, size] = line(text);
        text.erase(at, size);
        break;
      }
      case 1: {
        const auto [at, size] = line(text);
        text.insert(at, text.substr(at, size));
        break;
      }
      case 2: {
        const auto [at, size] = word(text);
        text.erase(at, size);
        break;
      }
      case 3: {
        const auto [at, size] = word(text);
        text.insert(at + pick(size), 1, static_cast<char>('a' + pick(26)));
        break;
      }
      case 4: {
        const auto [at, size] = word(text);
        if (size > 1) std::swap(text[at], text[at + 1]);
        break;
      }
      case 5: {
        const auto [at, size] = word(text);
        text.replace(at, size, swaps[pick(swaps.size())]);
        break;
      }
      case 6: {
        const auto [a, a_size] = word(text);
        const auto [b, b_size] = word(text);
        text.replace(a, a_size, text.substr(b, b_size));
        break;
      }
      case 7:
        text.insert(pick(text.size()), swaps[pick(swaps.size())]);
        break;
      default:
        text.erase(pick(text.size()), 1);
        break;
    }
  }
  std::mt19937 random_;
};

bool inside(const std::string& text, const Position& at) {
  std::size_t start = 0;
  for (int line = 1; line < at.line; ++line) {
    start = text.find('\n', start);
    if (start == std::string::npos) return false;
    ++start;
  }
  const std::size_t width = std::min(text.find('\n', start), text.size()) - start;
  return at.line >= 1 && at.column >= 1 && static_cast<std::size_t>(at.column) <= width + 1 && at.width >= 1;
}
}  // namespace

TEST_CASE("two thousand edits of good descriptions") {
  const std::string bases[] = {full_description, with(with(taken_up(new_description()), "duty: 60 %", "duty:"), "kind: none", "kind: lower output"),
                               write_build(read(full_description))};
  Editor editor(20240229);
  int good = 0, refused = 0;
  for (int i = 0; i < 2000; ++i) {
    const std::string text = editor.edit(bases[i % 3]);
    try {
      const Build build = read(text);
      const std::string again = write_build(build);  // what was accepted can be written and read
      CHECK_NOTHROW(read(again));
      ++good;
    } catch (const InputError& e) {
      ++refused;
      CHECK_FALSE(e.faults().empty());
      for (const Fault& fault : e.faults()) {
        if (!inside(text, fault.at)) CAPTURE(text);
        CHECK(inside(text, fault.at));
        CHECK_FALSE(fault.message.empty());
      }
    }
  }
  CHECK(good > 200);  // comments, spare keys and numbers may be edited
  CHECK(refused > 500);
}
