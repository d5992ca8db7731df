// Every row of lib/data/held.yaml against the model that it judges. LUMWRIGHT_UPDATE=1 writes `ours`, and the table of
// DEVELOPERS.md: read the difference, build again.
#include "data/held.hpp"
#include "data/table.hpp"
#include "held/held.hpp"
#include "report/held.hpp"
#include <cmath>
#include <cstdlib>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <fstream>
#include <iterator>
#include <set>
#include <stdexcept>

namespace lumwright::held {
Band<double> usual(std::string_view key) {
  for (const data::Row& row : data::rows("typical", "values"))
    if (row.text("key") == key) {
      const Band<double> band = row.band<double>("band");
      return {row.number("value"), band.low, band.high};
    }
  throw std::runtime_error("no usual value " + std::string(key));
}
double power_through(const std::vector<double>& x, const std::vector<double>& y) {
  double sx = 0, sy = 0, sxx = 0, sxy = 0;
  const double n = static_cast<double>(x.size());
  for (std::size_t i = 0; i < x.size(); ++i) {
    const double a = std::log(x[i]), b = std::log(y[i]);
    sx += a, sy += b, sxx += a * a, sxy += a * b;
  }
  return (n * sxy - sx * sy) / (n * sxx - sx * sx);
}
}  // namespace lumwright::held

using namespace lumwright;

namespace {
const held::Cases& cases() {
  static const held::Cases all = [] {
    held::Cases out;
    for (const auto* some : {&held::bed_cases(), &held::draught_cases(), &held::fire_cases(), &held::boiler_cases(),
                             &held::power_cases(), &held::whole_cases()})
      out.insert(some->begin(), some->end());
    return out;
  }();
  return all;
}
std::string text_of(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  REQUIRE_MESSAGE(in.good(), path);
  return {std::istreambuf_iterator<char>(in), {}};
}
bool updating() { return std::getenv("LUMWRIGHT_UPDATE") != nullptr; }
/// Rounding of what the table is written with, and of the sampled ones on another machine.
bool same(double a, double b) { return std::abs(a - b) <= 0.006 * std::max(std::abs(a), std::abs(b)) + 1e-9; }
std::string written(double value) { return fmt::format("{:.4g}", value); }
void write_ours(const std::string& id, const Band<double>& ours) {
  const std::string path = std::string(SOURCE_DIR) + "/lib/data/held.yaml";
  std::string text = text_of(path);
  const auto row = text.find("- {id: " + id + ",");
  REQUIRE(row != std::string::npos);
  const auto from = text.find("ours: [", row), to = text.find(']', from);
  text.replace(from, to - from,
               fmt::format("ours: [{}, {}, {}", written(ours.low), written(ours.value), written(ours.high)));
  std::ofstream(path, std::ios::binary) << text;
}
}  // namespace

TEST_CASE("every measured row is reckoned by the model that it judges, and the table says what came out") {
  std::set<std::string> seen;
  for (const data::HeldRow& row : data::held_rows()) {
    CAPTURE(row.id);
    CHECK(seen.insert(row.id).second);
    REQUIRE(cases().contains(row.id));
    const held::Reckoned reckoned = cases().at(row.id)();
    if (reckoned.measured) {  // made of a table of trials
      CHECK(std::abs(*row.low - reckoned.measured->first) <= 0.02 * std::abs(*row.low) + 0.01);
      CHECK(std::abs(*row.high - reckoned.measured->second) <= 0.02 * std::abs(*row.high) + 0.01);
    }
    if (updating()) {
      write_ours(row.id, reckoned.ours);
      continue;
    }
    CHECK(same(reckoned.ours.value, row.ours.value));
    CHECK(same(reckoned.ours.low, row.ours.low));
    CHECK(same(reckoned.ours.high, row.ours.high));
  }
  CHECK(seen.size() == cases().size());
}

TEST_CASE("a row that our spread does not reach stands with its reason, and no other row has one") {
  for (const data::HeldRow& row : data::held_rows()) {
    CAPTURE(row.id);
    const bool missed = data::held(row) == data::Held::missed && !row.made_of;
    CHECK(missed == !row.why.empty());
    CHECK((row.low || row.high));
    if (row.made_of) CHECK(data::held(row) != data::Held::missed);
  }
}

TEST_CASE("the table of DEVELOPERS.md is made of the rows") {
  const std::string path = std::string(SOURCE_DIR) + "/DEVELOPERS.md";
  const std::string head = "## How far it was held against measurement\n\n", foot = "\n<!-- made by tests/held -->\n";
  std::string text = text_of(path);
  const auto from = text.find(head), to = text.find(foot);
  REQUIRE(from != std::string::npos);
  REQUIRE(to != std::string::npos);
  const std::string table = report::held_markdown(3, description::FrontEnd::terminal);
  if (updating()) {
    text.replace(from + head.size(), to - from - head.size(), table);
    std::ofstream(path, std::ios::binary) << text;
    return;
  }
  CHECK(text.substr(from + head.size(), to - from - head.size()) == table);
}
