#include "quantity/format.hpp"
#include "quantity/text.hpp"
#include "tune/detail/parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::tune {
namespace {
/// The description with nothing written for the factors: their usual values and bands.
model::Inputs usual_inputs(description::Build build) {
  build.fuel.catches_in = {};
  build.fuel.voidage = {};
  build.engine.leakage.smokebox = {};
  return model::solve(build).inputs;
}
}  // namespace

std::vector<Factor> factors_of(const LightingUp& model, const model::Tuning* pooled) {
  const model::Inputs usual = usual_inputs(model.build());
  std::vector<Factor> found;
  for (const data::TuneFactor& row : data::tune_factors()) {
    const model::Input* input = model.inputs().find(row.key);
    if (input == nullptr || !(input->value.si > 0.0)) continue;  // written as nothing: no factor changes that
    const Kind kind = input->value.kind;
    double half = 0.5 * (input->high - input->low);
    if (!(half > 0.0)) {  // written without a spread: as unsure as the usual value, in proportion
      const model::Input* like = usual.find(row.key);
      half = row.spread ? *row.spread * input->value.si
                        : 0.5 * (like->high - like->low) * input->value.si / like->value.si;
    }
    double prior = input->value.si;
    const double usual_log_sigma = 0.5 * half / prior;
    if (const auto given = pooled != nullptr ? pooled->values.find(row.key) : decltype(pooled->values.end()){};
        pooled != nullptr && given != pooled->values.end())
      prior = given->second.value.si, half = 0.5 * (given->second.high - given->second.low);
    found.push_back({row.key, row.name, row.unit, kind, prior, 0.5 * half, parse_band(row.least, kind).value,
                     parse_band(row.most, kind).value, row.day_to_day.value_or(0.0), row.drift.value_or(0.0), row.anew,
                     usual_log_sigma});
  }
  return found;
}

model::Tuning tuning_at(const std::vector<Factor>& factors, const std::vector<double>& u) {
  model::Tuning tuning;
  for (std::size_t i = 0; i < factors.size(); ++i) {
    const Factor& f = factors[i];
    const double x = f.at(u[i]);
    if (!(x >= f.least && x <= f.most)) {
      const auto text = [&](double si) { return format({si, f.kind}, f.unit); };
      throw ModelError(fmt::format("{} ({}) would be {}, which is not between {} and {}", f.name, f.key, text(x),
                                   text(f.least), text(f.most)));
    }
    tuning.values.emplace(f.key, model::TunedValue{AnyQuantity(x, f.kind), x, x, f.unit});
  }
  return tuning;
}
}  // namespace lumwright::tune
