#include "prove/detail/readings.hpp"
#include "plan/u_tube.hpp"
#include "quantity/text.hpp"
#include <algorithm>
#include <stdexcept>

namespace lumwright::prove {
namespace {
/// Walks the keys of a file of readings.
class Collector {
 public:
  explicit Collector(std::vector<WrittenReading>& all) : all_(all) {}
  template <class Q>
  void operator()(const description::Field& field, const description::Given<Q>& given, description::Limits) {
    if (!given) return;
    using T = QuantityTraits<Q>;
    const double half = 0.5 * (T::to_si(given.band->high) - T::to_si(given.band->low));
    at(field.key) = {true, AnyQuantity(*given), given.unit, "",
                     given.has_spread ? std::optional(0.5 * half) : std::nullopt};
  }
  void operator()(const description::Field& field, const description::Text& text, description::Allowed) {
    if (text) at(field.key) = {true, AnyQuantity(paper_number(*text)), "", *text, std::nullopt};
  }

 private:
  WrittenReading& at(std::string_view key) {
    const auto& rows = data::proofs();
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const data::ProofRow& row) { return row.id == key; });
    if (found == rows.end()) throw std::logic_error("proofs.yaml has no row for the key " + std::string(key));
    return all_[static_cast<std::size_t>(found - rows.begin())];
  }
  std::vector<WrittenReading>& all_;
};
/// The kind of each key.
class Kinds {
 public:
  std::vector<std::pair<std::string_view, Kind>> all{};
  template <class Q>
  void operator()(const description::Field& field, const description::Given<Q>&, description::Limits) {
    all.emplace_back(field.key, kind_of<Q>);
  }
  void operator()(const description::Field& field, const description::Text&, description::Allowed) {
    all.emplace_back(field.key, kind_of<Pressure>);
  }
};
}  // namespace

std::vector<WrittenReading> written_readings(const description::Proof& proof) {
  std::vector<WrittenReading> all(data::proofs().size());
  Collector collector(all);
  description::part::ProofReadings::fields(proof.readings, collector);
  return all;
}
double paper_number(const std::string& word) {
  const auto& answers = data::proofs().front().answers;
  return word == answers.front() ? 1.0 : word == answers.back() ? -1.0 : 0.0;
}
Kind kind_of_reading(const data::ProofRow& row) {
  static const auto kinds = [] {
    Kinds found;
    const description::part::ProofReadings none{};
    description::part::ProofReadings::fields(none, found);
    return found.all;
  }();
  for (const auto& [key, kind] : kinds)
    if (key == row.id) return kind;
  throw std::logic_error("no file of readings has the key " + row.id);
}
model::Measure measured(const data::ProofRow& row, double si, const model::Solved& solved) {
  const AnyQuantity value(si, kind_of_reading(row));
  if (value.kind == kind_of<Pressure>) return plan::on_u_tube(si * Pa, solved.page);
  return {value, solved.page.of(value)};
}
std::vector<Instrument> usual_instruments(const model::Solved& planned) {
  std::vector<Instrument> all;
  for (const data::ProofRow& row : data::proofs()) {
    Kind kind = kind_of_reading(row);
    if (kind.scale == Scale::point) kind.scale = Scale::ratio;  // an error in kelvin is a difference
    const model::Input* label = row.label.empty() ? nullptr : planned.inputs.find(row.label);
    const bool as_printed = label != nullptr && label->low == label->high;
    all.push_back({0.5 * row.within, 0.5 * parse_band(row.within_at_least, kind).value,
                   as_printed ? 0.5 * row.label_within : 0.0, std::nullopt});
  }
  return all;
}
}  // namespace lumwright::prove
