#include "commands.hpp"
#include "description/schema.hpp"
#include "description/template.hpp"

namespace lumwright::cli {
Answer units(const Options&) { return {units_listing()}; }
Answer schema(const Options&) { return {json_schema()}; }
}  // namespace lumwright::cli
