#include "data/held.hpp"
#include "data/table.hpp"
#include <cmath>

namespace lumwright::data {
namespace {
HeldRow read(const Row& row) {
  HeldRow out{.id = row.text("id"),
              .part = row.text("part"),
              .what = row.text("what"),
              .where = row.text("where"),
              .unit = row.text("unit"),
              .low = row.optional<double>("at_least"),
              .high = row.optional<double>("at_most"),
              .read_within = row.has("read_within") ? row.number("read_within") : 0.0,
              .ours = row.triple<double>("ours"),
              .made_of = row.yes("made_of"),
              .why = row.text("why", ""),
              .seen = row.text("seen"),
              .basis = row.basis()};
  if (!row.has("measured")) return out;
  const std::vector<double> measured = row.numbers("measured");
  out.low = measured.front();
  out.high = measured.back();
  return out;
}
/// The end of what was measured beyond which `value` lies, widened by how finely it was read; nothing inside.
std::optional<double> end_beyond(const HeldRow& row, double value) {
  constexpr double rounding = 0.005;  // of what the row is written with
  const auto slack = [&](double end) { return (row.read_within + rounding) * std::abs(end); };
  if (row.low && value < *row.low - slack(*row.low)) return row.low;
  if (row.high && value > *row.high + slack(*row.high)) return row.high;
  return std::nullopt;
}
}  // namespace

const std::vector<HeldRow>& held_rows() {
  static const std::vector<HeldRow> all = read_all("held", "held", read);
  return all;
}

Held held(const HeldRow& row) {
  const std::optional<double> end = end_beyond(row, row.ours.value);
  if (!end) return Held::inside;
  const double nearest = *end > row.ours.value ? row.ours.high : row.ours.low;
  const std::optional<double> still = end_beyond(row, nearest);
  return !still || (*still > nearest) != (*end > row.ours.value) ? Held::reached : Held::missed;
}

std::optional<double> apart(const HeldRow& row) {
  const std::optional<double> end = end_beyond(row, row.ours.value);
  if (!end || *end == 0.0) return std::nullopt;
  return (row.ours.value - *end) / std::abs(*end);
}

const std::vector<NeverMeasured>& never_measured() {
  static const std::vector<NeverMeasured> all = read_all("held", "never", [](const Row& row) {
    return NeverMeasured{row.text("id"), row.text("what"), row.text("meanwhile"), row.text("afternoon")};
  });
  return all;
}
}  // namespace lumwright::data
