#include "plan/cautions.hpp"
#include "data/table.hpp"
#include "plan/detail/rules.hpp"
#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::plan {
namespace {
struct Entry {
  Caution caution;
  const CautionCondition* when;
  int rank;          // smallest first
  std::string adds;  // a reckoning put behind the text, by name
};
constexpr std::array<std::string_view, 5> parts = {"everything", "steam", "air", "pack", "making"};

const CautionCondition& condition_called(std::string_view file, const std::string& name) {
  const auto all = conditions();
  const auto found = std::find_if(all.begin(), all.end(), [&](const CautionCondition& c) { return c.name == name; });
  if (found == all.end()) throw std::logic_error(std::string(file) + ": no condition is called `" + name + "`");
  return *found;
}
Entry read_entry(const data::Row& row) {
  Entry entry{{row.text("id"), row.text("title"), row.text("text"), row.text("authority"), row.text("near"),
               row.texts("steps"), row.text("brief", ""), row.text("when") == "always"},
              &condition_called(row.file(), row.text("when")),
              0,
              row.text("adds", "")};
  const auto at = std::find(parts.begin(), parts.end(), entry.caution.near);
  entry.rank = row.has("head") ? 0 : 1 + static_cast<int>(at - parts.begin());
  return entry;
}
/// Those whose words head every output first, then part by part, in the order of their files.
const std::vector<Entry>& entries() {
  static const std::vector<Entry> all = [] {
    std::vector<Entry> found;
    for (const data::Row& row : data::documents("cautions")) found.push_back(read_entry(row));
    std::stable_sort(found.begin(), found.end(), [](const Entry& a, const Entry& b) { return a.rank < b.rank; });
    return found;
  }();
  return all;
}
}  // namespace

std::optional<std::string> garage_reckoning(const Assessment& so_far) {
  const model::Result* result = find_result(so_far, "raise.carbon_monoxide");
  const model::Measure* made = result == nullptr ? nullptr : std::get_if<model::Measure>(&result->value);
  const bool to_steam = find_result(so_far, "raise.to_own_blower") || find_result(so_far, "raise.to_working");
  if (made == nullptr || !to_steam) return std::nullopt;  // of a fire that was left half-way it would be too little
  const Rule garage = rule<Volume>("rule.garage"), most = rule<Density>("rule.carbon_monoxide");
  const double mg_per_m3 = 1e6 * made->quantity.si / garage.input.value.si;
  return fmt::format(
      "Worked out for this engine: one lighting-up gives about {} of it, in a shut garage of {} that is {} mg/m3; at "
      "most {:.0f} mg/m3 may be breathed for a quarter of an hour, 30 for an hour.",
      format(made->quantity, "g", 2), format(garage.input.value, "m3", 2), format(AnyQuantity(mg_per_m3), "", 2),
      1e6 * most.input.value.si);
}

std::vector<Caution> cautions_for(const description::Build& build, const Assessment& so_far) {
  std::vector<Caution> apply;
  for (const Entry& entry : entries())
    if (entry.when->holds(build, so_far)) {
      apply.push_back(entry.caution);
      if (entry.adds == "garage")
        if (const auto words = garage_reckoning(so_far)) apply.back().text += " " + *words;
    }
  return apply;
}
std::vector<Caution> cautions_called(const std::set<std::string>& ids) {
  std::vector<Caution> called;
  for (const Entry& entry : entries())
    if (ids.contains(entry.caution.id)) called.push_back(entry.caution);
  return called;
}
}  // namespace lumwright::plan
