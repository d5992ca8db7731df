#include "ask.hpp"
#include "commands.hpp"
#include "data/first_words.hpp"
#include "description/log.hpp"
#include "description/readings.hpp"
#include "description/schema.hpp"
#include "description/template.hpp"
#include "files.hpp"
#include "input/utf8.hpp"
#include "shelf.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
/// A kind of file to begin with: what is written, and what is said of it; {0} is its name.
struct Beginning {
  const char* schema;
  std::string (*text)();
  const char* told;
};
const Beginning beginnings[] = {
    {"description", new_description,
     "{0} is written: a description with every key explained, each behind a `#`.\n"
     "Take the `#` away from what you know, put your own values in, then: lumwright check {0}\n"},
    {"readings", new_fan_readings,
     "{0} is written: readings of a fan test, with every key explained behind a `#`.\n"
     "Once it says what fan it is, how to make the test box: lumwright bench --box {0}\n"
     "With your own readings in it: lumwright bench {0}\n"},
    {"bin", new_bin,
     "{0} is written: a bin of fans, packs, step-ups, tubes and engines, all behind a `#`.\n"
     "Take the `#` away from what you have, write your own things, then: lumwright choose {0}\n"},
    {"log", new_log,
     "{0} is written: a log of a lighting-up, with every key explained behind a `#`.\n"
     "With your own readings in it, and FILE your description: lumwright tune FILE {0}\n"}};
}  // namespace

Answer create(const Options& options) {
  if (options.ask) return ask(options);
  if (options.readings + options.bin + options.log_file > 1)
    throw UsageError("`--readings`, `--bin` and `--log` are different files: give one");
  const Beginning& begun = beginnings[options.readings ? 1 : options.bin ? 2 : options.log_file ? 3 : 0];
  const std::string text = data::first_lines("# ") + "#\n" + editor_line(begun.schema) + "#\n" + begun.text();
  if (options.file == "-") return {text};
  create_file(options, options.file, text);
  const char* kind = std::string_view(begun.schema) == "description" ? "" : begun.schema;
  return {fmt::format(fmt::runtime(begun.told), printable(options.file)) +
          fmt::format("An editor that knows YAML checks it as you type, once this stands beside it:\n"
                      "lumwright schema{0}{1} > {2}.schema.json\n",
                      *kind == '\0' ? "" : " ", kind, begun.schema)};
}
}  // namespace lumwright::cli
