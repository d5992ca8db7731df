// A YAML file as a tree of our own: positions kept, keys distinct, no yaml-cpp type in sight.
#pragma once
#include "input/source.hpp"
#include <optional>
#include <vector>

namespace lumwright::input {
struct Node {
  enum class Kind { empty, scalar, list, map } kind = Kind::empty;
  Position at{};
  std::string text{};     // of a scalar, without its quotes
  bool quoted = false;    // its text begins one byte behind `at`
  bool verbatim = false;  // it stands in the file as in `text`: no escapes, so that each byte has its own place
  bool one_line = true;
  std::vector<Node> children{};  // of a list or a map, in file order
  std::string key{};             // when the parent is a map
  Position key_at{};
};
const Node* child(const Node& map, std::string_view key);
/// Where the colon stands in "bore:17.2 mm", a key with its value close behind; nothing for any other text.
std::optional<std::size_t> colon_without_blank(std::string_view text);
/// The fault of such text, which stands at `at`.
Fault blank_missing(Position at, std::string key, std::string_view text);

/// Reads the one document in `source`. Repeated keys are reported and the first is kept; so is a number in braces that
/// its decimal comma cut in two, which is then read as one. Everything that makes the rest
/// unreadable is thrown at once as InputError: bad syntax, not UTF-8, anchors, aliases, merge keys, tags, nesting
/// deeper than 16, a second document, more than `most_bytes`.
Node read_yaml(const Source& source, std::vector<Fault>& faults, std::size_t most_bytes = 64 * 1024);
}  // namespace lumwright::input
