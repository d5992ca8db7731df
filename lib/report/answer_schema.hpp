// What the JSON answers hold, for programs that read them: as a JSON Schema, and as a table for those who write such
// programs.
#pragma once
#include "report/page.hpp"
#include <string>

namespace lumwright::report {
/// Draft 2020-12; takes the answers of every command that gives JSON, and nothing with a key too many or too few.
std::string answer_schema();
/// The same keys with their types and meanings, command by command.
std::string answer_table(const TextStyle& style);
}  // namespace lumwright::report
