#include "data/charging.hpp"
#include "data/fan_sound.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_light_ups.hpp"
#include "model/solved_supply.hpp"
#include "plan/days.hpp"
#include "plan/quiet.hpp"
#include "power/charging.hpp"
#include "report/answers.hpp"
#include "report/detail/day_steps.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
constexpr int kept_in_hand = 2;  // light-ups: one for today, one for a fire that goes out

std::string when_to_charge(int left) {
  if (left < 1) return "now: it does not last for one lighting-up";
  if (left <= kept_in_hand) return "before you go: there is nothing in hand for a fire that goes out";
  return fmt::format("after {} lighting-up{}, with two in hand for a fire that goes out", left - kept_in_hand,
                     left - kept_in_hand == 1 ? "" : "s");
}
std::string how_to_charge(const DayOf& day, const data::ChargingRow& row) {
  const power::PackInput& pack = day.solved.supply->pack_input;
  const std::string cells =
      fmt::format("{}; between {} and {}", row.how, format(row.coldest, "degC"), format(row.hottest, "degC"));
  const auto& gives = day.solved.build.supply.charger.current;
  if (!gives) return cells + ". Write `supply.charger.current`, as printed on it, and the hours are told";
  const Charge full = pack.capacity * static_cast<double>(pack.parallel);
  const Current current = gives.band->value;
  const auto takes = [&](double missing) {
    return format(power::charging_time(row, {.full = full, .missing = missing, .charger = current}), "h", 2);
  };
  return fmt::format("{}. From empty {}, from half {}", cells, takes(1.0), takes(0.5));
}
}  // namespace

DaySection about_the_pack(const DayOf& day) {
  DaySection section{"The pack", {}};
  if (!day.solved.supply) {
    if (day.solved.build.supply.pack.cell) section.rows.push_back({"left", why_unknown(day.solved.supply)});
    return section;
  }
  if (!day.solved.light_ups) return section;
  const model::SolvedSupply& s = *day.solved.supply;
  const data::ChargingRow& row = data::charging(s.pack_input.cell.chemistry.id);
  const model::Result* count = plan::find_result(day.assessment, "power.light_ups_per_charge");
  section.rows.push_back({"charged", percent(s.pack_input.charged, 2)});
  section.rows.push_back({"left", answer_text(*count, day.style) + " lighting-ups are in it today"});
  if (!row.never.empty()) {
    section.rows.push_back({"renew", row.never + "; put new ones in " + when_to_charge(day.solved.light_ups->count)});
    return section;
  }
  section.rows.push_back({"charge", when_to_charge(day.solved.light_ups->count)});
  section.rows.push_back({"how", how_to_charge(day, row)});
  if (s.module && !s.pack_input.cell.bank)
    section.rows.push_back(
        {"after", fmt::format("take the step-up off the pack: it takes {} for itself and empties it {}",
                              format(s.module->quiescent, "mA"),
                              plan::after_days(power::emptied_in(s.pack.full, s.module->quiescent)))});
  return section;
}

DaySection about_the_noise(const DayOf& day) {
  DaySection section{"How loud", {}};
  const model::Result* level = plan::find_result(day.assessment, "fan.sound");
  if (level == nullptr) return section;
  section.rows.push_back(
      {"now", answer_text(*level, day.style) +
                  " dB(A) at 1 m, in free air; a box round it, and the gas that it pulls, change that"});
  const auto quiet = plan::quietest(day.solved);
  if (!quiet || !day.solved.build.want.steam_within) return section;
  const double halved = data::fan_sound_law(day.solved.fan->sounds->kind).slower * std::log10(2.0);
  section.rows.push_back(
      {"quieter",
       fmt::format(
           "{} at the fan still gives steam in {}, with about {:.0f} dB(A); half of the speed takes off {:.0f} dB",
           format(quiet->voltage, "V", 2),
           in_page_figures(day.assessment, {AnyQuantity(quiet->takes), ""}, day.style, 2), quiet->sound, halved)});
  return section;
}
}  // namespace lumwright::report
