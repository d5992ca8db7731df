#include "description/reader.hpp"
#include "description/contradictions.hpp"
#include "description/part_reader.hpp"

namespace lumwright {
Build read_build(const Source& source) {
  Build build = read_parts<Build>(source, "a description", "name: my build", contradictions);
  build.file = source.name;
  return build;
}
}  // namespace lumwright
