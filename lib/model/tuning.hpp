// What measured lighting-ups have taught: values that take the place of usual ones, by key.
#pragma once
#include "quantity/kind.hpp"
#include <map>
#include <string>

namespace lumwright::model {
struct TunedValue {
  AnyQuantity value;
  double low, high;  // SI
  std::string unit;
};
struct Tuning {
  std::string file;  // where it was read from, for the report
  std::map<std::string, TunedValue, std::less<>> values;
};
}  // namespace lumwright::model
