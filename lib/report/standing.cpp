#include "report/standing.hpp"
#include <stdexcept>

namespace lumwright {
namespace {
struct Standing {
  std::string_view word, meaning, said_by;  // a source that holds `said_by` says it itself
};
constexpr Standing standings[] = {
    {"standard", "a published standard or handbook table", ""},
    {"secondary", "quoted from a second source, the original not read", ""},
    {"derived", "follows from known laws", ""},
    {"measured", "published measurements", "measure"},
    {"memory", "from memory of the handbook, not re-read", "from memory"},
    {"practice", "common practice, no written source", "practice"},
    {"estimate", "our own estimate, no source", "estimate"},
};
const Standing& find(std::string_view word) {
  for (const Standing& row : standings)
    if (row.word == word) return row;
  throw std::logic_error("no standing is called `" + std::string(word) + "`");
}
}  // namespace

std::string_view standing_in_words(std::string_view standing) { return find(standing).meaning; }
std::string source_in_words(std::string_view source, std::string_view standing) {
  if (standing.empty()) return std::string(source);
  const Standing& found = find(standing);
  if (source.empty()) return std::string(found.meaning);
  if (!found.said_by.empty() && source.find(found.said_by) != std::string_view::npos) return std::string(source);
  return std::string(source) + " (" + std::string(found.meaning) + ")";
}
}  // namespace lumwright
