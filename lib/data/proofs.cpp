#include "data/proofs.hpp"
#include "data/table.hpp"

namespace lumwright::data {
namespace {
ProofRow proof_of(const Row& row) {
  return {row.text("id"),
          row.text("name"),
          row.text("of"),
          row.text("tool"),
          row.text("where"),
          row.text("how"),
          row.yes("fire"),
          row.has("within") ? row.number("within") : 0.0,
          row.text("within_at_least"),
          row.text("label", ""),
          row.has("label") ? row.number("label_within") : 0.0,
          row.has("answers") ? row.texts("answers") : std::vector<std::string>{},
          row.basis()};
}
Row reading_row(std::string_view id) { return row_with_id("proofs", "readings", id); }
}  // namespace

const std::vector<ProofRow>& proofs() {
  static const std::vector<ProofRow> all = read_all("proofs", "readings", proof_of);
  return all;
}
Pressure paper_bends_at() {
  static const Pressure at = reading_row("paper").quantity<Pressure>("bends_at");
  return at;
}
double uneven_cells() {
  static const double share = reading_row("cells").number("uneven");
  return share;
}
double hub_share() {
  static const double share = reading_row("air_speed").number("hub");
  return share;
}
Duration gas_is_read_after() {
  static const Duration after = reading_row("gas").quantity<Duration>("after");
  return after;
}
}  // namespace lumwright::data
