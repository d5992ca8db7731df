// What must hold of anything that a reader says, whatever it was given. A broken promise ends the program with its
// name.
#pragma once
#include "input/source.hpp"
#include "input/utf8.hpp"
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

namespace lumwright::fuzz {
using namespace input;
inline void must(bool holds, std::string_view promise) {
  if (holds) return;
  std::fprintf(stderr, "broken: %.*s\n", static_cast<int>(promise.size()), promise.data());
  std::abort();
}
inline Source source_of(const std::uint8_t* data, std::size_t size) {
  return {"fuzz.yaml", std::string(data, data + size)};
}
/// Readable on any terminal: whole UTF-8 characters, none of them a control.
inline bool showable(std::string_view text) { return printable(text) == text && !text.empty(); }
/// Faults exist, say something, and point into the text.
inline void judge(const Source& source, const InputError& error) {
  must(!error.faults().empty(), "a refusal has a fault");
  must(!first_unreadable_byte(error.what()), "the complaint is readable text");
  const auto lines = 1 + std::count(source.text.begin(), source.text.end(), '\n');
  for (const Fault& fault : error.faults()) {
    must(showable(printable(fault.message)), "a fault says something");
    must(fault.at.line >= 1 && fault.at.line <= lines, "a fault lies on a line of the file");
    must(fault.at.column >= 1 && fault.at.width >= 1, "a fault lies in a column of the file");
  }
}
/// A file read, or refused as it should be.
template <class Read, class Then>
int read_and(const Read& read, const std::uint8_t* data, std::size_t size, const Then& then) {
  const Source source = source_of(data, size);
  try {
    then(read(source));
  } catch (const InputError& error) {
    judge(source, error);
  }
  return 0;
}
}  // namespace lumwright::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
