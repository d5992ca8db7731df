// What a description says of one thing: the value with its spread, the unit it was written in, and where.
#pragma once
#include "input/source.hpp"
#include "quantity/band.hpp"
#include "quantity/kind.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::description {
/// Where a field stands: "engine.chimney.bore". It belongs to the place and not to the value: an assignment brings the
/// value alone, so a fan taken out of a bin has the keys of the description that it is put into.
class KeyPath {
 public:
  KeyPath() = default;
  KeyPath(const KeyPath&) = default;
  KeyPath& operator=(const KeyPath&) noexcept { return *this; }
  ~KeyPath() = default;
  /// Of a text that outlives it.
  void set(std::string_view path) { path_ = path; }
  std::string_view text() const { return path_; }

 private:
  std::string_view path_;
};
struct WithoutKeys {};  // makes a root whose values have no keys yet: for the list of the keys themselves
/// A quantity the author may or may not know. Empty until the reader fills it.
template <class Q>
struct Given {
  std::optional<Band<Q>> band{};
  std::string unit{};       // the symbol the author wrote; answers come back in it
  bool has_spread = false;  // the author wrote a spread
  input::Position at{};
  KeyPath key{};  // in a description
  explicit operator bool() const { return band.has_value(); }
  const Q& operator*() const { return band->value; }
};
struct Count {
  std::optional<int> value{};
  input::Position at{};
  KeyPath key{};
  explicit operator bool() const { return value.has_value(); }
  int operator*() const { return *value; }
};
/// A word from a fixed list, or free text where the list is empty.
struct Text {
  std::optional<std::string> value{};
  input::Position at{};
  KeyPath key{};
  explicit operator bool() const { return value.has_value(); }
  const std::string& operator*() const { return *value; }
};
/// What a file says by a name that it had in an earlier release: a key, or a key with its word. Or a volume of water
/// that it gives by its weight.
struct Renamed {
  std::string key;       // as it stands in the file
  std::string old, now;  // the older word and the one of today; where the key is what changed, the keys themselves
  enum class Why { older_name, weighed_water } why = Why::older_name;
};
/// A list of pairs in the author's order, such as a fan's [flow, pressure], first members rising; or places [x, y].
template <class X, class Y>
struct Points {
  struct Point {
    X x;
    Y y;
  };
  std::vector<Point> points{};
  std::string x_unit{}, y_unit{};
  input::Position at{};
  KeyPath key{};
  explicit operator bool() const { return !points.empty(); }
};
/// A converter's efficiency: one share, or a table of [input voltage, output power, share].
struct EfficiencyTable {
  struct Point {
    Voltage input;
    Power output;
    double share;
  };
  std::optional<double> share{};
  std::vector<Point> points{};
  input::Position at{};
  KeyPath key{};
  explicit operator bool() const { return share.has_value() || !points.empty(); }
};
/// Adds the key of a field that is not given to those that are missing.
template <class Field>
void note_missing(const Field& field, std::vector<std::string>& missing) {
  if (!field) missing.emplace_back(field.key.text());
}

/// The span a field must lie in, written as a user would write it; also shown in messages, in the schema and in the
/// manual.
struct Limits {
  std::string_view low, high;
};
/// What the reader, the writer, the schema and the manual know of one key.
struct Field {
  std::string_view key;
  std::string_view meaning;  // one phrase: "inside diameter at its narrowest"
  std::string_view example;  // as it would stand in a file
  bool expert = false;       // a typical value does for most builds: `new` writes it behind a `#`
};
inline constexpr bool expert = true;
using Allowed = std::vector<std::string> (*)();  // the words a Text may hold; null: any short text
}  // namespace lumwright::description
