// A description file to a Build, or every fault in it.
#pragma once
#include "description/build.hpp"
#include "input/source.hpp"

namespace lumwright::description {
/// Reads the whole schema. Throws InputError that holds every fault of the file: YAML that cannot be read, unknown keys
/// (the nearest is named), repeated keys, wrong kinds of value, wrong units, values outside their limits, parts that
/// contradict each other.
Build read_build(const input::Source& source);
}  // namespace lumwright::description
