#include "description/reader.hpp"
#include "description/detail/contradictions.hpp"
#include "description/detail/part_reader.hpp"

namespace lumwright::description {
Build read_build(const input::Source& source) {
  Build build = read_parts<Build>(source, "a description", "name: my build", contradictions);
  build.file = source.name;
  return build;
}
}  // namespace lumwright::description
