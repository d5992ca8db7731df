// The JSON Schema of each file that is read, for editors that complete and check YAML while it is typed.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::description {
/// Draft 2020-12, from the same lists of keys that the reader walks. Accepts what the reader accepts; it cannot say
/// what needs arithmetic: limits of quantities with units, rising points, contradictions.
std::string json_schema();
/// The same of "description", "bin", "readings" (of a fan test), "log" (of a lighting-up), "season" or "proof" (of a
/// finished unit); std::logic_error for others.
std::string json_schema(std::string_view file);
/// Those five, in that order.
const std::vector<std::string_view>& schema_files();
/// The line by which an editor that knows such schemas finds the one of this kind of file, beside it:
/// "# yaml-language-server: $schema=bin.schema.json".
std::string editor_line(std::string_view file);
}  // namespace lumwright::description
