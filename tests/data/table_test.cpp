#include "data/table.hpp"
#include "data/embedded.hpp"
#include "near.hpp"
#include <functional>
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
const std::string file = "t";
// Every row of a table, at any depth: a map that has a source.
void each_row(const Node& node, const std::string& table,
              const std::function<void(const Node&, const std::string&)>& visit) {
  if (node.kind == Node::Kind::map && child(node, "source") != nullptr) visit(node, table);
  for (const Node& inner : node.children) each_row(inner, table, visit);
}
}  // namespace

TEST_CASE("a row hands out what it holds, in the type that is asked for") {
  const Node root = tree(
      "rows:\n"
      "  - {id: x, bore: 8 mm, share: 35 %, band: 7..9 mm, ocv: [1.2 V, 1.3 V], soc: [0, 1], words: [a, b c],\n"
      "     table: [[1, 2], [3, 4]], yes: true, no: false, inner: {length: 2 m}, list: [{n: 1}, {n: 2}], source: s, "
      "standing: memory}\n");
  const auto rows = data::rows(file, root, "rows");
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
  const auto rows = data::rows(file, root, "rows");
  CHECK_THROWS_WITH_AS(rows[0].quantity<Length>("bore"), "t:2: bore: expected a length, got '8 V'", std::logic_error);
  CHECK_THROWS_WITH_AS(rows[0].quantity<Length>("wall"), "t:2: : this row has no `wall`", std::logic_error);
  CHECK_THROWS_WITH_AS(rows[0].yes("yes"), "t:2: yes: expected true or false", std::logic_error);
  CHECK_THROWS_AS(data::rows(file, root, "others"), std::logic_error);
  CHECK_THROWS_AS(data::rows("no such table", "rows"), std::logic_error);
}

TEST_CASE("every embedded table can be read, and every row with a source has a standing from the list") {
  const std::set<std::string> standings{"standard", "secondary", "derived", "measured",
                                        "memory",   "practice",  "estimate"};
  int rows = 0;
  for (const data::EmbeddedFile& embedded : data::embedded_files()) {
    if (!embedded.name.starts_with("data/")) continue;
    std::vector<Fault> faults;
    const Node root = read_yaml({embedded.name, embedded.text}, faults, 1024 * 1024);
    CHECK(faults.empty());
    each_row(root, embedded.name, [&](const Node& row, const std::string& table) {
      ++rows;
      CAPTURE(table);
      CAPTURE(row.at.line);
      CHECK(child(row, "source")->text.size() >= 2);
      const Node* standing = child(row, "standing");
      REQUIRE(standing != nullptr);
      CHECK(standings.contains(standing->text));
    });
  }
  CHECK(rows > 100);
}
