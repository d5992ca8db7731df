// Every key a file may hold, in the order of its parts.
#pragma once
#include "description/given.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright {
struct Key {
  std::string section;  // "engine.chimney"; empty at the top
  Field field;
  bool is_section;
};
/// Visits the fields of a root and lists them.
struct KeyLister {
  std::vector<Key>& out;
  std::string section_name;
  template <class... Rest>
  void operator()(Field field, Rest&&...) {
    out.push_back({section_name, field, false});
  }
  template <class Part>
  void section(Field field, Part& part) {
    out.push_back({section_name, field, true});
    KeyLister inner{out, (section_name.empty() ? "" : section_name + ".") + std::string(field.key)};
    Part::fields(part, inner);
  }
  template <class Part>
  void list(Field field, std::vector<Part>&) {
    Part one{};
    section(field, one);
  }
};
template <class Root>
std::vector<Key> list_keys() {
  std::vector<Key> out;
  Root empty;
  KeyLister lister{out, ""};
  Root::fields(empty, lister);
  return out;
}
/// Those of a description.
const std::vector<Key>& keys();

/// What to say of a key that `section` does not know: the key it misspells there, else where a key of that name
/// belongs, else the keys that are known there.
std::string key_help(const std::vector<Key>& known, std::string_view section, std::string_view unknown);
/// "adapter, fan": the keys of one section.
std::string known_keys(const std::vector<Key>& known, std::string_view section);
}  // namespace lumwright
