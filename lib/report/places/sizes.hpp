// What is known of the places of a drawing: as the owner wrote it, as it was assumed, or not at all.
#pragma once
#include "description/build.hpp"
#include "model/assumed.hpp"
#include "report/page.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::report::places {
struct Told {
  enum class Standing { known, assumed, not_known } standing;
  std::string text;  // "17.24 mm"; empty where it is not known
};
/// Refers to the build and to what was assumed.
class Sizes {
 public:
  Sizes(const description::Build& build, const std::vector<model::Assumed>& assumed, const TextStyle& style)
      : build_(build), assumed_(assumed), units_(style.units) {}
  const description::Build& build() const { return build_; }
  /// Throws std::logic_error for a key that no description has.
  Told told(std::string_view key) const;
  /// The length behind a key, to draw by; where none is written, that of its example. Throws as `told` does.
  Length length(std::string_view key) const;
  /// The same of a count, between 1 and `most`.
  int count(std::string_view key, int most) const;

 private:
  const description::Build& build_;
  const std::vector<model::Assumed>& assumed_;
  UnitSystem units_;
};
}  // namespace lumwright::report::places
