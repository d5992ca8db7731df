#include "report/places/sizes.hpp"
#include "description/key_value.hpp"
#include "description/keys.hpp"
#include "description/written.hpp"
#include <algorithm>
#include <stdexcept>

namespace lumwright::report::places {
namespace {
using description::KeyValue;

KeyValue value_of(const description::Build& build, std::string_view key) {
  KeyValue found = description::value_at(build, key);
  if (found.form == KeyValue::Form::none) throw std::logic_error("no description has the key " + std::string(key));
  return found;
}
std::string in_words(const KeyValue& value, UnitSystem units) {
  switch (value.form) {
    case KeyValue::Form::quantity: {
      const AnyQuantity q(value.si, value.kind);
      return units == UnitSystem::as_written ? description::written(q, value.unit)
                                             : format(q, choose_unit(q, value.unit, units), 4);
    }
    case KeyValue::Form::count:
      return std::to_string(static_cast<int>(value.si));
    case KeyValue::Form::words:
      return value.words;
    case KeyValue::Form::table:
      return "as written";
    case KeyValue::Form::none:
      break;
  }
  return "";
}
std::string_view example_of(std::string_view key) {
  for (const description::Key& one : description::keys())
    if (one.path == key) return one.field.example;
  return "";
}
}  // namespace

Told Sizes::told(std::string_view key) const {
  const KeyValue value = value_of(build_, key);
  if (value.written) return {Told::Standing::known, in_words(value, units_)};
  const auto taken = std::find_if(assumed_.begin(), assumed_.end(), [&](const auto& one) { return one.key == key; });
  if (taken == assumed_.end()) return {Told::Standing::not_known, ""};
  return {Told::Standing::assumed, taken->value};
}
Length Sizes::length(std::string_view key) const {
  const KeyValue value = value_of(build_, key);
  if (value.written) return value.si * m;
  return parse_band(example_of(key), kind_of<Length>).value * m;
}
int Sizes::count(std::string_view key, int most) const {
  const KeyValue value = value_of(build_, key);
  const int number = value.written ? static_cast<int>(value.si) : std::stoi(std::string(example_of(key)));
  return std::clamp(number, 1, most);
}
}  // namespace lumwright::report::places
