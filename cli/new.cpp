#include "build/readings.hpp"
#include "build/template.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "input/utf8.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
Answer create(const Options& options) {
  const std::string text = options.readings ? new_fan_readings() : new_description();
  if (options.file == "-") return {text};
  create_file(options.file, text);
  if (options.readings)
    return {
        fmt::format("{0} is written: readings of a fan test, with every key explained.\n"
                    "How to make the test box: lumwright bench --box {0}\n"
                    "With your own readings in it: lumwright bench {0}\n",
                    printable(options.file))};
  return {
      fmt::format("{0} is written: a description with every key explained.\n"
                  "Put your own numbers in, delete what you do not know, then: lumwright check {0}\n",
                  printable(options.file))};
}
}  // namespace lumwright::cli
