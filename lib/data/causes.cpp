#include "data/causes.hpp"
#include "data/table.hpp"
#include <cmath>

namespace lumwright::data {
namespace {
double judging_value(std::string_view id) { return row_with_id("causes", "judging", id).number("value"); }
CauseMove move_of(const Row& row) {
  return {row.text("key"), row.text("by") == "plus", row.text("of"), row.number("from"), row.number("to")};
}
CauseRow cause_of(const Row& row) {
  CauseRow cause{.id = row.text("id"),
                 .name = row.text("name"),
                 .odds = row.number("odds"),
                 .needs = row.text("needs", ""),
                 .fan = row.text("fan", ""),
                 .moves = {},
                 .size = row.text("size"),
                 .sure = row.text("sure"),
                 .action = row.text("do"),
                 .basis = row.basis()};
  for (const Row& move : row.rows("moves")) cause.moves.push_back(move_of(move));
  return cause;
}
}  // namespace

double CauseMove::at(double u) const { return from * std::pow(to / from, u); }

const std::vector<CauseRow>& causes() {
  static const std::vector<CauseRow> all = read_all("causes", "causes", cause_of);
  return all;
}
const Judging& judging() {
  static const Judging all{.told_apart = judging_value("told_apart"),
                           .samples = static_cast<std::size_t>(judging_value("samples")),
                           .regions = static_cast<std::size_t>(judging_value("regions")),
                           .parts_them = judging_value("parts_them"),
                           .outside = judging_value("outside"),
                           .unexplained = judging_value("unexplained"),
                           .least_samples = static_cast<std::size_t>(judging_value("least_samples")),
                           .sound_odds = section("causes", "sound").number("odds")};
  return all;
}
}  // namespace lumwright::data
