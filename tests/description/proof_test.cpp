#include "description/proof.hpp"
#include "data/proofs.hpp"
#include "input/source.hpp"
#include <doctest/doctest.h>
#include <sstream>
using namespace lumwright;
using namespace lumwright::description;

namespace {
std::string faults_of(const std::string& text) {
  try {
    read_proof({"proof.yaml", text});
  } catch (const input::InputError& e) {
    return e.what();
  }
  return "";
}
bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }
}  // namespace

TEST_CASE("readings of a finished unit are read in any unit, with spreads") {
  const Proof proof = read_proof({"proof.yaml",
                                  "name: first trial\nday: 3 May\nplace: { air: 14 degC }\noutlet: 244 mm2\n"
                                  "readings: { paper: drawn in, suction: 0.04 inH2O +- 10 %, current: 310 mA }\n"});
  CHECK(*proof.readings.paper == "drawn in");
  CHECK(in(*proof.readings.suction, Pa) == doctest::Approx(0.04 * 25.4 * 9.80665));  // conventional inch of water
  CHECK(proof.readings.suction.has_spread);
  CHECK(in(*proof.readings.current, A) == doctest::Approx(0.31));
  CHECK(proof.file == "proof.yaml");
}
TEST_CASE("every fault of a file of readings is told at once, with its line and the nearest name") {
  const std::string told = faults_of("readings:\n  suktion: 4 mmH2O\n  current: 4 V\n  paper: sideways\n");
  CHECK(has(told, "proof.yaml:2:3"));
  CHECK(has(told, "suction"));
  CHECK(has(told, "proof.yaml:3:14"));
  CHECK(has(told, "proof.yaml:4:10"));
  CHECK(has(told, "drawn in"));
}
TEST_CASE("a file without a reading, and a pack that rises under load, are refused") {
  CHECK(has(faults_of("day: 3 May\n"), "nothing was read"));
  CHECK(has(faults_of("readings: { pack_rest: 8.1 V, pack_loaded: 8.3 V }\n"), "falls under load"));
  CHECK(faults_of("readings: { pack_rest: 8.1 V, pack_loaded: 8.12 V +- 0.03 V }\n").empty());
}
TEST_CASE("the file to start from reads well once its `#` are taken away") {
  std::istringstream lines(new_proof());
  std::string text, line;
  while (std::getline(lines, line)) {
    const auto at = line.find_first_not_of(' ');
    const bool example = at != std::string::npos && line[at] == '#' && line.size() > at + 1 && line[at + 1] != ' ';
    if (example) line.erase(at, 1);
    if (example || line.empty() || line[at] != '#') text += line + "\n";
  }
  const Proof proof = read_proof({"proof.yaml", text});
  CHECK(proof.outlet);
  CHECK(proof.readings.gas);
  CHECK(proof.readings.paper);
}
