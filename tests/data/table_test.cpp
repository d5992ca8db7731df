#include "data/table.hpp"
#include "data/detail/flat_table.hpp"
#include "near.hpp"
#include <optional>
#include <set>
#include <stdexcept>
#include <string>
using namespace lumwright;
using namespace lumwright::input;

namespace {
Node tree(const std::string& text) {
  std::vector<Fault> faults;
  Node root = read_yaml({"t.yaml", text}, faults);
  REQUIRE(faults.empty());
  return root;
}
std::optional<std::string> value_of(const data::Table& table, const data::TableNode& row, std::string_view key) {
  for (const data::TableNode& node : std::span(&row + row.children, row.count))
    if (table.words.substr(node.key, node.key_size) == key)
      return std::string(table.words.substr(node.text, node.text_size));
  return std::nullopt;
}
}  // namespace

TEST_CASE("a row hands out what it holds, in the type that is asked for") {
  const Node root = tree(
      "rows:\n"
      "  - {id: x, bore: 8 mm, share: 35 %, band: 7..9 mm, ocv: [1.2 V, 1.3 V], soc: [0, 1], words: [a, b c],\n"
      "     table: [[1, 2], [3, 4]], yes: true, no: false, inner: {length: 2 m}, list: [{n: 1}, {n: 2}], source: s, "
      "standing: memory}\n");
  const data::FlatTable file("t", root);
  const auto rows = data::Row(file.table()).rows("rows");
  REQUIRE(rows.size() == 1);
  const data::Row& row = rows[0];
  CHECK(row.text("id") == "x");
  CHECK(row.text("none", "otherwise") == "otherwise");
  CHECK(row.quantity<Length>("bore") == near(8.0 * mm, 1e-15));
  CHECK(row.number("share") == near(0.35, 1e-15));
  CHECK(row.band<Length>("band").high == near(9.0 * mm, 1e-15));
  CHECK(row.list<Voltage>("ocv")[1] == near(1.3 * V, 1e-15));
  CHECK(row.numbers("soc") == std::vector<double>{0, 1});
  CHECK(row.texts("words") == std::vector<std::string>{"a", "b c"});
  CHECK(row.rows_of_numbers("table") == std::vector<std::vector<double>>{{1, 2}, {3, 4}});
  CHECK(row.yes("yes"));
  CHECK_FALSE(row.yes("no"));
  CHECK_FALSE(row.yes("none"));
  CHECK(row.section("inner").quantity<Length>("length") == near(2.0 * m, 1e-15));
  CHECK(row.rows("list")[1].number("n") == 2.0);
  CHECK_FALSE(row.optional<Length>("none"));
  CHECK(*row.optional<Length>("bore") == near(8.0 * mm, 1e-15));
  CHECK(row.source() == "s");
  CHECK(row.basis().standing == data::Standing::memory);
}

TEST_CASE("a bad row is our mistake and says where it is") {
  const Node root = tree("rows:\n  - {id: x, bore: 8 V, yes: maybe}\n");
  const data::FlatTable file("t", root);
  const auto rows = data::Row(file.table()).rows("rows");
  CHECK_THROWS_WITH_AS(rows[0].quantity<Length>("bore"), "t:2: bore: expected a length, got '8 V'", std::logic_error);
  CHECK_THROWS_WITH_AS(rows[0].quantity<Length>("wall"), "t:2: : this row has no `wall`", std::logic_error);
  CHECK_THROWS_WITH_AS(rows[0].yes("yes"), "t:2: yes: expected true or false", std::logic_error);
  CHECK_THROWS_AS(data::Row(file.table()).rows("others"), std::logic_error);
  CHECK_THROWS_AS(data::rows("no such table", "rows"), std::logic_error);
}

TEST_CASE("every embedded table can be read, and every row with a source has a standing from the list") {
  const std::set<std::string> standings{"standard", "secondary", "derived", "measured",
                                        "memory",   "practice",  "estimate"};
  int rows = 0;
  for (const data::Table& table : data::tables()) {
    if (!table.name.starts_with("data/")) continue;
    for (const data::TableNode& node : table.nodes) {
      const std::optional<std::string> source = value_of(table, node, "source");
      if (!source) continue;
      ++rows;
      CAPTURE(table.name);
      CAPTURE(node.line);
      CHECK(source->size() >= 2);
      CHECK(standings.contains(value_of(table, node, "standing").value_or("none")));
    }
  }
  CHECK(rows > 100);
}
