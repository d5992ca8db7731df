// Inches as a rule and a stockist have them: whole 64ths.
#pragma once
#include "quantity/kind.hpp"
#include <string>

namespace lumwright {
/// "9/16", "1 7/16", "2"; empty where the number of inches is no whole 64th.
std::string inch_fraction(double inches);
/// The same of a length; empty for anything else.
std::string inch_fraction(AnyQuantity q);
}  // namespace lumwright
