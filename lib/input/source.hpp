// Input text, places in it, and the faults found there. Knows nothing of YAML or units.
#pragma once
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::input {
struct Source {
  std::string name, text;
};
struct Position {  // bytes, counted from 1; reports count characters
  int line = 1, column = 1, width = 1;
};
struct Fault {
  Position at;
  std::string key;      // the key path it belongs to, or empty
  std::string message;  // lower case, no full stop: "expected a length, got '14 V'"
  std::string help;     // what to write instead; may be empty
};

/// `build.yaml:3:12: engine.chimney.bore: expected ...`, then the line, a caret and the help.
std::string render(const Source& source, const Fault& fault);

/// All the faults of one input file, in the order of their places; what() is all of them as the user sees them.
class InputError : public std::runtime_error {
 public:
  InputError(const Source& source, std::vector<Fault> faults);
  const std::vector<Fault>& faults() const { return faults_; }

 private:
  std::vector<Fault> faults_;
};
}  // namespace lumwright::input
