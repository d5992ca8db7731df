#include "plan/sweep.hpp"
#include "description/key_value.hpp"
#include "description/keys.hpp"
#include "description/values.hpp"
#include "plan/workers.hpp"
#include "quantity/format.hpp"
#include "quantity/text.hpp"
#include "quantity/words.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
[[noreturn]] void refuse(const std::string& key, const std::string& range, const std::string& why,
                         const std::string& help) {
  const input::Source source{"sweep", key + " " + range};
  const int width = static_cast<int>(range.size());
  throw input::InputError(source, {{{1, static_cast<int>(key.size()) + 2, std::max(width, 1)}, key, why, help}});
}
/// No finer than a thousandth of the range, so that the values read well.
std::string rounded(double number, double span) {
  const int places = std::max(0, 3 - static_cast<int>(std::floor(std::log10(span))));
  std::string text = fmt::format("{:.{}f}", number, std::min(places, 9));
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
  }
  return text;
}
std::vector<std::string> quantities(const std::string& key, const std::string& range, Kind kind, std::size_t steps) {
  WrittenBand band{};
  try {
    band = parse_band(range, kind);
  } catch (const QuantityError& e) {
    refuse(key, range, e.what(), e.help);
  }
  if (!(band.low < band.high))
    refuse(key, range, fmt::format("expected a range, got '{}'", range), "as in 6 mm..12 mm");
  const double low = number_in(AnyQuantity(band.low, kind), band.unit),
               high = number_in(AnyQuantity(band.high, kind), band.unit);
  std::vector<std::string> values;
  for (std::size_t i = 0; i < steps; ++i) {
    const double number = low + (high - low) * static_cast<double>(i) / static_cast<double>(steps - 1);
    values.push_back(rounded(number, high - low) + (band.unit.empty() ? "" : " " + band.unit));
  }
  return values;
}
std::vector<std::string> counts(const std::string& key, const std::string& range) {
  const auto dots = range.find("..");
  int low = 0, high = -1;
  try {
    low = std::stoi(range.substr(0, dots));
    if (dots != std::string::npos) high = std::stoi(range.substr(dots + 2));
  } catch (const std::exception&) {
    high = -1;
  }
  constexpr int most = 40;
  if (high <= low || high - low > most)
    refuse(key, range, fmt::format("expected whole numbers, the second larger, got '{}'", range), "as in 2..6");
  std::vector<std::string> values;
  for (int n = low; n <= high; ++n) values.push_back(std::to_string(n));
  return values;
}
std::vector<std::string> by_words(const std::string& key, const std::string& range) {
  std::vector<std::string> values;
  for (const std::string_view one : words(range, ',')) values.emplace_back(one);
  if (values.size() < 2)
    refuse(key, range, fmt::format("expected at least two words, got '{}'", range), "as in good,old");
  return values;
}
}  // namespace

SweepAxis sweep_axis(const description::Build& build, const std::string& key, const std::string& range,
                     std::size_t steps) {
  using Form = description::KeyValue::Form;
  const description::KeyValue now = description::value_at(build, key);
  switch (now.form) {
    case Form::quantity:
      return {key, quantities(key, range, now.kind, steps)};
    case Form::count:
      return {key, counts(key, range)};
    case Form::words:
      return {key, by_words(key, range)};
    case Form::none:
    case Form::table:
      break;
  }
  const auto dot = key.rfind('.');
  const std::string section = dot == std::string::npos ? "" : key.substr(0, dot);
  throw input::InputError(
      {"sweep", key + " " + range},
      {{{1, 1, std::max(1, static_cast<int>(key.size()))},
        key,
        now.form == Form::none ? "this key is not known" : "a table has no range",
        now.form == Form::none
            ? description::key_help(description::keys(), section, key.substr(dot == std::string::npos ? 0 : dot + 1))
            : ""}});
}

std::vector<SweepPoint> sweep(const description::Build& build, const std::vector<SweepAxis>& axes, UnitSystem units,
                              const model::Tuning* tuning, unsigned threads, const SamplesAsked& samples) {
  std::size_t count = 1;
  for (const SweepAxis& axis : axes) count *= axis.values.size();
  std::vector<SweepPoint> points(count);
  std::vector<description::Build> builds;
  for (std::size_t i = 0; i < count; ++i) {
    std::vector<description::Setting> settings;
    std::size_t rest = i;
    for (std::size_t k = axes.size(); k-- > 0;) {
      const std::string& value = axes[k].values[rest % axes[k].values.size()];
      rest /= axes[k].values.size();
      settings.insert(settings.begin(), {axes[k].key, value});
      points[i].at.insert(points[i].at.begin(), value);
    }
    builds.push_back(description::with_settings(build, settings, "sweep"));
  }
  share_out(count, threads, [&](std::size_t i) { points[i].assessment = assess(builds[i], units, tuning, samples); });
  return points;
}
}  // namespace lumwright::plan
