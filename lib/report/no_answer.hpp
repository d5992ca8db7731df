// What was asked for cannot be given, though nothing is wrong with how it was asked.
#pragma once
#include <stdexcept>

namespace lumwright::report {
/// what() says why, or which keys are missing.
struct NoAnswer : std::runtime_error {
  using std::runtime_error::runtime_error;
};
}  // namespace lumwright::report
