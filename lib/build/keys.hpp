// Every key a description may hold, in the order of its parts.
#pragma once
#include "build/given.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright {
struct Key {
  std::string section;  // "engine.chimney"; empty at the top
  Field field;
  bool is_section;
};
const std::vector<Key>& keys();

/// What to say of a key that `section` does not know: the key it misspells there, else where a key of that name
/// belongs, else the keys that are known there.
std::string key_help(std::string_view section, std::string_view unknown);
/// "adapter, fan": the keys of one section.
std::string known_keys(std::string_view section);
}  // namespace lumwright
