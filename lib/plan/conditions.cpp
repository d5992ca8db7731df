#include "data/cells.hpp"
#include "data/fans.hpp"
#include "data/step_ups.hpp"
#include "matter/metal.hpp"
#include "plan/cautions.hpp"
#include "quantity/errors.hpp"
#include <algorithm>

namespace lumwright {
namespace {
/// Visits the fields of a part and finds out whether the author wrote any of them.
struct AnyWritten {
  bool found = false;
  template <class T, class... Rest>
  void operator()(const Field&, const T& member, const Rest&...) {
    found = found || static_cast<bool>(member);
  }
  template <class Part>
  void section(const Field&, const Part& part) {
    Part::fields(part, *this);
  }
};
template <class Part>
bool described(const Part& part) {
  AnyWritten visitor;
  Part::fields(part, visitor);
  return visitor.found;
}

template <class Q>
std::optional<Q> value(const Assessment& a, std::string_view key) {
  const Result* result = find_result(a, key);
  const Measure* measure = result == nullptr ? nullptr : std::get_if<Measure>(&result->value);
  if (measure == nullptr || measure->quantity.kind != kind_of<Q>) return std::nullopt;
  return QuantityTraits<Q>::from_si(measure->quantity.si);
}
/// The check was judged and did not simply pass.
bool troubled(const Assessment& a, std::string_view check) {
  const Finding* finding = find_check(a, check);
  return finding != nullptr && (finding->verdict == Verdict::fail || finding->verdict == Verdict::watch);
}
bool says(const Text& text, std::string_view word) { return text && *text == word; }
bool mentions(const Text& text, std::string_view word) { return text && (*text).find(word) != std::string::npos; }

const data::CellRow* cell_of(const Build& build) {
  if (!build.supply.pack.cell) return nullptr;
  const auto& all = data::cells();
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const data::CellRow& row) { return row.id == *build.supply.pack.cell; });
  return found == all.end() ? nullptr : &*found;
}
bool of_chemistry(const Build& build, std::string_view id) {
  const data::CellRow* cell = cell_of(build);
  return cell != nullptr && !cell->bank && cell->chemistry.id == id;
}
/// The box is of this metal, or its metal is not stated and tinplate is taken.
bool box_is(const Build& build, std::string_view name) {
  if (!build.adapter.box.material) return described(build.adapter.box) && name == "tinplate";
  try {
    return metal(*build.adapter.box.material).name == name;
  } catch (const ModelError&) {
    return false;
  }
}

bool always(const Build&, const Assessment&) { return true; }
bool solid_fuel(const Build& b, const Assessment&) { return described(b.engine) || described(b.fuel); }
bool charcoal_fire(const Build& b, const Assessment& a) {
  return b.fuel.kind ? mentions(b.fuel.kind, "charcoal") || mentions(b.fuel.kind, "briquette") : solid_fuel(b, a);
}
bool fan_described(const Build& b, const Assessment&) { return described(b.fan); }
bool fan_on_fire(const Build& b, const Assessment& a) { return fan_described(b, a) && solid_fuel(b, a); }
bool boiler_described(const Build& b, const Assessment&) { return described(b.engine.boiler); }
bool adapter_described(const Build& b, const Assessment&) { return described(b.adapter); }
bool box_described(const Build& b, const Assessment&) { return described(b.adapter.box); }
bool coated_sheet(const Build& b, const Assessment&) { return box_is(b, "tinplate") || box_is(b, "steel"); }
bool silver_brazed(const Build& b, const Assessment&) { return says(b.adapter.joint, "silver braze"); }
bool soft_soldered(const Build& b, const Assessment&) { return says(b.adapter.joint, "soft solder"); }
bool clearance_short(const Build&, const Assessment& a) {
  return troubled(a, "fit.cold") || troubled(a, "fit.hot") || troubled(a, "fit.seam");
}
bool hot_gas_at_fan(const Build&, const Assessment& a) { return troubled(a, "heat.fan_gas"); }
bool fan_inside_box(const Build& b, const Assessment&) { return says(b.fan.mount, "inside"); }
bool overdrawn_fire(const Build&, const Assessment& a) {
  return troubled(a, "fire.bed_lift") || troubled(a, "fire.flux") || troubled(a, "fire.sparks");
}
/// It is known at which temperature the gauge would show own-blower pressure with air left in the boiler.
bool false_gauge_reading(const Build&, const Assessment& a) {
  const Finding* finding = find_check(a, "raise.trapped_air");
  return finding != nullptr && finding->verdict == Verdict::pass;
}
bool boils_away(const Build&, const Assessment& a) { return troubled(a, "raise.left_running"); }
bool lithium_cells(const Build& b, const Assessment&) {
  const data::CellRow* cell = cell_of(b);
  return cell != nullptr && (cell->bank.has_value() || cell->chemistry.id.starts_with("Li"));
}
bool lead_acid_cells(const Build& b, const Assessment&) { return of_chemistry(b, "lead-acid"); }
bool alkaline_cells(const Build& b, const Assessment&) { return of_chemistry(b, "alkaline"); }
bool nickel_pack(const Build& b, const Assessment&) {
  return of_chemistry(b, "NiMH") && !(b.supply.pack.series && *b.supply.pack.series == 1);
}
bool unfused_pack(const Build& b, const Assessment&) {
  const data::CellRow* cell = cell_of(b);
  const bool bank = cell != nullptr && cell->bank;  // limits its own current
  return described(b.supply.pack) && !bank && !b.supply.fuse;
}
bool step_up_described(const Build& b, const Assessment&) { return described(b.supply.step_up); }
bool step_up_runs_away(const Build& b, const Assessment&) {
  const auto& all = data::step_ups();
  return std::any_of(all.begin(), all.end(), [&](const data::StepUpRow& row) {
    return row.runs_away && says(b.supply.step_up.module, row.id);
  });
}
bool fan_over_voltage(const Build& b, const Assessment& a) {
  if (!b.fan.rated.voltage && !b.fan.voltage_most) return described(b.fan) && described(b.supply);  // nobody knows
  const auto supplied = value<Voltage>(a, "power.fan_voltage");
  const Voltage most = b.fan.voltage_most ? *b.fan.voltage_most : data::fan_voltage().highest * *b.fan.rated.voltage;
  return supplied && *supplied > most;
}

constexpr CautionCondition table[] = {
    {"always", "every build", &always},
    {"charcoal_fire", "the fuel is charcoal, or is not named", &charcoal_fire},
    {"solid_fuel", "an engine or its fuel is described", &solid_fuel},
    {"fan_on_fire", "a fan and an engine are described", &fan_on_fire},
    {"fan_described", "a fan is described", &fan_described},
    {"adapter_described", "anything of the adapter is described", &adapter_described},
    {"boiler_described", "anything of the boiler is described", &boiler_described},
    {"box_described", "a box of sheet is described", &box_described},
    {"coated_sheet", "the box is of tinplate or steel sheet", &coated_sheet},
    {"silver_brazed", "tube and flange are silver-brazed", &silver_brazed},
    {"soft_soldered", "tube and flange are soft-soldered", &soft_soldered},
    {"clearance_short", "the tube does not pass the checks of its clearance in the chimney", &clearance_short},
    {"hot_gas_at_fan", "the gas at the fan is near or above what the fan stands", &hot_gas_at_fan},
    {"fan_inside_box", "the fan sits inside the box", &fan_inside_box},
    {"overdrawn_fire", "the draught comes near to lifting the fuel, or carries pieces of char", &overdrawn_fire},
    {"false_gauge_reading",
     "it is known how cold the boiler may be when air in it makes the gauge show own-blower pressure",
     &false_gauge_reading},
    {"boils_away", "a fan left running boils half of the water away within minutes", &boils_away},
    {"lithium_cells", "the pack is of lithium cells or is a power bank", &lithium_cells},
    {"lead_acid_cells", "the pack is of lead-acid blocks", &lead_acid_cells},
    {"alkaline_cells", "the pack is of alkaline cells", &alkaline_cells},
    {"nickel_pack", "the pack is of NiMH cells, more than one or their number not stated", &nickel_pack},
    {"unfused_pack", "a pack is described and no fuse", &unfused_pack},
    {"step_up_described", "a step-up is described", &step_up_described},
    {"step_up_runs_away", "the step-up is of a kind whose output runs away at low input", &step_up_runs_away},
    {"fan_over_voltage", "the supply puts more on the fan than it stands, or nothing says what that is",
     &fan_over_voltage},
};
}  // namespace

std::span<const CautionCondition> conditions() { return table; }
}  // namespace lumwright
