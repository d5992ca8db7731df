#include "prove/prove.hpp"
#include "commands.hpp"
#include "data/causes.hpp"
#include "described.hpp"
#include "description/page_units.hpp"
#include "file_kind.hpp"
#include "files.hpp"
#include "quantity/errors.hpp"
#include "report/proof.hpp"
#include "shelf.hpp"
#include "style.hpp"
#include <algorithm>

namespace lumwright::cli {
namespace {
struct ProveOptions : DescriptionOptions {
  report::TextStyle style{};
  Format format = Format::text;
  bool full = false;
  std::string readings{};  // empty: the sheet
};
ProveOptions prove_options(const Words& words) {
  ProveOptions options{sampled_options(words, words.needed("FILE")), style_of(words), format_of(words),
                       words.has("--full"), words.text("READINGS")};
  if (!options.readings.empty()) options.samples = std::max(options.samples, data::judging().least_samples);
  return options;
}
Answer told_sheet(const ProveOptions& options, const prove::Sheet& sheet) {
  if (options.format == Format::json) return {report::proof_json(sheet)};
  return {report::proof_sheet(sheet, options.style, options.full, options.file)};
}
Answer run_prove(const Words& words) {
  ProveOptions options = prove_options(words);
  const Described told = described(options);
  options.style.page = description::PageUnits(told.build);
  Progress progress("samples");
  const plan::SamplesAsked samples = samples_asked(options, progress);
  if (options.readings.empty()) return told_sheet(options, prove::sheet_of(told.build, told.used(), samples));
  const description::Proof proof =
      read_as(FileKind::proof, read_file(options.shelf, options.readings), description::read_proof);
  try {
    const prove::Proved proved = prove::prove(told.build, told.used(), proof, samples);
    const ExitStatus status = proved.sound() ? fine : fails;
    if (options.format == Format::json) return {report::proof_json(proved), status};
    return {report::proof_report(proved, options.style, options.full, options.file), status};
  } catch (const ModelError& e) {
    throw report::NoAnswer("nothing is judged: " + std::string(e.what()));
  }
}
}  // namespace

const CommandRow prove_command{
    .word = "prove",
    .arguments = "FILE READINGS",
    .usage = "prove FILE",
    .brief = "hold the finished unit against its plan",
    .headline = "prove FILE [READINGS]: hold the finished unit against its plan",
    .about = R"(  Without READINGS it is a sheet of what to read on the finished unit, the least
  trouble first: with which instrument, where, what it should be, between what
  eight of ten such units lie, and beyond what a reading is not as planned, the
  instrument allowed for.

  With READINGS each reading is held against its band, and one cause is sought
  that explains all of them best: a leaking lid, a blocked tube, a weak fan, one
  wired backwards or the wrong way up, a tired pack, a weak cell, a bad contact,
  a step-up set wrong, a gap wider than measured; or nothing at all. Each is put
  into the model in many sizes and solved in the same samples as the bands. What
  the readings cannot tell apart is said, with the one reading that would. It
  takes 100 samples or more.

  `lumwright new --proof FILE` writes a file of readings to fill in. Fires are
  lit out of doors only; all but the last reading are taken cold.
)",
    .first = "--full --set --untuned --format --samples --seed",
    .below = R"(Examples
  lumwright prove mine.yaml
  lumwright new --proof readings.yaml
  lumwright prove mine.yaml readings.yaml

Exit status: 0 for the sheet and for a unit that is as planned, 1 when a cause is
found or nothing can be judged, 2 when FILE or READINGS cannot be used.
)",
    .run = run_prove};
}  // namespace lumwright::cli
