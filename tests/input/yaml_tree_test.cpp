#include "input/yaml_tree.hpp"
#include <chrono>
#include <doctest/doctest.h>
#include <string>
using namespace lumwright;
using namespace lumwright::input;

namespace {
std::string repeat(const std::string& text, int times) {
  std::string out;
  for (int i = 0; i < times; ++i) out += text;
  return out;
}
// The first line of the complaint, or "tree" and the faults collected beside it.
std::string outcome(const std::string& text, std::size_t most_bytes = 64 * 1024) {
  const Source source{"b.yaml", text};
  std::vector<Fault> faults;
  try {
    read_yaml(source, faults, most_bytes);
    return "tree, " + std::to_string(faults.size()) + " faults";
  } catch (const InputError& e) {
    const std::string what = e.what();
    return what.substr(0, what.find('\n'));
  }
}
std::string complaint(const std::string& text) {
  const Source source{"b.yaml", text};
  std::vector<Fault> faults;
  try {
    read_yaml(source, faults);
  } catch (const InputError& e) {
    return e.what();
  }
  return faults.empty() ? "" : render(source, faults.front());
}
}  // namespace

TEST_CASE("a tree keeps keys, kinds and places") {
  const Source source{"b.yaml", "a: 1 mm\nb:\n  - x\n  - \"y z\"\nc:\nd: {e: 'it''s', f: \"q\\tr\"}\n"};
  std::vector<Fault> faults;
  const Node root = read_yaml(source, faults);
  CHECK(faults.empty());
  REQUIRE(root.children.size() == 4);
  const Node &a = root.children[0], &b = root.children[1], &c = root.children[2], &d = root.children[3];
  CHECK(a.text == "1 mm");
  CHECK(a.at.column == 4);
  CHECK(a.at.width == 4);
  CHECK(a.verbatim);
  CHECK(b.kind == Node::Kind::list);
  CHECK(b.children[1].text == "y z");
  CHECK(b.children[1].quoted);
  CHECK(b.children[1].verbatim);
  CHECK(b.children[1].at.width == 5);
  CHECK(c.kind == Node::Kind::empty);
  CHECK(c.at.line == 5);
  CHECK(d.children[0].text == "it's");
  CHECK_FALSE(d.children[0].verbatim);
  CHECK(d.children[1].text == "q\tr");
  CHECK(d.children[1].at.width == 6);
  CHECK(child(root, "d") == &d);
  CHECK(child(root, "z") == nullptr);
}

TEST_CASE("a scalar over several lines is marked") {
  const Source source{"b.yaml", "a: one\n  two\nb: \"three\n  four\"\nc: |\n  five\n"};
  std::vector<Fault> faults;
  const Node root = read_yaml(source, faults);
  for (const Node& node : root.children) {
    CAPTURE(node.key);
    CHECK_FALSE(node.one_line);
    CHECK_FALSE(node.verbatim);
  }
}

TEST_CASE("a repeated key is reported and its first value kept") {
  const Source source{"b.yaml", "a:\n  x: 1\n  x: 2\nb: 3\nb: 4\n"};
  std::vector<Fault> faults;
  const Node root = read_yaml(source, faults);
  REQUIRE(faults.size() == 2);
  CHECK(render(source, faults[0]) ==
        "b.yaml:3:3: a.x: this key is given twice\n    3 |   x: 2\n      |   ^\n        it stands first on line 2");
  CHECK(child(root, "b")->text == "3");
}

TEST_CASE("what cannot be read says what it is and where it began") {
  struct Row {
    std::string text, expected;
  };
  const std::string cannot = "this is not YAML that can be read: ";
  const Row rows[] = {
      {"",
       "b.yaml:1:1: the file is empty\n    1 | \n      | ^\n        `lumwright new` writes a description to start "
       "from"},
      {"# nothing\n",
       "b.yaml:1:1: the file is empty\n    1 | # nothing\n      | ^\n        `lumwright new` writes a description to "
       "start from"},
      {"a: \"x\nb: 1 mm\nc: 2\n", "b.yaml:1:4: this quote is never closed\n    1 | a: \"x\n      |    ^"},
      {"a: 'x\nb: it''s\n", "b.yaml:1:4: this quote is never closed\n    1 | a: 'x\n      |    ^"},
      {"a: \"x\nb: \"y\"\n", "b.yaml:2:5: " + cannot +
                                 "end of map not found\n    2 | b: \"y\"\n      |     ^\n"
                                 "        the quote that opens on line 1 is closed on a later line: is one missing?"},
      {"a: {b: 1 mm\nc: 2\n",
       "b.yaml:1:4: this `{` is never closed\n    1 | a: {b: 1 mm\n      |    ^\n        line 2 was the last one read"},
      {"a: [1, 2\nb: 3\n",
       "b.yaml:1:4: this `[` is never closed\n    1 | a: [1, 2\n      |    ^\n        line 2 was the last one read"},
      {"a:\n\tb: 1\n", "b.yaml:2:3: " + cannot +
                           "illegal map value\n    2 |  b: 1\n      |   ^\n        indent with blanks, not with tabs"},
      {"a: 3 : 4\n", "b.yaml:1:6: " + cannot +
                         "illegal map value\n    1 | a: 3 : 4\n      |      ^\n"
                         "        a value that holds `: ` needs quotes; the keys of one section start in one column"},
      {"a: @x\n",
       "b.yaml:1:4: " + cannot +
           "unknown token\n    1 | a: @x\n      |    ^\n        a value that starts with this character needs quotes"},
      {"a: - 5\n",
       "b.yaml:1:4: " + cannot +
           "illegal block entry\n    1 | a: - 5\n      |    ^\n        a value that starts with `- ` needs quotes"},
      {"a: &b 1\n",
       "b.yaml:1:4: an anchor (`&name`) is not accepted here\n    1 | a: &b 1\n      |    ^\n        write the value "
       "out"},
      {"a: *b\n", "b.yaml:1:4: " + cannot +
                      "the referenced anchor is not defined\n    1 | a: *b\n      |    ^\n        a value that starts "
                      "with `*` needs quotes"},
      {"a: !!str x\n",
       "b.yaml:1:4: a tag (`!name`) is not accepted here\n    1 | a: !!str x\n      |    ^\n        leave it out"},
      {"<<: 1\n",
       "b.yaml:1:1: a merge key (`<<`) is not accepted here\n    1 | <<: 1\n      | ^^\n        write the keys out"},
      {"a: 1\n---\nb: 2\n",
       "b.yaml:3:1: there is more text behind the end of the description\n    3 | b: 2\n      | ^\n        a file "
       "holds one description"},
      {": b\n", "b.yaml:1:1: a key is missing here\n    1 | : b\n      | ^"},
      {"? [a]\n: b\n", "b.yaml:1:3: a key must be plain text\n    1 | ? [a]\n      |   ^"},
      {std::string("a: 1\0 mm\n", 9),
       "b.yaml:1:5: this byte is not readable text\n    1 | a: 1  mm\n      |     ^\n        save the file as plain "
       "UTF-8 text"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(complaint(row.text) == row.expected);
  }
}

TEST_CASE("a number that its comma cuts in braces is one fault, and read on as one number") {
  std::vector<Fault> faults;
  const Node root = read_yaml({"b.yaml", "a: { b: 17,2 mm, c: 3,5, d: 4 mm, 6: x, e: \"1,2 mm\" }\n"}, faults);
  REQUIRE(faults.size() == 2);
  CHECK(render({"b.yaml", "a: { b: 17,2 mm, c: 3,5, d: 4 mm, 6: x, e: \"1,2 mm\" }\n"}, faults[0]) ==
        "b.yaml:1:9: a.b: the comma in '17,2 mm' ends the value here, as commas do in braces\n"
        "    1 | a: { b: 17,2 mm, c: 3,5, d: 4 mm, 6: x, e: \"1,2 mm\" }\n"
        "      |         ^^^^^^^\n"
        "        write 17.2 mm, or put it in quotes: \"17,2 mm\"");
  CHECK(faults[1].key == "a.c");
  const Node& a = *child(root, "a");
  CHECK(a.children.size() == 5);
  CHECK(child(a, "b")->text == "17.2 mm");
  CHECK(child(a, "c")->text == "3.5");
  CHECK(child(a, "d")->text == "4 mm");
  CHECK(child(a, "e")->text == "1,2 mm");
}

TEST_CASE("a key without a blank behind its colon is told as that") {
  CHECK(colon_without_blank("bore:17.2 mm") == 4);
  CHECK(colon_without_blank("own_blower_from:{ a: 1 }") == 15);
  for (const std::string text : {"bore: 17.2 mm", "bore", "bore:", "http://x", "12:30", "6:30", "a:b", ":x", ""}) {
    CAPTURE(text);
    CHECK_FALSE(colon_without_blank(text));
  }
  const std::string missing = ": a blank is missing behind this colon\n";
  for (const auto& [text, at] : std::vector<std::pair<std::string, std::string>>{
           {"a:\n  bore:17 mm\n  depth: 3 mm\n", "b.yaml:2:7"},
           {"a:\n  depth: 3 mm\n  bore:17 mm\nc: 1\n", "b.yaml:3:7"},
           {"name:x\nc: 1\n", "b.yaml:1:5"},
           {"fan:\n  curve:[ [0 l/min, 58 Pa] ]\n  kind: axial\n", "b.yaml:2:8"}}) {
    CAPTURE(text);
    CHECK(complaint(text).starts_with(at + missing));
  }
  CHECK(complaint("a:\n  depth: 3 mm\n  bore:17 mm\nc: 1\n").ends_with("write `bore: 17 mm`"));
  CHECK(complaint("a: x:y\n  b: 2\n").find("not YAML") != std::string::npos);
}

TEST_CASE("line ends, byte order marks and directives are no obstacle") {
  CHECK(outcome("a: 1\r\nb: 2\r\n") == "tree, 0 faults");
  CHECK(outcome("\xEF\xBB\xBF"
                "a: 1\n") == "tree, 0 faults");
  CHECK(outcome("%YAML 1.2\n---\na: 1\n") == "tree, 0 faults");
  CHECK(outcome("---\na: 1\n...\n") == "tree, 0 faults");
  CHECK(outcome("a: 9/16 in\nb: 50%\nc: 3# mm\nd: 5' 3\"\ne: 15 \xC2\xB0"
                "C\n") == "tree, 0 faults");
}

TEST_CASE("hostile text is refused at once: no hang, no deep recursion, no flood of memory") {
  struct Row {
    std::string name, text, expected;
  };
  const std::string bomb = "a: &a [1]\nb: &b [*a,*a,*a]\nc: &c [*b,*b,*b]\nd: [*c,*c,*c]\n";
  const Row rows[] = {
      {"comma", ",", "b.yaml:1:1: there is more text behind the end of the description"},
      {"two texts", "\"a\",\"b\"", "b.yaml:1:4: there is more text behind the end of the description"},
      {"documents of nothing", repeat("---\n", 15000),
       "b.yaml:3:1: there is more text behind the end of the description"},
      {"brackets", repeat("[", 60000), "b.yaml:1:1: a key must be plain text"},
      {"closed brackets", repeat("[", 600) + repeat("]", 600), "b.yaml:1:17: this is nested deeper than 16 levels"},
      {"dashes", repeat("- ", 20000), "b.yaml:1:33: this is nested deeper than 16 levels"},
      {"braces", repeat("{a: ", 5000), "b.yaml:1:1: a key must be plain text"},
      {"closed braces", repeat("{a: ", 500) + "1" + repeat("}", 500),
       "b.yaml:1:65: this is nested deeper than 16 levels"},
      {"question marks", repeat("? ", 5000), "b.yaml:1:3: a key must be plain text"},
      {"alias bomb", bomb, "b.yaml:1:4: an anchor (`&name`) is not accepted here"},
      {"circular alias", "&a [*a]\n", "b.yaml:1:1: an anchor (`&name`) is not accepted here"},
      {"anchored key", "&x a: b\n", "b.yaml:1:1: an anchor (`&name`) is not accepted here"},
      {"tagged text", "! \"a\": b\n", "b.yaml:1:1: a tag (`!name`) is not accepted here"},
      {"rubbish behind the end", "a: 1\n...\nrubbish [",
       "b.yaml:3:1: there is more text behind the end of the description"},
      {"not UTF-8", "a: \xC3(\n", "b.yaml:1:4: this byte is not readable text"},
      {"UTF-16",
       std::string("\xFF\xFE"
                   "a\0:\0",
                   6),
       "b.yaml:1:1: this byte is not readable text"},
      {"escape sequence", "a: \x1B[31m\n", "b.yaml:1:4: this byte is not readable text"},
      {"a megabyte", repeat("a: 1 mm\n", 130000), "b.yaml:1:1: the file is larger than 64 kB"},
      {"open quote", "\"" + repeat("x", 50000),
       "b.yaml:1:50002: this is not YAML that can be read: illegal EOF in scalar"},
      {"one key 12,000 times", repeat("a: 1\n", 12000), "tree, 11999 faults"},
      {"a list of 30,000", "a: [" + repeat("1,", 30000) + "]\n", "tree, 0 faults"},
      {"20,000 quotes", "a: [" + repeat("'',", 20000) + "]\n", "tree, 0 faults"},
      {"colons", repeat(":", 60000), "b.yaml:1:60000: this is not YAML that can be read: illegal map value"},
      {"commas that cut numbers", "a: { " + repeat("b: 1,2, ", 7000) + "}\n", "tree, 20998 faults"},
      {"blank lines", repeat("\n", 60000), "b.yaml:1:1: the file is empty"},
      {"60,000 letters", "a: " + repeat("x", 60000), "tree, 0 faults"}};
  for (const Row& row : rows) {
    CAPTURE(row.name);
    const auto start = std::chrono::steady_clock::now();
    CHECK(outcome(row.text) == row.expected);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    CHECK(took.count() < 2.0);  // all take under 0.2 s on a quiet machine
  }
  CHECK(outcome(repeat("a: 1\n", 1000), 1024) == "b.yaml:1:1: the file is larger than 1 kB");
}
