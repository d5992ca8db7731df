#include "build/schema.hpp"
#include "build/template.hpp"
#include "commands.hpp"

namespace lumwright::cli {
Answer units(const Options&) { return {units_listing()}; }
Answer schema(const Options&) { return {json_schema()}; }
}  // namespace lumwright::cli
