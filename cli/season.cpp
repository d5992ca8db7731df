#include "report/picture/season.hpp"
#include "commands.hpp"
#include "paper.hpp"
#include "quantity/errors.hpp"
#include "report/season.hpp"
#include "season_beside.hpp"
#include "style.hpp"

namespace lumwright::cli {
namespace {
struct SeasonOptions {
  std::string file, season, folder;
  report::TextStyle style;
  Shelf* shelf;
};
SeasonOptions season_options(const Words& words) {
  SeasonOptions options{words.needed("FILE"), words.text("SEASON"), words.text("-o"), style_of(words),
                        words.around.shelf};
  if (options.season.empty()) options.season = season_to_read(options.shelf, options.file, "season");
  return options;
}
Answer to_season_folder(const SeasonOptions& options, const tune::SeasonStory& story,
                        const description::Season& season) {
  const report::TextStyle style{.units = options.style.units};
  const std::vector<report::NamedText> files{
      {"season.svg", "the season as a picture", report::season_picture(story, season, style)},
      {"season.txt", "the page that `season` prints", report::season_report(story, season, style)},
      {"not-believed.txt", "readings that the others speak against", report::doubted_readings(story, season, style)}};
  write_folder(options.shelf, options.folder, files);
  return {list_of(options.folder, files)};
}
Answer run_season(const Words& words) {
  const SeasonOptions options = season_options(words);
  const Learning from = learning_from(options.shelf, options.file, options.season);
  try {
    const tune::SeasonStory story = tune::season_story(from.build, from.season, from.usual());
    if (!options.folder.empty()) return to_season_folder(options, story, from.season);
    return {report::season_report(story, from.season, options.style)};
  } catch (const ModelError& e) {
    throw report::NoAnswer("the season cannot be told: " + std::string(e.what()));
  }
}
}  // namespace

const CommandRow season_command{
    .word = "season",
    .arguments = "FILE SEASON",
    .usage = "season FILE",
    .brief = "the season day by day, what wears and what is due",
    .headline = "season FILE [SEASON]: the season day by day, and what is due",
    .about = R"(  Tells every lighting-up of mine.season.yaml beside mine.yaml: the minutes that
  were to be expected of it, by those before it and by the air, the water and
  the fuel of the day, and the minutes that it took. Eight of ten lie in what
  was expected. Then what drifts, and how sure that is: the heat that reaches
  the water (soot), the air that leaks into the smokebox, the pack, from the
  charges put back after it had run flat. Last what to do, and when it is due:
  sweep the tubes when a tenth of the heat is lost, reseat door and lid when
  15 % leak in, renew the cells at 70 % of their capacity.
  SEASON is another season, or a log, in place of the one beside FILE. Nothing
  is changed; `tune` keeps what is learnt.
)",
    .below = R"(Examples
  lumwright season examples/tarn-beck.yaml examples/seasons/tarn-beck-2026.yaml

Exit status: 0, 1 when nothing can be told, and says why, 2 when a file
cannot be used.
)",
    .run = run_season};
}  // namespace lumwright::cli
