// What reading a bin needs beyond its keys: what is handed down, and what only several keys together show to be wrong.
// Only the files of the bin include it.
#pragma once
#include "description/bin.hpp"
#include <vector>

namespace lumwright::description {
/// From the top to the engines, from drawers to packs. Complains of a drawer that is not there.
void hand_down(Bin& bin, std::vector<input::Fault>& faults);
/// `whole`: every key could be read, so that what is missing was left out by the author.
std::vector<input::Fault> bin_faults(const Bin& bin, bool whole);
}  // namespace lumwright::description
