// The YAML tables that are compiled into the program, as text.
#pragma once
#include <span>
#include <string>
#include <string_view>

namespace lumwright::data {
struct EmbeddedFile {
  std::string name;  // folder and file without its ending: "data/fans", "cautions/carbon-monoxide"
  std::string text;
};
std::span<const EmbeddedFile> embedded_files();

/// The text of one embedded file. Throws std::logic_error if the program was built without it.
const EmbeddedFile& embedded(std::string_view name);
}  // namespace lumwright::data
