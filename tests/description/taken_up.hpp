// What a file that `new` wrote becomes when its owner takes up what waits in it.
#pragma once
#include <sstream>
#include <string>

namespace lumwright {
/// A line that waits behind `#`: a key, an item of a list, or what follows them, further in. Prose has one blank there.
inline bool waits(const std::string& line) {
  const auto at = line.find_first_not_of(' ');
  if (at == std::string::npos || line[at] != '#' || at + 1 == line.size()) return false;
  return line[at + 1] != ' ' || line.substr(at + 1).starts_with("  ");
}
inline std::string without_mark(std::string line) { return line.erase(line.find('#'), 1); }
/// The text with every waiting line put to use.
inline std::string taken_up(const std::string& text) {
  std::istringstream in(text);
  std::string out;
  for (std::string line; std::getline(in, line);) out += (waits(line) ? without_mark(line) : line) + "\n";
  return out;
}
}  // namespace lumwright
