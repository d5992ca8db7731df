#include "commands.hpp"
#include "description/schema.hpp"
#include "description/template.hpp"
#include "report/answer_schema.hpp"
#include <algorithm>

namespace lumwright::cli {
namespace {
struct SchemaOptions {
  std::string kind;
  bool table;  // the keys of the answers as a table
};
/// The files of which there is a schema, and "answer".
std::vector<std::string> schema_kinds() {
  std::vector<std::string> all(description::schema_files().begin(), description::schema_files().end());
  all.emplace_back("answer");
  return all;
}
SchemaOptions schema_options(const Words& words) {
  const SchemaOptions options{words.text("KIND"), words.has("--table")};
  const std::vector<std::string> kinds = schema_kinds();
  if (!options.kind.empty() && std::find(kinds.begin(), kinds.end(), options.kind) == kinds.end())
    refuse("KIND cannot be", options.kind, {kinds.begin(), kinds.end()});
  if (options.table && options.kind != "answer")
    throw UsageError("`--table` is of the answers: lumwright schema answer --table");
  return options;
}
Answer run_units(const Words&) { return {description::units_listing()}; }
Answer run_schema(const Words& words) {
  const SchemaOptions options = schema_options(words);
  if (options.table) return {report::answer_table({})};
  if (options.kind == "answer") return {report::answer_schema()};
  return {description::json_schema(options.kind.empty() ? "description" : options.kind)};
}
}  // namespace

const CommandRow units_command{
    .word = "units",
    .usage = "units",
    .brief = "list the units that may be written",
    .about = R"(  Lists every unit by what it measures, and the forms in which a number may be
  written: fractions, decimal commas, spreads, per cent, minutes and seconds,
  gauge numbers of sheet and wire.
)",
    .run = run_units};
const CommandRow schema_command{
    .word = "schema",
    .arguments = "KIND",
    .usage = "schema",
    .brief = "print the JSON Schema of descriptions",
    .headline = "schema KIND: print the JSON Schema of a kind of file",
    .about = R"(  For editors that complete keys and mark mistakes while you type: `new` writes
  the line by which they find it. The kinds are description (usual), bin,
  readings, log, season, proof. The kind answer is what commands print in JSON,
  for programs that read it.
)",
    .below = R"(Examples
  lumwright schema > description.schema.json
  lumwright schema bin > bin.schema.json
  lumwright schema answer --table
)",
    .run = run_schema,
    .words = schema_kinds};
}  // namespace lumwright::cli
