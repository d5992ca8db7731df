#include "commands.hpp"
#include "described.hpp"
#include "plan/moves.hpp"
#include "report/json.hpp"
#include "report/screen.hpp"
#include "report/text.hpp"
#include "style.hpp"

namespace lumwright::cli {
namespace {
struct CheckOptions : DescriptionOptions {
  report::TextStyle style{};
  Format format = Format::text;
  bool full = false;   // everything, not one screen
  std::string only{};  // a group of checks, or one
};
CheckOptions check_options(const Words& words) {
  CheckOptions options{sampled_options(words, words.needed("FILE")), style_of(words), format_of(words),
                       words.has("--full"), words.text("--only")};
  if (options.only.empty()) return options;
  if (options.full) throw UsageError("`--full` and `--only` ask for two pages: take one of them");
  if (!report::known_part(options.only)) {
    const std::vector<std::string> parts = report::parts_of_checks();
    refuse("--only cannot be", options.only, {parts.begin(), parts.end()});
  }
  return options;
}
Answer run_check(const Words& words) {
  const CheckOptions options = check_options(words);
  const Described told = described(options);
  Progress progress("samples");
  const plan::SamplesAsked samples = samples_asked(options, progress);
  plan::Assessment assessment = assessed(options, told);
  plan::try_moves(assessment, told.build, options.units, told.used(), samples);
  if (!options.only.empty()) {
    const ExitStatus status = report::verdict_of_part(assessment, options.only) == plan::Verdict::fail ? fails : fine;
    return {report::part_report(assessment, options.style, options.only), status};
  }
  const ExitStatus status = assessment.verdict == plan::Verdict::fail ? fails : fine;
  if (options.format == Format::json) return {report::json_report(assessment), status};
  if (options.full) return {report::text_report(assessment, options.style), status};
  return {report::screen_report(assessment, options.style, options.file), status};
}
}  // namespace

const CommandRow check_command{
    .word = "check",
    .arguments = "FILE",
    .usage = "check FILE",
    .brief = "judge a build",
    .about = R"(  Reads the description and tells on one screen: the verdict; the six answers
  that everybody asks for; what to do first, each change tried on the whole
  build before it is named; what to write or to measure first; and what can
  hurt. With --full each check with its limit, the reason, what to do and the
  source; what was assumed; and every caution that applies, whole.

  Figures in brackets are bands: eight of ten samples lie between. A check that
  passes as described, but fails in more than one sample of ten, is to be
  watched; in more than five, it fails. The report names what widens the answer
  most, and what to measure next.
)",
    .first = "--full --only --set --untuned --format --samples --seed",
    .below = R"(Examples
  lumwright check mine.yaml
  lumwright check --full mine.yaml
  lumwright check --only fit mine.yaml
  lumwright check --set adapter.tube.length="46 mm" mine.yaml
  lumwright check --units imperial mine.yaml
  lumwright check --format json mine.yaml > mine.json
  lumwright check - < mine.yaml

Exit status: 0 when nothing fails, 1 when a check fails, 2 when the description
cannot be used. Faults of a description are all shown at once, with their lines.
)",
    .run = run_check};
}  // namespace lumwright::cli
