#include "data/moves.hpp"
#include "data/table.hpp"
#include <algorithm>

namespace lumwright::data {
namespace {
int direction(const Row& row) {
  const std::string toward = row.text("toward", "");
  return toward.empty() ? 0 : toward == "more" ? 1 : -1;
}
MoveRow read_move(const Row& row) {
  MoveRow move{.id = row.text("id"),
               .key = row.text("key", ""),
               .says = row.text("says"),
               .toward = direction(row),
               .step = row.text("step", ""),
               .inch = row.text("inch", ""),
               .most = row.has("most") ? static_cast<int>(row.number("most")) : 0,
               .to = row.has("to") ? row.texts("to") : std::vector<std::string>(),
               .at = row.text("at", ""),
               .along = {},
               .with = {},
               .table = row.text("table", ""),
               .clears = row.texts("clears"),
               .source = row.source(),
               .standing = row.standing()};
  if (row.has("also"))
    for (const Row& one : row.rows("also")) move.along.push_back({one.text("key"), one.number("times")});
  if (row.has("with"))
    for (const Row& one : row.rows("with"))
      move.with.push_back({one.text("key"), one.text("value"), one.text("inch", "")});
  return move;
}
std::vector<std::string> ids_of(std::string_view list) {
  return read_all("moves", list, [](const Row& row) { return row.text("id"); });
}
}  // namespace

const std::vector<MoveRow>& moves() {
  static const std::vector<MoveRow> all = read_all("moves", "moves", read_move);
  return all;
}
bool is_habit(std::string_view check) {
  static const std::vector<std::string> all = ids_of("habits");
  return std::find(all.begin(), all.end(), check) != all.end();
}
bool never_worse(std::string_view check) {
  static const std::vector<std::string> all = ids_of("never_worse");
  return std::find(all.begin(), all.end(), check) != all.end();
}
}  // namespace lumwright::data
