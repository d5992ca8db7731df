// Every key a file may hold, in the order of its parts.
#pragma once
#include "description/given.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::description {
struct Key {
  std::string section;  // "engine.chimney"; empty at the top
  Field field;
  bool is_section;
  std::string path;  // "engine.chimney.bore"
};
inline std::string path_of(const std::string& section, const Field& field) {
  return (section.empty() ? "" : section + ".") + std::string(field.key);
}
/// Visits the fields of a root and lists them.
struct KeyLister {
  std::vector<Key>& out;
  std::string section_name;
  template <class... Rest>
  void operator()(Field field, Rest&&...) {
    out.push_back({section_name, field, false, path_of(section_name, field)});
  }
  template <class Part>
  void section(Field field, Part& part) {
    out.push_back({section_name, field, true, path_of(section_name, field)});
    KeyLister inner{out, path_of(section_name, field)};
    Part::fields(part, inner);
  }
  template <class Part>
  void list(Field field, std::vector<Part>&) {
    Part one{};
    section(field, one);
  }
};
/// Visits the fields of a root and gives each value the next key; the items of a list have none.
struct KeyGiver {
  const std::vector<Key>& known;
  std::size_t next = 0;
  template <class Value, class... Rest>
  void operator()(const Field&, Value& value, Rest&&...) {
    value.key.set(known[next++].path);
  }
  template <class Part>
  void section(const Field&, Part& part) {
    ++next;
    Part::fields(part, *this);
  }
  template <class Part>
  void list(const Field& field, std::vector<Part>&) {
    Part one{};
    section(field, one);
  }
};
/// `empty`: a root of which nothing is known.
template <class Root>
std::vector<Key> list_keys(Root empty = {}) {
  std::vector<Key> out;
  KeyLister lister{out, ""};
  Root::fields(empty, lister);
  return out;
}
/// Gives every value of a root its key: `known` lists them in the order of the fields, and outlives the root.
template <class Root>
void give_keys(Root& root, const std::vector<Key>& known) {
  KeyGiver giver{known};
  Root::fields(root, giver);
}
/// Those of a description.
const std::vector<Key>& keys();

/// What to say of a key that `section` does not know: the key it misspells there, else where a key of that name
/// belongs, else the keys that are known there.
std::string key_help(const std::vector<Key>& known, std::string_view section, std::string_view unknown);
/// "adapter, fan": the keys of one section.
std::string known_keys(const std::vector<Key>& known, std::string_view section);
}  // namespace lumwright::description
