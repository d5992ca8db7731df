#include "description/key_value.hpp"

namespace lumwright::description {
namespace {
class KeyFinder {
 public:
  KeyFinder(std::string_view path, KeyValue& found) : found_(found) {
    const auto dot = path.find('.');
    here_ = path.substr(0, dot);
    if (dot != std::string_view::npos) below_ = path.substr(dot + 1);
  }
  template <class Q>
  void operator()(Field field, const Given<Q>& given, Limits) const {
    if (!meant(field)) return;
    using T = QuantityTraits<Q>;
    found_ = {.form = KeyValue::Form::quantity, .written = static_cast<bool>(given), .kind = T::kind};
    if (!given) return;
    found_.si = T::to_si(given.band->value);
    found_.half = given.has_spread ? 0.5 * (T::to_si(given.band->high) - T::to_si(given.band->low)) : 0.0;
    found_.unit = given.unit;
  }
  void operator()(Field field, const Count& count, int, int) const {
    if (meant(field))
      found_ = {.form = KeyValue::Form::count, .written = static_cast<bool>(count), .si = count ? *count : 0.0};
  }
  void operator()(Field field, const Text& text, Allowed) const {
    if (meant(field))
      found_ = {.form = KeyValue::Form::words, .written = static_cast<bool>(text), .words = text ? *text : ""};
  }
  template <class T, class... Rest>
  void operator()(Field field, const T& table, Rest&&...) const {
    if (meant(field)) found_ = {.form = KeyValue::Form::table, .written = static_cast<bool>(table)};
  }
  template <class Part>
  void section(Field field, const Part& part) const {
    if (field.key != here_ || below_.empty()) return;
    const KeyFinder inner(below_, found_);
    Part::fields(part, inner);
  }

 private:
  bool meant(Field field) const { return below_.empty() && field.key == here_; }
  std::string_view here_, below_;
  KeyValue& found_;
};
}  // namespace

KeyValue value_at(const Build& build, std::string_view path) {
  KeyValue found;
  const KeyFinder finder(path, found);
  Build::fields(build, finder);
  return found;
}
}  // namespace lumwright::description
