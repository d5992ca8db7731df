// A value with its spread: what the user wrote behind "+-", or what the data table allows.
#pragma once

namespace lumwright {
/// low <= value <= high. A value known exactly has all three alike.
template <class Q>
struct Band {
  Q value;
  Q low;
  Q high;
};
template <class Q>
Band<Q> exactly(Q value) {
  return {value, value, value};
}
}  // namespace lumwright
