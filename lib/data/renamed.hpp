// What descriptions said in an earlier release, and say now.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct RenamedKey {
  std::string old, now;  // with their sections: fuel.bed
};
struct RenamedWord {
  std::string key, old, now;
};
const std::vector<RenamedKey>& renamed_keys();
const std::vector<RenamedWord>& renamed_words();

/// True if a path in a file is that key of a description: itself, or in a list of engines.
bool is_key(std::string_view path, std::string_view key);
}  // namespace lumwright::data
