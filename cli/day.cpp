#include "report/day.hpp"
#include "commands.hpp"
#include "described.hpp"
#include "paper.hpp"
#include "shelf.hpp"
#include "style.hpp"

namespace lumwright::cli {
namespace {
struct DayOptions : DescriptionOptions {
  std::string folder{};
  report::TextStyle style{};
};
DayOptions day_options(const Words& words) {
  DayOptions options{sampled_options(words, words.needed("FILE")), words.text("-o"), style_of(words)};
  for (const auto& [option, key] : {std::pair("--air", "place.air"), {"--barometer", "place.barometer"}})
    if (const std::string& value = words.text(option); !value.empty()) options.set.push_back({key, value});
  return options;
}
Answer run_day(const Words& words) {
  const DayOptions options = day_options(words);
  const Described told = described(options);
  Progress progress("samples");
  const plan::SamplesAsked samples = samples_asked(options, progress);
  const model::Solved solved = plan::solved_to_judge(told.build, options.units, told.used(), samples);
  const plan::Assessment assessment = judged_once(options, [&] { return plan::judged(solved, told.used(), samples); });
  const report::DayCard card = report::day_card(assessment, solved, options.style);
  if (options.folder.empty()) return {report::day_text(card, options.style)};
  const std::vector<report::NamedText> files{
      {"day.html", "the card, to print on one sheet", report::day_page(card)},
      {"day.txt", "the same as `day` prints it", report::day_text(card, {.units = options.units})}};
  write_folder(options.shelf, options.folder, files);
  return {list_of(options.folder, files)};
}
}  // namespace

const CommandRow day_command{.word = "day",
                             .arguments = "FILE",
                             .usage = "day FILE",
                             .brief = "the card to take to the track, for today's weather",
                             .headline = "day FILE: the card to take to the track",
                             .about = R"(  One card for one day: water, the charge of fuel and when to add to it, when
  there is steam, when to open the engine's own blower and stop the fan, how many
  lighting-ups the pack still has, when and how to charge it, how loud the fan is
  and how slowly it may turn, and what can hurt. Write how long ago the pack was
  charged as `supply.pack.days_since_charge`, and its charger as
  `supply.charger`.
)",
                             .first = "--air --barometer -o",
                             .below = R"(Examples
  lumwright day mine.yaml --air "4 degC"
  lumwright day mine.yaml --air "4 degC" --barometer "985 mbar" -o today

Exit status: 0, 2 when the description or an option cannot be used.
)",
                             .run = run_day};
}  // namespace lumwright::cli
