#include "data/cells.hpp"
#include "data/fans.hpp"
#include "data/kindling.hpp"
#include "data/step_ups.hpp"
#include "matter/metal.hpp"
#include "plan/cautions.hpp"
#include "quantity/errors.hpp"
#include <algorithm>

namespace lumwright::plan {
namespace {
/// Visits the fields of a part and finds out whether the author wrote any of them.
struct AnyWritten {
  bool found = false;
  template <class T, class... Rest>
  void operator()(const description::Field&, const T& member, const Rest&...) {
    found = found || static_cast<bool>(member);
  }
  template <class Part>
  void section(const description::Field&, const Part& part) {
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
  const model::Result* result = find_result(a, key);
  const model::Measure* measure = result == nullptr ? nullptr : std::get_if<model::Measure>(&result->value);
  if (measure == nullptr || measure->quantity.kind != kind_of<Q>) return std::nullopt;
  return QuantityTraits<Q>::from_si(measure->quantity.si);
}
/// The check was judged and passes; one that is missing or unknown has not passed.
bool passes(const Assessment& a, std::string_view check) {
  const Finding* finding = find_check(a, check);
  return finding != nullptr && finding->verdict == Verdict::pass;
}
bool says(const description::Text& text, std::string_view word) { return text && *text == word; }
bool known_and_not(const description::Text& text, std::string_view word) { return text && *text != word; }

const data::CellRow* cell_of(const description::Build& build) {
  if (!build.supply.pack.cell) return nullptr;
  const auto& all = data::cells();
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const data::CellRow& row) { return row.id == *build.supply.pack.cell; });
  return found == all.end() ? nullptr : &*found;
}
/// Cells of this chemistry, or nobody knows of which.
bool may_be_of(const description::Build& build, std::string_view chemistry) {
  const data::CellRow* cell = cell_of(build);
  return cell == nullptr || (!cell->bank && cell->chemistry.id.starts_with(chemistry));
}
/// What the pack gives by its name; nothing where the description does not say.
std::optional<Voltage> nominal(const description::Build& build) {
  const data::CellRow* cell = cell_of(build);
  if (cell == nullptr) return std::nullopt;
  if (cell->bank) return cell->bank->output;
  if (!build.supply.pack.series) return std::nullopt;
  return static_cast<double>(*build.supply.pack.series * cell->cells_inside) * cell->chemistry.nominal;
}
bool is_metal(const description::Text& written, std::string_view name) {
  try {
    return written && matter::metal(*written).name == name;
  } catch (const ModelError&) {
    return false;
  }
}
bool metal_known(const description::Text& written) {
  try {
    return written && !matter::metal(*written).name.empty();
  } catch (const ModelError&) {
    return false;
  }
}

// What is not known counts as present: a condition is false only where the description, or a check that passes on
// written values, says that the thing is absent.
bool always(const description::Build&, const Assessment&) { return true; }
bool tinplate_box(const description::Build& b, const Assessment&) {
  const description::Text& material = b.adapter.box.material;
  return !metal_known(material) || is_metal(material, "tinplate");
}
/// A fuel that is not lit from cold, or nobody says what is burnt.
bool coal_burnt(const description::Build& b, const Assessment&) {
  return !b.fuel.kind || data::needs_bright_charcoal(*b.fuel.kind);
}
bool silver_brazed(const description::Build& b, const Assessment&) {
  return !known_and_not(b.adapter.joint, "silver braze");
}
/// Seams and corners of a box are soldered too, whatever holds the tube; aluminium alone takes no soft solder.
bool soft_soldered(const description::Build& b, const Assessment&) {
  return !known_and_not(b.adapter.joint, "soft solder") || !is_metal(b.adapter.box.material, "aluminium");
}
bool clearance_short(const description::Build&, const Assessment& a) {
  const bool seam = find_check(a, "fit.seam") == nullptr || passes(a, "fit.seam");
  return !passes(a, "fit.cold") || !passes(a, "fit.hot") || !seam;
}
bool hot_gas_at_fan(const description::Build& b, const Assessment& a) {
  return !b.fan.gas_limit || !passes(a, "heat.fan_gas");
}
bool fan_inside_box(const description::Build& b, const Assessment&) { return !known_and_not(b.fan.mount, "inside"); }
bool lithium_cells(const description::Build& b, const Assessment&) { return may_be_of(b, "Li"); }
bool lead_acid_cells(const description::Build& b, const Assessment&) { return may_be_of(b, "lead-acid"); }
bool alkaline_cells(const description::Build& b, const Assessment&) { return may_be_of(b, "alkaline"); }
bool nickel_cells(const description::Build& b, const Assessment&) { return may_be_of(b, "NiMH"); }
bool power_bank(const description::Build& b, const Assessment&) {
  const data::CellRow* cell = cell_of(b);
  return cell == nullptr || cell->bank.has_value();
}
bool unfused_pack(const description::Build& b, const Assessment&) {
  const data::CellRow* cell = cell_of(b);
  const bool limits_itself = cell != nullptr && cell->bank;
  return !limits_itself && !b.supply.fuse;
}
/// A pack whose name gives the fan nearly its rating has nothing to step up.
bool step_up_possible(const description::Build& b, const Assessment&) {
  if (described(b.supply.step_up)) return true;
  const auto pack = nominal(b);
  return !pack || !b.fan.rated.voltage || *pack < 0.85 * *b.fan.rated.voltage;
}
bool step_up_runs_away(const description::Build& b, const Assessment& a) {
  const auto& all = data::step_ups();
  const bool steady = std::any_of(all.begin(), all.end(), [&](const data::StepUpRow& row) {
    return !row.runs_away && says(b.supply.step_up.module, row.id);
  });
  return step_up_possible(b, a) && !steady;
}
bool fan_over_voltage(const description::Build& b, const Assessment& a) {
  const auto supplied = value<Voltage>(a, "power.fan_voltage");
  const Voltage most = b.fan.voltage_most    ? *b.fan.voltage_most
                       : b.fan.rated.voltage ? data::fan_voltage().highest * *b.fan.rated.voltage
                                             : Voltage{};  // nobody knows: it counts as passed
  return !supplied || *supplied > most;
}

constexpr CautionCondition table[] = {
    {"always", "every build", &always},
    {"tinplate_box", "the box is of tinplate, or its metal is not known", &tinplate_box},
    {"coal_burnt", "the fuel is coal, anthracite or coke, or not known", &coal_burnt},
    {"silver_brazed", "tube and flange are silver-brazed, or the joint is not known", &silver_brazed},
    {"soft_soldered", "tube and flange, or the box, are soft-soldered or may be", &soft_soldered},
    {"clearance_short", "the tube does not pass the checks of its clearance in the chimney", &clearance_short},
    {"hot_gas_at_fan", "not known to be well below what the fan is written to stand", &hot_gas_at_fan},
    {"fan_inside_box", "the fan is not known to sit outside the box", &fan_inside_box},
    {"lithium_cells", "the pack is of lithium cells, or its cells are not known", &lithium_cells},
    {"power_bank", "the pack is a power bank, or not known", &power_bank},
    {"lead_acid_cells", "the pack is of lead-acid blocks, or its cells are not known", &lead_acid_cells},
    {"alkaline_cells", "the pack is of alkaline cells, or its cells are not known", &alkaline_cells},
    {"nickel_cells", "the pack is of NiMH cells, or its cells are not known", &nickel_cells},
    {"unfused_pack", "no fuse is written, and the pack is not known to limit its own current", &unfused_pack},
    {"step_up_possible", "a step-up is described, or the pack is not known to drive the fan by itself",
     &step_up_possible},
    {"step_up_runs_away", "a step-up is possible and not known to be of a steady kind", &step_up_runs_away},
    {"fan_over_voltage", "the supply is not known to stay within what the fan stands", &fan_over_voltage},
};
}  // namespace

std::span<const CautionCondition> conditions() { return table; }
}  // namespace lumwright::plan
