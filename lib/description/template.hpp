// Texts that teach the description: a commented file to start from, and the units it may use.
#pragma once
#include <string>

namespace lumwright::description {
/// A description with every key, its meaning, how it is measured, its limits and an example. All but the name stand
/// behind `#`, so that nothing counts as written that its owner did not write.
std::string new_description();
/// A bin to choose from, with one of everything behind `#`: examples to write over.
std::string new_bin();
/// The units by kind of quantity, with examples of fractions and spreads; 80 columns.
std::string units_listing();
}  // namespace lumwright::description
