// The JSON Schema of a description, for editors that complete and check YAML while it is typed.
#pragma once
#include <string>

namespace lumwright {
/// Draft 2020-12, from the same lists of keys that the reader walks. Accepts what the reader accepts; it cannot say
/// what needs arithmetic: limits of quantities with units, rising points, contradictions.
std::string json_schema();
}  // namespace lumwright
