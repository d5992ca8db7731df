// What is taken for granted where a description is silent.
#pragma once
#include "data/basis.hpp"
#include <string>

namespace lumwright::model {
/// As it is listed: the value and its band in words.
struct Assumed {
  std::string key, value, band, why;
  data::Basis basis{};
};
}  // namespace lumwright::model
