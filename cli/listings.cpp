#include "commands.hpp"
#include "description/schema.hpp"
#include "description/template.hpp"

namespace lumwright::cli {
Answer units(const Options&) { return {units_listing()}; }
Answer schema(const Options& options) {
  return {json_schema(options.file.empty() ? "description" : options.file)};
}
}  // namespace lumwright::cli
