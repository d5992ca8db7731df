// Stock keeps the name that its stockist gave it, with what the other rule reads behind: one place for every command.
#pragma once
#include "data/tubes.hpp"
#include "description/build.hpp"
#include "quantity/format.hpp"
#include <string>

namespace lumwright::description {
/// "1 3/4 in", "0.25 mm": as its owner wrote it, without powers of ten and endless decimals.
std::string as_its_owner(AnyQuantity q, std::string_view unit);

/// " (14.29 mm)" behind a size of stock that is written in inches; nothing where the name says it already.
std::string other_rule_of(AnyQuantity size, std::string_view unit, UnitSystem units);
/// "9/16 in (14.29 mm)". A size in millimetres has inches behind it only where all units are to be imperial.
std::string stock_size(const Given<Length>& size, UnitSystem units);
/// "9/16 in x 0.014 in (14.29 x 0.36 mm)"; what is not given is left out.
std::string stock_tube(const Given<Length>& outside, const Given<Length>& wall, UnitSystem units);
/// The same of a row of the table.
std::string stock_tube(const data::TubeRow& tube, UnitSystem units);
/// A length where nothing is solved yet, in the unit that the page has most: "17.6 mm", "0.693 in".
std::string length_on_page(Length length, const Build& build);
/// The unit that such a row is sold by.
std::string stock_unit(const data::TubeRow& tube);
}  // namespace lumwright::description
