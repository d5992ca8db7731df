// A rule of the shop.
#pragma once
#include "quantity/band.hpp"
#include <string>

namespace lumwright::data {
/// What the trade goes by, with the range in which people set it.
template <class Q>
struct Rule {
  std::string name;
  Band<Q> value;
  std::string note;
  std::string source;
  std::string standing;
};
}  // namespace lumwright::data
