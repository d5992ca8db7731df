#include "data/embedded.hpp"
#include <stdexcept>

namespace lumwright::data {
const EmbeddedFile& embedded(std::string_view name) {
  for (const EmbeddedFile& file : embedded_files())
    if (file.name == name) return file;
  throw std::logic_error("no embedded file " + std::string(name));
}
}  // namespace lumwright::data
