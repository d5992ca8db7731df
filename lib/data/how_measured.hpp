// How an owner finds out what a key asks for, in half a line.
#pragma once
#include <string_view>

namespace lumwright::data {
/// "calipers, at the top edge" for `engine.chimney.wall`; empty where the meaning of the key says it already.
std::string_view how_measured(std::string_view key);
}  // namespace lumwright::data
