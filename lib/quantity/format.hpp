// Quantity to text, in a unit of the user's choosing.
#pragma once
#include "quantity/kind.hpp"
#include <string>
#include <string_view>

namespace lumwright {
enum class UnitSystem { as_written, metric, imperial };

/// `symbol` where it can express the quantity and the system leaves the choice to the user; else the system's usual
/// unit for this size of quantity ("mm", "l/min", "psi", "thou"). Empty for a pure number.
std::string choose_unit(AnyQuantity q, std::string_view symbol, UnitSystem system);
/// "0.2205 mm": `digits` significant digits, never an exponent between 1e-4 and 1e7, no unit behind a pure number.
std::string format(AnyQuantity q, std::string_view symbol, int digits = 3);
/// The number alone, in `symbol`.
double number_in(AnyQuantity q, std::string_view symbol);
/// A share as per cent: "35 %".
std::string percent(double share, int digits = 3);
/// "kg/s", "Pa", "K": the coherent SI unit of a kind, as results are written in JSON.
std::string si_symbol(Kind kind);
/// A bare number with so many decimals, halves away from zero: what mirrors is printed alike, whatever the last bits
/// are.
std::string fixed_number(double x, int decimals);
/// A bare number to `digits` significant digits; whole digits before the point are kept. Throws std::logic_error if not
/// finite.
std::string format_number(double x, int digits = 3);
}  // namespace lumwright
