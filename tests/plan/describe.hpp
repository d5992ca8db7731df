// Descriptions for the tests of plan/ and of the rooms above it: read from text, or an example with some keys changed.
#pragma once
#include "description/reader.hpp"
#include "plan/assess.hpp"
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace lumwright {
inline description::Build described(std::string text) {
  return description::read_build({"test.yaml", std::move(text)});
}

inline std::string example_text(const std::string& name) {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/" + name + ".yaml", std::ios::binary);
  if (!in) throw std::runtime_error("no example " + name);
  return {std::istreambuf_iterator<char>(in), {}};
}
/// The example with each `first` replaced by its `second`; throws if one does not stand in it exactly once.
inline description::Build example(const std::string& name,
                                  const std::vector<std::pair<std::string, std::string>>& changes = {}) {
  std::string text = example_text(name);
  for (const auto& [from, to] : changes) {
    const auto at = text.find(from);
    if (at == std::string::npos || text.find(from, at + 1) != std::string::npos)
      throw std::runtime_error("`" + from + "` does not stand once in " + name);
    text.replace(at, from.size(), to);
  }
  return described(std::move(text));
}
/// Grate and boiler of usual size; what a good fan draws is known no better than to a quarter.
inline const std::string gauge_1_on_coal = R"(
engine:
  boiler: { water: 350 ml, own_blower_from: 25 psi }
  grate: { length: 42 mm, width: 30 mm }
  tubes: { count: 6, bore: 8 mm, length: 140 mm }
fuel: { kind: steam coal, bed: 30 mm }
draught: { air_flow: 0.3 g/s +- 25 % }
)";
/// 300 ml, with the air given: the small engine of the worked example, any fire on its grate, anything behind it.
inline std::string small_engine(const std::string& fuel, const std::string& air_flow, const std::string& more = "") {
  return R"(
place: { air: 15 degC, barometer: 101325 Pa }
engine:
  boiler: { water: 300 ml, metal: { copper: 1.10 kg, brass: 0.25 kg, steel: 0.30 kg }, own_blower_from: 1 bar, working: 3 bar, heat_loss: 0.35 W/K }
  firebox: { heating_surface: 65 cm2, emissivity: 0.7, convection: 20 W/m2/K }
  grate: { length: 55 mm, width: 40 mm }
  tubes: { count: 7, bore: 8 mm, length: 150 mm }
  leakage: { past_bed: 25 %, smokebox: 0 % }
fuel: { )" +
         fuel + " }\ndraught: { air_flow: " + air_flow + " }\n" + more;
}
inline const std::vector<std::string>& example_names() {
  static const std::vector<std::string> names = {"tarn-beck", "high-tarn-32mm", "great-fell-5in"};
  return names;
}
/// The SI number of a result; throws if it is not there.
inline double number(const plan::Assessment& assessment, const std::string& key) {
  const model::Result* result = plan::find_result(assessment, key);
  if (result == nullptr) throw std::runtime_error("no result " + key);
  return std::get<model::Measure>(result->value).quantity.si;
}
inline plan::Verdict verdict(const plan::Assessment& assessment, const std::string& id) {
  const plan::Finding* finding = plan::find_check(assessment, id);
  if (finding == nullptr) throw std::runtime_error("no check " + id);
  return finding->verdict;
}
}  // namespace lumwright
