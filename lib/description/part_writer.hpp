// From the fields of a part to YAML, for every file that lumwright writes.
#pragma once
#include "description/given.hpp"
#include "description/written.hpp"
#include <fmt/format.h>
#include <string>

namespace lumwright::description {
/// In quotes where plain YAML would read it as something else.
std::string yaml_text(const std::string& text);

class PartWriter {
 public:
  explicit PartWriter(int depth) : depth_(depth) {}
  std::string out;

  template <class Q>
  void operator()(Field field, const Given<Q>& given, Limits) {
    if (given) line(field, written(given));
  }
  void operator()(Field field, const Count& count, int, int) {
    if (count) line(field, std::to_string(*count));
  }
  void operator()(Field field, const Text& text, Allowed) {
    if (text) line(field, yaml_text(*text));
  }
  template <class X, class Y>
  void operator()(Field field, const Points<X, Y>& points, Limits, Limits) {
    if (!points) return;
    std::string list;
    for (const auto& p : points.points)
      list += fmt::format("{}[{}, {}]", list.empty() ? "" : ", ", written(AnyQuantity(p.x), points.x_unit),
                          written(AnyQuantity(p.y), points.y_unit));
    line(field, "[ " + list + " ]");
  }
  void operator()(Field field, const EfficiencyTable& table) {
    if (table.share) return line(field, written(AnyQuantity(*table.share), ""));
    if (!table) return;
    std::string list;
    for (const auto& p : table.points)
      list += fmt::format("{}[{}, {}, {}]", list.empty() ? "" : ", ", written(AnyQuantity(p.input), "V"),
                          written(AnyQuantity(p.output), "W"), written(AnyQuantity(p.share), ""));
    line(field, "[ " + list + " ]");
  }
  template <class Part>
  void section(Field field, const Part& part) {
    PartWriter inner(depth_ + 1);
    Part::fields(part, inner);
    if (inner.out.empty()) return;
    line(field, "");
    out += inner.out;
  }
  /// Each item on a line of its own, in braces.
  template <class Part>
  void list(Field field, const std::vector<Part>& parts) {
    if (parts.empty()) return;
    line(field, "");
    for (const Part& part : parts) {
      InBraces item;
      Part::fields(part, item);
      out += std::string(static_cast<std::size_t>(2 * depth_ + 2), ' ') + "- { " + item.out + " }\n";
    }
  }

 private:
  struct InBraces {
    std::string out{};
    template <class Q>
    void operator()(Field field, const Given<Q>& given, Limits) {
      if (given) out += fmt::format("{}{}: {}", out.empty() ? "" : ", ", field.key, written(given));
    }
  };
  void line(Field field, const std::string& value) {
    out += std::string(static_cast<std::size_t>(2 * depth_), ' ') + std::string(field.key) +
           (value.empty() ? ":" : ": ") + value + '\n';
  }
  int depth_;
};
}  // namespace lumwright::description
