#include "model/inputs.hpp"
#include "data/table.hpp"
#include "quantity/format.hpp"
#include "quantity/text.hpp"
#include <algorithm>
#include <mutex>
#include <stdexcept>

namespace lumwright::model {
namespace {
using TypicalRows = std::map<std::string, data::Row, std::less<>>;
const TypicalRows& typical_rows() {
  static const TypicalRows rows = [] {
    TypicalRows found;
    for (const data::Row& row : data::rows("typical", "values")) found.emplace(row.text("key"), row);
    return found;
  }();
  return rows;
}
const data::Row& typical_row(std::string_view key) {
  const auto found = typical_rows().find(key);
  if (found == typical_rows().end()) throw std::logic_error("no typical value for " + std::string(key));
  return found->second;
}
// What the table says of a key, read once: many samples ask for it many times.
Input typical_input(std::string_view key, Kind kind) {
  static std::mutex guard;
  static std::map<std::string, Input, std::less<>> known;
  const std::lock_guard lock(guard);
  if (const auto found = known.find(key); found != known.end() && found->second.value.kind == kind)
    return found->second;
  const data::Row& row = typical_row(key);
  const WrittenBand value = parse_band(row.text("value"), kind), band = parse_band(row.text("band"), kind);
  Input input{AnyQuantity(value.value, kind), band.low, band.high, value.unit, Origin::assumed};
  return known.insert_or_assign(std::string(key), input).first->second;
}
std::string band_text(const Input& input, const std::string& unit) {
  if (!(input.low < input.high)) return "";
  const std::string low = format({input.low, input.value.kind}, unit),
                    high = format({input.high, input.value.kind}, unit);
  return low == high ? "" : low + " .. " + high;  // two ends that read alike are no band
}
std::string own_unit(const Input& input) { return choose_unit(input.value, input.unit, UnitSystem::as_written); }
}  // namespace

Assumed because(std::string why, data::Basis basis) { return {"", "", "", std::move(why), std::move(basis)}; }
const Input* Inputs::find(std::string_view key) const {
  const auto found = all_.find(key);
  return found == all_.end() ? nullptr : &found->second;
}
double Inputs::record(std::string_view key, Input input) {
  if (key.empty()) throw std::logic_error("a value is asked for that has no key: its part stands in no description");
  if (const Input* earlier = find(key)) return earlier->value.si;  // one value for a key in one solve
  if (tuning_ != nullptr) {
    if (const auto tuned = tuning_->values.find(key); tuned != tuning_->values.end()) {
      const TunedValue& v = tuned->second;
      input = {v.value, v.low, v.high, v.unit, Origin::tuned};
      note({std::string(key), format(v.value, own_unit(input), 4), band_text(input, own_unit(input)),
            "tuned from measured lighting-ups", data::Basis{data::Standing::measured, tuning_->file}});
    }
  }
  if (draw_) input.value.si = draw_(key, input);
  return all_.emplace(std::string(key), std::move(input)).first->second.value.si;
}
double Inputs::assume(std::string_view key, Input input, Assumed assumed) {
  if (const Input* earlier = find(key)) return earlier->value.si;
  if (one_of_many()) return record(key, std::move(input));
  assumed.key = std::string(key);
  if (assumed.value.empty()) assumed.value = format(input.value, own_unit(input));
  if (assumed.band.empty()) assumed.band = band_text(input, own_unit(input));
  const double si = record(key, std::move(input));  // may note the key as tuned
  note(std::move(assumed));
  return si;
}
double Inputs::typical(std::string_view key, Kind kind) {
  const Input input = typical_input(key, kind);
  if (one_of_many()) return record(key, input);
  const data::Row& row = typical_row(key);
  return assume(key, input, {"", row.text("value"), row.text("band"), row.text("why"), row.basis()});
}
std::string Inputs::usual(const description::Text& given) { return given ? *given : usual_word(given.key.text()); }
std::string Inputs::usual_word(std::string_view key) {
  const data::Row& row = typical_row(key);
  note({std::string(key), row.text("word"), "", row.text("why"), row.basis()});
  return row.text("word");
}
int Inputs::count(const description::Count& given, int otherwise, std::string_view why) {
  if (given) return *given;
  note({std::string(given.key.text()), std::to_string(otherwise), "", std::string(why),
        data::Basis{data::Standing::practice, "common practice, no source"}});
  return otherwise;
}
std::vector<Assumed> Inputs::assumed(UnitSystem units, const description::PageUnits& page) const {
  std::vector<Assumed> converted = assumed_;
  for (Assumed& one : converted) {
    const Input* input = find(one.key);
    if (input == nullptr) continue;
    const std::string of = page.of(input->value);
    const std::string unit = choose_unit(input->value, of.empty() ? input->unit : of, units);
    if (units == UnitSystem::as_written && (of.empty() || unit == input->unit)) continue;  // as the table has it
    one.value = format(input->value, unit);
    one.band = band_text(*input, unit);
  }
  return converted;
}
void Inputs::note(Assumed assumed) {
  if (one_of_many()) return;
  const auto same = [&](const Assumed& one) { return one.key == assumed.key; };
  if (std::none_of(assumed_.begin(), assumed_.end(), same)) assumed_.push_back(std::move(assumed));
}
}  // namespace lumwright::model
