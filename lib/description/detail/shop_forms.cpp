#include "description/detail/shop_forms.hpp"
#include "data/gauges.hpp"
#include "data/shop_forms.hpp"
#include "quantity/units.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <charconv>
#include <fmt/format.h>

namespace lumwright::description {
namespace {
WrittenBand exact(AnyQuantity q, std::string unit) { return {q.si, q.si, q.si, std::move(unit), false}; }
std::string lower_letters(std::string_view text) {
  std::string out;
  for (const char c : text)
    if (c != ' ') out += static_cast<char>(c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c);
  return out;
}
struct GaugeText {
  std::string series;
  int number = 0;
};
// "22 swg", "SWG 22", "24AWG": a whole number of one or two digits and one of the series, nothing else.
std::optional<GaugeText> gauge_text(std::string_view text) {
  std::string rest = lower_letters(text);
  for (const std::string series : {"swg", "awg"}) {
    const auto at = rest.find(series);
    if (at == std::string::npos) continue;
    rest.erase(at, series.size());
    int number = 0;
    const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), number);
    if (error != std::errc{} || end != rest.data() + rest.size() || rest.size() > 2 || rest[0] == '-')
      return std::nullopt;
    return GaugeText{series, number};
  }
  return std::nullopt;
}
Length diameter_of(const GaugeText& gauge, std::string_view text, Kind kind) {
  const std::optional<Length> found = gauge.series == "swg" ? data::swg(gauge.number) : data::awg(gauge.number);
  if (found) return *found;
  throw QuantityError(fmt::format("expected {}, got '{}'", kind_name(kind), text),
                      fmt::format("the numbers known here go from {}: measure it, and write mm",
                                  gauge.series == "swg" ? data::swg_numbers() : data::awg_numbers()),
                      0, text.size());
}
// "7/0.2", "7/0.2 mm", "14/0.0076 in": strands and the diameter of one.
std::optional<WrittenBand> strands(std::string_view text) {
  const auto slash = text.find('/');
  const std::string_view front = text.substr(0, slash);
  int count = 0;
  const auto [end, error] = std::from_chars(front.data(), front.data() + front.size(), count);
  if (slash == std::string_view::npos || error != std::errc{} || end != front.data() + front.size())
    return std::nullopt;
  const std::string_view behind = text.substr(slash + 1);
  const bool decimal = behind.find_first_of(".,") != std::string_view::npos;
  if (!decimal) return std::nullopt;  // 1/2 mm2 is a fraction
  const auto refuse = [&](std::string help) {
    throw QuantityError(fmt::format("expected an area, got '{}'", text), std::move(help), 0, text.size());
  };
  if (behind.find("mm2") != std::string_view::npos || behind.find("mm²") != std::string_view::npos)
    refuse("strands and the diameter of one are written as in `7/0.2`; for a section write `0.22 mm2`");
  const bool bare = behind.find_first_not_of("0123456789.,") == std::string_view::npos;
  const Length strand = [&] {
    try {
      return parse_quantity<Length>(bare ? std::string(behind) + " mm" : std::string(behind));
    } catch (const QuantityError& e) {
      throw QuantityError(fmt::format("expected an area, got '{}'", text), e.help, slash + 1, behind.size());
    }
  }();
  if (count < 1 || count > data::most_strands() || !(strand > 0.0 * unit::m))
    refuse(fmt::format("a wire has 1 to {} strands, as in `7/0.2`", data::most_strands()));
  return exact(static_cast<double>(count) * circle(strand), "mm2");
}
}  // namespace

bool is_weighed_water(std::string_view text, std::string_view path) {
  if (!data::takes(path, "water")) return false;
  try {
    parse_band(text, kind_of<Mass>);
    return true;
  } catch (const QuantityError&) {
    return false;
  }
}

std::optional<WrittenBand> shop_form(std::string_view text, Kind kind, std::string_view path) {
  const bool wire = kind == kind_of<Area> && data::takes(path, "wire");
  const bool sheet = kind == kind_of<Length> && data::takes(path, "sheet");
  if (wire || sheet)
    if (const auto gauge = gauge_text(text); gauge && (wire || gauge->series == "swg")) {
      const Length size = diameter_of(*gauge, text, kind);
      return wire ? exact(circle(size), "mm2") : exact(size, "mm");
    }
  if (wire) return strands(text);
  if (kind != kind_of<Volume> || !is_weighed_water(text, path)) return std::nullopt;
  WrittenBand band = parse_band(text, kind_of<Mass>);
  const Density water = data::weighed_water();
  for (double* si : {&band.value, &band.low, &band.high})  // by way of g, so that 300 g are 300 ml to the last bit
    *si = in(in(*si * unit::kg, unit::g) / in(water, unit::g_per_cm3) * unit::ml, unit::m3);
  band.unit = band.unit == "kg" || band.unit == "lb" ? "l" : "ml";
  return band;
}

std::string shop_forms_of(std::string_view path) {
  if (data::takes(path, "wire")) return "`22 swg`, `24 AWG`, or strands as in `7/0.2`";
  return data::takes(path, "sheet") ? "`22 swg`" : "";
}
std::vector<std::string> shop_patterns(std::string_view path) {
  const std::string swg = "[0-9]{1,2} *[sS][wW][gG]|[sS][wW][gG] *[0-9]{1,2}";
  const std::string awg = "[0-9]{1,2} *[aA][wW][gG]|[aA][wW][gG] *[0-9]{1,2}";
  if (data::takes(path, "wire")) return {swg, awg, "[0-9]{1,3}/[0-9]*[.,][0-9]+ *(?:mm|in)?"};
  return data::takes(path, "sheet") ? std::vector{swg} : std::vector<std::string>{};
}

std::string_view usual_word(std::string_view word, std::string_view path) {
  for (const data::OtherWord& row : data::other_words())
    if (row.also == word && data::is_key(path, row.key)) return row.word;
  return word;
}
std::vector<std::string> other_words(std::string_view path) {
  std::vector<std::string> out;
  for (const data::OtherWord& row : data::other_words())
    if (data::is_key(path, row.key)) out.push_back(row.also);
  return out;
}
}  // namespace lumwright::description
