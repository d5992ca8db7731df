#include "commands.hpp"
#include "description/schema.hpp"
#include "description/template.hpp"
#include "report/answer_schema.hpp"

namespace lumwright::cli {
Answer units(const Options&) { return {units_listing()}; }
Answer schema(const Options& options) {
  if (options.table) return {answer_table({})};
  if (options.file == "answer") return {answer_schema()};
  return {json_schema(options.file.empty() ? "description" : options.file)};
}
}  // namespace lumwright::cli
