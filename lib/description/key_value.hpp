// One key of a build by its path: what stands there, whatever it is.
#pragma once
#include "description/build.hpp"
#include <optional>
#include <string>
#include <string_view>

namespace lumwright::description {
struct KeyValue {
  enum class Form { none, quantity, count, words, table } form = Form::none;  // none: there is no such key
  bool written = false;
  Kind kind{};          // of a quantity, whether it is written or not
  double si = 0.0;      // of a quantity or a count
  double half = 0.0;    // SI; half of its spread, where one is written
  std::string unit{};   // as written
  std::string words{};  // of a text
};
KeyValue value_at(const Build& build, std::string_view path);
}  // namespace lumwright::description
