#include "matter/water.hpp"
#include "quantity/format.hpp"
#include "tune/detail/parts.hpp"
#include <fmt/format.h>

namespace lumwright::tune {
namespace {
struct Collector {
  std::vector<TunedReading>& out;
  std::size_t item;
  Duration time;

  template <class Q>
  void add(Observable observable, const description::Given<Q>& given) {
    if (!given) return;
    using T = QuantityTraits<Q>;
    const double si = T::to_si(*given), half = 0.5 * (T::to_si(given.band->high) - T::to_si(given.band->low));
    out.push_back({.item = item,
                   .time = time,
                   .observable = observable,
                   .measured = AnyQuantity(*given),
                   .sigma = given.has_spread ? 0.5 * half : usual_sigma(observable, si),
                   .before = std::nullopt,
                   .after = std::nullopt,
                   .unit = given.unit,
                   .left_out = ""});
  }
};
std::string missing_for(Observable observable) {
  switch (observable) {
    case Observable::smokebox:
      return "the description says too little of the way of the gas";
    case Observable::fan_current:
    case Observable::pack_voltage:
      return "the description has no fan on a pack";
    default:
      return "the model does not tell it";
  }
}
std::string why_left_out(const TunedReading& reading, const description::Build& build, const Prediction& untuned) {
  if (!untuned.tells(reading.observable)) return missing_for(reading.observable);
  if (reading.observable == Observable::water && reading.time == 0.0 * s) return "it is where the model starts";
  if (untuned.pack_stops() && reading.time > untuned.end())
    return "by the model the pack has stopped before, at " + format(untuned.end(), "min");
  if (!build.engine.boiler.working) return "";
  const GaugePressure working = *build.engine.boiler.working;
  const double highest =
      reading.observable == Observable::gauge
          ? QuantityTraits<GaugePressure>::to_si(working)
          : QuantityTraits<Temperature>::to_si(matter::saturation_temperature(
                working.above_barometer + (build.place.barometer ? *build.place.barometer : atmosphere)));
  const bool steam_side = reading.observable == Observable::gauge || reading.observable == Observable::water;
  if (steam_side && reading.measured.si > highest) return "above working pressure, where the safety valve may blow";
  return "";
}
}  // namespace

double usual_sigma(Observable observable, double si) {
  const data::Instruments& of = data::instruments();
  const auto half = [](auto expanded) { return 0.5 * QuantityTraits<decltype(expanded)>::to_si(expanded); };
  switch (observable) {
    case Observable::water:
      return half(of.thermometer);
    case Observable::gauge:
      return half(of.gauge);
    case Observable::smokebox:
      return half(of.u_tube);
    case Observable::fan_current:
    case Observable::pack_voltage:
      return half(of.multimeter * si);
    case Observable::fuel:
      return half(of.scale);
  }
  throw std::logic_error("a reading of no kind");
}

std::vector<TunedReading> readings_of(const description::Log& log, const description::Build& build,
                                      const Prediction& untuned) {
  std::vector<TunedReading> found;
  for (std::size_t i = 0; i < log.readings.size(); ++i) {
    const description::part::Reading& r = log.readings[i];
    Collector collector{found, i + 1, *r.time};
    collector.add(Observable::water, r.water);
    collector.add(Observable::gauge, r.gauge);
    collector.add(Observable::smokebox, r.smokebox);
    collector.add(Observable::fan_current, r.fan_current);
    collector.add(Observable::pack_voltage, r.pack_voltage);
    collector.add(Observable::fuel, r.fuel);
  }
  for (TunedReading& reading : found) {
    reading.left_out = why_left_out(reading, build, untuned);
    if (untuned.tells(reading.observable) && reading.time <= untuned.end())
      reading.before = untuned.at(reading.observable, reading.time);
  }
  return found;
}

std::string missed(const TunedReading& r, double misfit) {
  const std::string unit = choose_unit(r.measured, r.unit, UnitSystem::as_written);
  const auto text = [&](double si) { return format({si, r.measured.kind}, unit); };
  return fmt::format("{} of reading {}, at {}: {} was read, the model has {}", name(r.observable), r.item,
                     format(r.time, "min"), text(r.measured.si), text(r.measured.si + misfit * r.sigma));
}
}  // namespace lumwright::tune
