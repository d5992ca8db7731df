// A description, or the log of a lighting-up, that grows answer by answer, each read before it is taken.
#pragma once
#include "description/log.hpp"
#include <map>
#include <string>
#include <string_view>
#include <vector>

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

class LogInterview {
 public:
  /// As above. The key `readings` takes one time and what was read then, as in "8:10 gauge 1.2 bar, water 95 degC", and
  /// may be answered many times. `day` must be answered first: a season has a place for nothing else.
  std::string take(std::string_view key, std::string_view answer);
  /// Throws InputError where too little was answered to be a lighting-up of a season.
  Log log() const;

 private:
  std::string text() const;
  std::map<std::string, std::string, std::less<>> answers_;
  std::vector<std::string> readings_;  // items of a list
};
}  // namespace lumwright::description
