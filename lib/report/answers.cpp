#include "report/answers.hpp"
#include "plan/figures.hpp"
#include "report/detail/bands.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
struct Label {
  std::string_view key, words;
};
struct Group {
  std::string_view heading;
  std::vector<Label> labels;
};
// What the owner wants to know before anything else.
constexpr Label chief[] = {{"raise.to_own_blower", "cold to the engine's own blower"},
                           {"raise.to_working", "cold to working pressure"},
                           {"draught.air_flow", "air through the engine, fire well alight"},
                           {"draught.cold_air_flow", "air through the engine, before lighting"},
                           {"heat.fan_gas", "gas at the fan"},
                           {"power.runtime", "running time on one charge"},
                           {"power.light_ups_per_charge", "light-ups on one charge"},
                           {"power.stop_reason", "why it stops"},
                           {"fit.clearance_cold", "clearance of the tube in the chimney, cold"},
                           {"fit.clearance_needed", "cold clearance that it needs"},
                           {"fit.clearance_hot", "clearance of the tube, lighting up"}};
const std::vector<Group>& groups() {
  static const std::vector<Group> all = {
      {"Air",
       {{"draught.fan_static_pressure", "suction at the fan"},
        {"draught.smokebox_depression", "suction in the smokebox"},
        {"draught.cold_fan_static_pressure", "suction at the fan, before lighting"},
        {"draught.cold_smokebox_depression", "suction in the smokebox, before lighting"},
        {"draught.natural", "draught of the hot gas by itself"},
        {"draught.fan_off_air_flow", "air through the engine when the fan is off, fire alight"},
        {"draught.fan_off_smokebox_depression", "suction in the smokebox when the fan is off"},
        {"draught.fan_speed", "speed of the fan"},
        {"draught.fan_flow", "gas through the fan, as warm as it is there"},
        {"draught.free_air_share", "share of what the fan moves in free air"},
        {"draught.tube_leak", "air that leaks in round the tube"},
        {"draught.bleed", "air let in through the bleed holes"},
        {"fan.shut_off_pressure", "suction of the shut fan, cold, rated volts"},
        {"fan.free_air_flow", "free air of the fan, cold, at rated volts"},
        {"fan.sound", "sound of the fan in free air, dB(A) at 1 m"}}},
      {"Fire and steam",
       {{"heat.chimney_gas", "gas in the chimney"},
        {"fire.power", "heat of the fire"},
        {"fire.fuel_rate", "fuel burnt"},
        {"fire.air_used", "share of the air that the fire uses"},
        {"fire.bed_lift_share", "draught across the bed, of what would lift it"},
        {"raise.fuel_burnt", "fuel burnt while steam is raised"},
        {"raise.carbon_monoxide", "carbon monoxide given off meanwhile"},
        {"raise.heat_absorbed", "heat taken up by water and metal"},
        {"raise.efficiency", "share of the fuel's heat taken up"}}},
      {"Supply",
       {{"power.fan", "power at the fan"},
        {"power.fan_voltage", "voltage at the fan"},
        {"power.pack_voltage_start", "pack voltage at the start"},
        {"power.pack_voltage_end", "pack voltage at the end"},
        {"power.pack_current_start", "pack current at the start"},
        {"power.pack_current_end", "pack current at the end"},
        {"power.charge_left_share", "charge left when it stops"},
        {"power.step_up_efficiency_start", "efficiency of the step-up at the start"},
        {"power.lead_drop", "voltage lost in the leads"},
        {"power.light_up_last", "the last light-up of a charge takes"}}},
      {"Fit",
       {{"fit.clearance_both_hot", "clearance with tube and chimney hot"},
        {"fit.leak_area_share", "gap round the tube, as a share of its bore"}}},
  };
  return all;
}
constexpr Label reasons[] = {{"stop_at", "the pack is at your stop voltage"},
                             {"collapse", "the load pulls the pack down"},
                             {"step_up_minimum", "the pack is at the step-up's least input"},
                             {"empty", "the pack is empty"}};
constexpr std::string_view loss_prefix = "draught.loss.";

std::string in_words(std::string_view reason) {
  for (const Label& row : reasons)
    if (row.key == reason) return std::string(row.words);
  return std::string(reason);
}
/// Shares read better as per cent, unless whoever made the result chose a unit.
model::Measure readable(model::Measure measure, std::string_view key) {
  const bool share = key.ends_with("_share") || key.find("efficiency") != std::string_view::npos;
  if (share && measure.unit.empty() && measure.quantity.kind == kind_of<double>) measure.unit = "%";
  return measure;
}

// "  (6.1 to 9.8 min)"; a pressure that is not always reached has no upper end
std::string band_of(const model::Result& result, const model::Measure& like, const TextStyle& style) {
  if (!result.low) return "";
  if (result.high) {
    if (result.low->quantity.si == result.high->quantity.si) return "";
    const std::string span = show_span(*result.low, *result.high, like, style, plan::figures_of(result, style.units));
    const double share = result.share.value_or(1.0);
    const std::string only = share < told_from_share ? fmt::format(", {:.0f} %", 100.0 * share) : "";
    return span.find(" to ") == std::string::npos ? "" : "  (" + span + only + ")";
  }
  const double never = 100.0 * (1.0 - result.share.value_or(1.0));
  return fmt::format("  ({} to never, in {:.0f} of 100)", show(*result.low, style, 2), never);
}
Page::Row row(std::string_view words, const model::Result& result, const TextStyle& style) {
  const model::Measure* plain = std::get_if<model::Measure>(&result.value);
  if (plain == nullptr) return {{std::string(words), in_words(std::get<std::string>(result.value))}, ""};
  const model::Measure measure = readable(*plain, result.key);
  return {{std::string(words),
           show(measure, style, plan::figures_of(result, style.units)) + band_of(result, measure, style)},
          ""};
}
std::string spaced(std::string_view key) {  // "tube_friction" -> "tube friction"
  std::string text(key);
  std::replace(text.begin(), text.end(), '_', ' ');
  return text;
}
/// The first column is as wide on the whole page as its longest label.
constexpr std::size_t label_width = 46;

template <class Labels>
std::vector<Page::Row> rows_of(const plan::Assessment& assessment, const Labels& labels, const TextStyle& style) {
  std::vector<Page::Row> rows;
  for (const Label& label : labels)
    if (const model::Result* result = plan::find_result(assessment, label.key))
      rows.push_back(row(label.words, *result, style));
  return rows;
}
bool has_trade_name(std::string_view key) {
  const auto same = [key](const Label& label) { return label.key == key; };
  return std::any_of(std::begin(chief), std::end(chief), same) ||
         std::any_of(groups().begin(), groups().end(),
                     [&](const Group& g) { return std::any_of(g.labels.begin(), g.labels.end(), same); });
}
}  // namespace

std::vector<std::pair<std::string, std::string>> named_results() {
  std::vector<std::pair<std::string, std::string>> all;
  for (const Label& label : chief) all.emplace_back(label.key, label.words);
  for (const Group& group : groups())
    for (const Label& label : group.labels) all.emplace_back(label.key, label.words);
  return all;
}
std::string words_for(std::string_view key) {
  for (const Label& label : chief)
    if (label.key == key) return std::string(label.words);
  for (const Group& group : groups())
    for (const Label& label : group.labels)
      if (label.key == key) return std::string(label.words);
  return std::string(key);
}

std::string in_page_figures(const plan::Assessment& assessment, const model::Measure& measure, const TextStyle& style,
                            int digits) {
  return show(measure, style, plan::figures_of(assessment.results, measure, style.units, digits));
}

std::string number_of(const plan::Assessment& assessment, std::string_view key, const TextStyle& style) {
  const model::Result* result = plan::find_result(assessment, key);
  const model::Measure* measure = result == nullptr ? nullptr : std::get_if<model::Measure>(&result->value);
  return measure == nullptr ? "" : show(*measure, style, plan::figures_of(*result, style.units));
}
std::string answer_text(const model::Result& result, const TextStyle& style) { return row("", result, style).cells[1]; }
std::string element_words(std::string_view key) {
  return spaced(key.starts_with(loss_prefix) ? key.substr(loss_prefix.size()) : key);
}

std::vector<NumberGroup> number_groups(const plan::Assessment& assessment, const TextStyle& style) {
  std::vector<NumberGroup> found{{"", rows_of(assessment, chief, style)}};
  for (const Group& group : groups())
    found.push_back({std::string(group.heading), rows_of(assessment, group.labels, style)});
  NumberGroup losses{"Where the suction goes", {}}, others{"Other numbers", {}};
  for (const model::Result& result : assessment.results) {
    if (result.key.starts_with(loss_prefix))
      losses.rows.push_back(row(element_words(result.key), result, style));
    else if (!has_trade_name(result.key))
      others.rows.push_back(row(result.key, result, style));
  }
  found.push_back(std::move(losses));
  found.push_back(std::move(others));
  std::erase_if(found, [](const NumberGroup& group) { return group.rows.empty(); });
  return found;
}

void write_answers(Page& page, const plan::Assessment& assessment) {
  page.gap();
  page.table(rows_of(assessment, chief, page.style()), label_width);
}

void write_numbers(Page& page, const plan::Assessment& assessment) {
  for (const NumberGroup& group : number_groups(assessment, page.style())) {
    if (group.heading.empty()) continue;  // the chief ones
    page.heading(group.heading);
    page.table(group.rows, label_width);
  }
}
}  // namespace lumwright::report
