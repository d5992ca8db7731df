#include "ask.hpp"
#include "commands.hpp"
#include "data/first_words.hpp"
#include "description/log.hpp"
#include "description/proof.hpp"
#include "description/readings.hpp"
#include "description/schema.hpp"
#include "description/template.hpp"
#include "files.hpp"
#include "input/utf8.hpp"
#include "shelf.hpp"
#include "terminal.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
struct NewOptions {
  std::string file;  // "-" is standard output
  bool readings, bin, log, proof, ask;
  Around around;
};
NewOptions new_options(const Words& words) {
  return {words.needed("FILE"), words.has("--readings"), words.has("--bin"), words.has("--log"),
          words.has("--proof"), words.has("--ask"),      words.around};
}
/// A kind of file to begin with: what is written, and what is said of it; {0} is its name.
struct Beginning {
  const char* schema;
  std::string (*text)();
  const char* told;
};
const Beginning beginnings[] = {
    {"description", description::new_description,
     "{0} is written: a description with every key explained, each behind a `#`.\n"
     "Take the `#` away from what you know, put your own values in, then: lumwright check {0}\n"},
    {"readings", description::new_fan_readings,
     "{0} is written: readings of a fan test, with every key explained behind a `#`.\n"
     "Once it says what fan it is, how to make the test box: lumwright bench --box {0}\n"
     "With your own readings in it: lumwright bench {0}\n"},
    {"bin", description::new_bin,
     "{0} is written: a bin of fans, packs, step-ups, tubes and engines, all behind a `#`.\n"
     "Take the `#` away from what you have, write your own things, then: lumwright choose {0}\n"},
    {"log", description::new_log,
     "{0} is written: a log of a lighting-up, with every key explained behind a `#`.\n"
     "With your own readings in it, and FILE your description: lumwright tune FILE {0}\n"},
    {"proof", description::new_proof,
     "{0} is written: readings of the finished unit, with every key explained behind a `#`.\n"
     "What each should be, with FILE your description: lumwright prove FILE\n"
     "With your own readings in it: lumwright prove FILE {0}\n"}};
Answer run_new(const Words& words) {
  const NewOptions options = new_options(words);
  if (options.ask) {
    if (options.readings || options.bin || options.log || options.proof)
      throw UsageError("`--ask` asks for a description: leave `--readings`, `--bin`, `--log` and `--proof` out");
    return ask(options.file, !options.around.plain && terminal_takes_colour());
  }
  if (options.readings + options.bin + options.log + options.proof > 1)
    throw UsageError("`--readings`, `--bin`, `--log` and `--proof` are different files: give one");
  const Beginning& begun = beginnings[options.readings ? 1 : options.bin ? 2 : options.log ? 3 : options.proof ? 4 : 0];
  const std::string text =
      data::first_lines("# ") + "#\n" + description::editor_line(begun.schema) + "#\n" + begun.text();
  if (options.file == "-") return {text};
  create_file(options.around.shelf, options.file, text);
  const char* kind = std::string_view(begun.schema) == "description" ? "" : begun.schema;
  return {fmt::format(fmt::runtime(begun.told), input::printable(options.file)) +
          fmt::format("An editor that knows YAML checks it as you type, once this stands beside it:\n"
                      "lumwright schema{0}{1} > {2}.schema.json\n",
                      *kind == '\0' ? "" : " ", kind, begun.schema)};
}
}  // namespace

const CommandRow new_command{
    .word = "new",
    .arguments = "FILE",
    .usage = "new FILE",
    .brief = "write a description to fill in",
    .about = R"(  Writes a description in which every key is explained and waits behind a `#`,
  with an example: take the `#` away from what you know and write your own value
  over the example. What stays behind its `#`, or has nothing behind its colon,
  counts as not known. A file that is there already is left alone and the
  command leaves with 2. With - for FILE the description goes to standard
  output.
)",
    .below = R"(  One line of it is for editors that know YAML: with the schema beside it
  (`lumwright schema`) they complete keys and mark mistakes while you type.

Examples
  lumwright new mine.yaml
  lumwright new --ask mine.yaml
)",
    .run = run_new};
}  // namespace lumwright::cli
