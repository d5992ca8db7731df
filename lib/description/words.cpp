#include "description/words.hpp"
#include "data/cells.hpp"
#include "data/fan_label.hpp"
#include "data/fuels.hpp"
#include "data/kindling.hpp"
#include "data/metals.hpp"
#include "data/step_ups.hpp"
#include <algorithm>

namespace lumwright::description {
std::vector<std::string> metal_words() {
  std::vector<std::string> out;
  for (const bool also : {false, true})  // the plain words first
    for (const data::MetalRow& row : data::metals()) {
      if (!row.expansion) continue;  // a filler metal: nothing is made of it
      if (also)
        out.insert(out.end(), row.also.begin(), row.also.end());
      else
        out.push_back(row.name);
    }
  return out;
}
std::vector<std::string> fuel_words() {
  std::vector<std::string> out;
  for (const data::FuelRow& row : data::fuels()) out.push_back(row.name);
  return out;
}
std::vector<std::string> start_words() {
  std::vector<std::string> out;
  for (const data::KindlingRow& row : data::kindlings())
    if (std::find(out.begin(), out.end(), row.on) == out.end()) out.push_back(row.on);
  return out;
}
std::vector<std::string> cell_words() {
  std::vector<std::string> out;
  for (const data::CellRow& row : data::cells()) out.push_back(row.id);
  return out;
}
std::vector<std::string> condition_words() {
  std::vector<std::string> out;
  for (const data::ConditionRow& row : data::conditions()) out.push_back(row.id);
  return out;
}
std::vector<std::string> module_words() {
  std::vector<std::string> out;
  for (const data::StepUpRow& row : data::step_ups()) out.push_back(row.id);
  return out;
}
std::vector<std::string> fan_words() { return {"axial", "centrifugal"}; }
std::vector<std::string> curve_words() {
  std::vector<std::string> out;
  for (const data::CurveSpread& row : data::curve_spreads()) out.push_back(row.id);
  return out;
}
std::vector<std::string> current_words() { return {"typical", "maximum"}; }
std::vector<std::string> mount_words() { return {"outside", "inside"}; }
std::vector<std::string> shape_words() { return {"round", "square"}; }
std::vector<std::string> yes_words() { return {"yes", "no"}; }
std::vector<std::string> inlet_words() { return {"square", "projecting", "rounded"}; }
std::vector<std::string> joint_words() { return {"silver braze", "soft solder", "screwed", "press fit"}; }
std::vector<std::string> control_words() { return {"none", "chopped supply", "lower output", "series regulator"}; }
std::vector<std::string> switch_words() {
  std::vector<std::string> out{"none"};
  for (const data::SeriesResistanceRow& row : data::series_resistances())
    if (row.id.ends_with(" switch")) out.push_back(row.id);
  return out;
}
std::vector<std::string> polarity_words() {
  std::vector<std::string> out{"none", "plug that fits one way"};
  for (const data::PolarityGuardRow& row : data::polarity_guards()) out.push_back(row.id);
  return out;
}
std::vector<std::string> guard_words() { return {"none", "wire rings", "drilled plate"}; }
}  // namespace lumwright::description
