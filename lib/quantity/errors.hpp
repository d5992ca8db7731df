// The one exception of the physics: no physical answer exists for these inputs.
#pragma once
#include <stdexcept>

namespace lumwright {
/// Thrown with a lower-case sentence that names the quantity and its value: "bed voidage 1.2 is not between 0 and 1".
struct ModelError : std::runtime_error {
  using std::runtime_error::runtime_error;
};
}  // namespace lumwright
