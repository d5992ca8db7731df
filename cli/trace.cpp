#include "report/trace.hpp"
#include "commands.hpp"
#include "described.hpp"

namespace lumwright::cli {
namespace {
struct TraceOptions : DescriptionOptions {
  bool json = false;
  std::string series{};  // empty: the usual one, in JSON all
};
TraceOptions trace_options(const Words& words) {
  TraceOptions options{description_options(words, words.needed("FILE")), words.has("--json"), words.text("--series")};
  options.samples = 0;  // it tells no bands
  if (options.json && words.has("--csv"))
    throw UsageError("`--csv` and `--json` ask for two forms: take one of them");
  return options;
}
Answer run_trace(const Words& words) {
  const TraceOptions options = trace_options(words);
  const plan::Assessment assessment = assessed(options);
  if (options.json) return {report::trace_json(assessment, options.series)};
  return {report::trace_csv(assessment, options.series.empty() ? "raise" : options.series, options.units), fine,
          Head::apart};
}
}  // namespace

const CommandRow trace_command{
    .word = "trace",
    .arguments = "FILE",
    .usage = "trace FILE",
    .brief = "the raise through time, for a spreadsheet",
    .headline = "trace FILE: the raise through time",
    .about = R"(  Prints water temperature, gauge pressure, air flow, gas at the fan, voltage
  and current of the pack against time, from cold to working pressure. All
  numbers are in SI; the head of the table names the units. What is not
  described leaves its cells empty.
)",
    .below = R"(Examples
  lumwright trace mine.yaml > mine.csv
  lumwright trace --json mine.yaml > mine.json
  lumwright trace --series discharge mine.yaml

Exit status: 0, 1 when the series cannot be worked out, and says which keys
are missing, 2 when the description cannot be used.
)",
    .run = run_trace};
}  // namespace lumwright::cli
