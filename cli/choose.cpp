#include "commands.hpp"
#include "description/bin.hpp"
#include "file_kind.hpp"
#include "shelf.hpp"
#include "paper.hpp"
#include "progress.hpp"
#include "quantity/errors.hpp"
#include "report/choice.hpp"
#include "report/files.hpp"
#include "style.hpp"

namespace lumwright::cli {
Answer choose(const Options& options) {
  const Bin bin = read_as(FileKind::bin, read_file(options, options.file), read_bin);
  Progress progress("combinations");
  ChooseAsked asked;
  asked.progress = progress.watch();
  asked.samples = options.samples;
  try {
    const Choice choice = lumwright::choose(bin, asked);
    if (!options.folder.empty()) {
      const std::vector<NamedText> files = choice_files(choice, {.units = options.units});
      write_folder(options, files);
      return {list_of(options.folder, files)};
    }
    if (options.format == Format::json) return {choice_json(choice)};
    if (options.format == Format::csv) return {choice_csv(choice, options.units)};
    return {choice_report(choice, style_of(options))};
  } catch (const ModelError& e) {
    throw NoAnswer(e.what());
  }
}
}  // namespace lumwright::cli
