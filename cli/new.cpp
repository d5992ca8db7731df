#include "ask.hpp"
#include "commands.hpp"
#include "data/first_words.hpp"
#include "description/readings.hpp"
#include "description/template.hpp"
#include "files.hpp"
#include "input/utf8.hpp"
#include "shelf.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
Answer create(const Options& options) {
  if (options.ask) return ask(options);
  if (options.readings && options.bin) throw UsageError("`--readings` and `--bin` are two different files: give one");
  const std::string written = options.readings ? new_fan_readings() : options.bin ? new_bin() : new_description();
  const std::string text = data::first_lines("# ") + "#\n" + written;
  if (options.file == "-") return {text};
  create_file(options, options.file, text);
  if (options.readings)
    return {
        fmt::format("{0} is written: readings of a fan test, with every key explained behind a `#`.\n"
                    "Once it says what fan it is, how to make the test box: lumwright bench --box {0}\n"
                    "With your own readings in it: lumwright bench {0}\n",
                    printable(options.file))};
  if (options.bin)
    return {
        fmt::format("{0} is written: a bin of fans, packs, step-ups, tubes and engines, all behind a `#`.\n"
                    "Take the `#` away from what you have, write your own things, then: lumwright choose {0}\n",
                    printable(options.file))};
  return {
      fmt::format("{0} is written: a description with every key explained, each behind a `#`.\n"
                  "Take the `#` away from what you know, put your own values in, then: lumwright check {0}\n",
                  printable(options.file))};
}
}  // namespace lumwright::cli
