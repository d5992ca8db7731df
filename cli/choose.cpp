#include "commands.hpp"
#include "description/bin.hpp"
#include "file_kind.hpp"
#include "shelf.hpp"
#include "described.hpp"
#include "paper.hpp"
#include "progress.hpp"
#include "quantity/errors.hpp"
#include "report/choice.hpp"
#include "report/files.hpp"
#include "style.hpp"

namespace lumwright::cli {
namespace {
struct ChooseOptions {
  std::string bin, folder;
  std::size_t samples;
  Format format;
  report::TextStyle style;
  Shelf* shelf;
};
ChooseOptions choose_options(const Words& words) {
  return {words.needed("BIN"), words.text("-o"), samples_of(words),
          format_of(words),    style_of(words),  words.around.shelf};
}
Answer run_choose(const Words& words) {
  const ChooseOptions options = choose_options(words);
  const description::Bin bin = read_as(FileKind::bin, read_file(options.shelf, options.bin), description::read_bin);
  Progress progress("combinations");
  choose::ChooseAsked asked;
  asked.progress = progress.watch();
  asked.samples = options.samples;
  try {
    const choose::Choice choice = choose::choose(bin, asked);
    if (!options.folder.empty()) {
      const std::vector<report::NamedText> files = report::choice_files(choice, {.units = options.style.units});
      write_folder(options.shelf, options.folder, files);
      return {list_of(options.folder, files), fine, head_of(options.format)};
    }
    if (options.format == Format::json) return {report::choice_json(choice)};
    if (options.format == Format::csv) return {report::choice_csv(choice, options.style.units), fine, Head::apart};
    return {report::choice_report(choice, options.style)};
  } catch (const ModelError& e) {
    throw report::NoAnswer(e.what());
  }
}
}  // namespace

const CommandRow choose_command{
    .word = "choose",
    .arguments = "BIN",
    .usage = "choose BIN",
    .brief = "which fan, pack, step-up and tube for which engine",
    .headline = "choose BIN: which fan, pack, step-up and tube",
    .about = R"(  Tries every combination of what lies in the bin for each engine of the shed,
  and ranks those that do what each engine wants: minutes to steam, light-ups on
  one charge, mass. What is shown has passed every check, in full: first what
  does all that is wanted, then what has fewest points to watch, then minutes,
  light-ups, mass. Times too close to tell apart share a place. Box, fuse and
  wires that an engine does not name itself are sized for the unit where those
  at the top do not suit, and it says so. It names the
  one unit that serves every engine, with a tube for each; the combinations that
  nothing beats on all three; and in a word why each other one loses.

  A bin holds the parts of a description as lists
    fans, packs, step_ups, tubes, engines
                              each item with a `name` and the keys of its part
    place, fuel, adapter, supply, want
                              at the top: for every engine that says nothing
    count                     how many there are: two fans may be a pair
    pairs: yes                two like fans in series or side by side as well
    drawers, from             loose cells that packs are made from: none is
                              used twice in one unit
    step_ups: [ none, ... ]   none: the fan straight on the pack
    lower_to                  a lower output once steam is near
    tubes: stock              tubes off the shelf, by the table of stock sizes
)",
    .first = "-o --samples",
    .below = R"(Examples
  lumwright choose shed.yaml
  lumwright choose shed.yaml -o shed

Exit status: 0, 2 when the bin cannot be used.
)",
    .run = run_choose};
}  // namespace lumwright::cli
