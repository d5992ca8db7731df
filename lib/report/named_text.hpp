// A file that a command writes into a folder.
#pragma once
#include <string>

namespace lumwright::report {
struct NamedText {
  std::string name;  // "templates.pdf": letters, digits, points and hyphens alone
  std::string what;  // one phrase for the list that the command prints
  std::string text;  // its bytes
};
}  // namespace lumwright::report
