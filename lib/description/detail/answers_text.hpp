// What the interviews share: answers by key as the text of a file, and what its reader says of them.
#pragma once
#include "description/keys.hpp"
#include "input/source.hpp"
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::description {
using Answers = std::map<std::string, std::string, std::less<>>;  // by the path of the key
/// The answers under their sections, in the order of the keys.
std::string text_of(const Answers& answers, const std::vector<Key>& known);
/// Without the blanks at both ends.
std::string_view stripped(std::string_view text);
/// Every fault with its help, a line each, without places.
std::string said_of(const input::InputError& e);
}  // namespace lumwright::description
