// A rule of the shop.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include <string>

namespace lumwright::data {
/// What the trade goes by, with the range in which people set it.
template <class Q>
struct Rule {
  std::string name;
  Band<Q> value;
  std::string note;
  Basis basis{};
};
}  // namespace lumwright::data
