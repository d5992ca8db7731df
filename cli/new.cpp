#include "build/template.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "input/utf8.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
Answer create(const Options& options) {
  if (options.file == "-") return {new_description()};
  create_file(options.file, new_description());
  return {
      fmt::format("{0} is written: a description with every key explained.\n"
                  "Put your own numbers in, delete what you do not know, then: lumwright check {0}\n",
                  printable(options.file))};
}
}  // namespace lumwright::cli
