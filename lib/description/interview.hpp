// A description that grows answer by answer, each read before it is taken.
#pragma once
#include <map>
#include <string>
#include <string_view>

namespace lumwright::description {
class Interview {
 public:
  /// Takes the answer to a key as its owner wrote it. Returns what is wrong with it, in the words of the reader, and
  /// then takes nothing; empty where it was taken. Nothing but blanks means not known.
  std::string take(std::string_view key, std::string_view answer);
  bool knows_nothing() const { return answers_.empty(); }
  /// The answers under their sections, in the order of a description.
  std::string description() const;

 private:
  std::map<std::string, std::string, std::less<>> answers_;
};
}  // namespace lumwright::description
