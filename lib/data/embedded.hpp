// A text file that is compiled into the program.
#pragma once
#include <span>
#include <string>

namespace lumwright::data {
struct EmbeddedFile {
  std::string name;  // its path below the folder it was taken from
  std::string text;
};
}  // namespace lumwright::data
