// Texts that teach the description: a commented file to start from, and the units it may use.
#pragma once
#include <string>

namespace lumwright {
/// A description with every key, its meaning, its limits and an example; keys that most builds leave out stand behind
/// `#`.
std::string new_description();
/// A bin to choose from, with one of everything: an example to write over.
std::string new_bin();
/// The units by kind of quantity, with examples of fractions and spreads; 80 columns.
std::string units_listing();
}  // namespace lumwright
