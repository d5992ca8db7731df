#include "description/page_units.hpp"
#include "quantity/units.hpp"
#include <algorithm>

namespace lumwright::description {
namespace {
constexpr double most_draught = 3000.0;     // Pa: beyond it is a barometer's business
constexpr double coarsest_draught = 300.0;  // Pa: nobody reads a U-tube in bar

/// A rule or a scale has large and small marks of one system: what is written decides between mm and inches only.
bool by_system(Kind kind) { return kind == kind_of<Length> || kind == kind_of<Mass>; }
/// Prefixes and minutes go by size alone; a wire, a grate and a boiler are not of one kind of area.
bool by_size(Kind kind) {
  return kind.dimension == Dimension{} || kind == kind_of<Area> || kind == kind_of<Duration> ||
         kind == kind_of<Voltage> || kind == kind_of<Current> || kind == kind_of<Resistance> ||
         kind == kind_of<Power> || kind == kind_of<Energy>;
}
bool large(AnyQuantity q) { return q.kind == kind_of<Pressure> && q.si >= most_draught; }
}  // namespace

/// Walks the keys of a description.
class UnitsCounted {
 public:
  explicit UnitsCounted(PageUnits& page) : page_(page) {}
  template <class Q>
  void operator()(Field, const Given<Q>& given, Limits) {
    if (given) page_.count(AnyQuantity(*given), given.unit);
  }
  void operator()(Field, const Count&, int, int) {}
  void operator()(Field, const Text&, Allowed) {}
  void operator()(Field, const EfficiencyTable&) {}
  template <class X, class Y>
  void operator()(Field, const Points<X, Y>& points, Limits, Limits) {
    if (!points) return;
    page_.count(AnyQuantity(points.points.back().x), points.x_unit);
    page_.count(AnyQuantity(points.points.front().y), points.y_unit);
  }
  template <class Part>
  void section(Field, const Part& part) {
    Part::fields(part, *this);
  }

 private:
  PageUnits& page_;
};

PageUnits::PageUnits(const Build& build) {
  UnitsCounted counted(*this);
  Build::fields(build, counted);
}

void PageUnits::count(AnyQuantity q, std::string_view unit) {
  if (by_size(q.kind) || unit.empty()) return;
  std::string counts(unit);
  if (by_system(q.kind)) {
    counts = is_imperial(unit) ? "imperial" : "metric";
  } else {
    // Nobody would read it back so, or not a trickle of it.
    const AnyQuantity least(q.kind == kind_of<VolumeFlow> ? 0.01 * q.si : q.si, q.kind);
    if (choose_unit(least, unit, UnitSystem::as_written) != unit) return;
    if (q.kind == kind_of<Pressure> && !large(q) && find_unit(unit, q.kind)->factor > coarsest_draught) return;
  }
  for (Written& one : written_)
    if (one.kind == q.kind && one.large == large(q) && one.unit == counts) {
      ++one.times;
      return;
    }
  written_.push_back({q.kind, large(q), counts, 1});
}

std::string PageUnits::of(AnyQuantity q) const {
  const Written* most = nullptr;
  for (const Written& one : written_)
    if (one.kind == q.kind && one.large == large(q) && (most == nullptr || one.times > most->times)) most = &one;
  if (most == nullptr || most->unit == "metric") return "";
  if (most->unit != "imperial") return most->unit;
  const std::string usual = choose_unit(q, "", UnitSystem::imperial);
  return usual == "thou" ? "in" : usual;  // a limit beside it may be larger
}
}  // namespace lumwright::description
