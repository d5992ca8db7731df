#include "report/detail/standing.hpp"
#include <stdexcept>

namespace lumwright::report {
namespace {
struct Meaning {
  data::Standing standing;
  std::string_view meaning, said_by;  // a source that holds `said_by` says it itself
};
constexpr Meaning meanings[] = {
    {data::Standing::standard, "a published standard or handbook table", ""},
    {data::Standing::secondary, "quoted from a second source, the original not read", ""},
    {data::Standing::derived, "follows from known laws", ""},
    {data::Standing::measured, "published measurements", "measure"},
    {data::Standing::memory, "from memory of the handbook, not re-read", "from memory"},
    {data::Standing::practice, "common practice, no written source", "practice"},
    {data::Standing::estimate, "our own estimate, no source", "estimate"},
};
const Meaning& find(data::Standing standing) {
  for (const Meaning& row : meanings)
    if (row.standing == standing) return row;
  throw std::logic_error("what is unsaid has no meaning");
}
}  // namespace

std::string_view standing_in_words(data::Standing standing) { return find(standing).meaning; }
std::string source_in_words(const data::Basis& basis) {
  const std::string& source = basis.source;
  if (basis.standing == data::Standing::unsaid) return source;
  const Meaning& found = find(basis.standing);
  if (source.empty()) return std::string(found.meaning);
  if (!found.said_by.empty() && source.find(found.said_by) != std::string_view::npos) return source;
  return source + " (" + std::string(found.meaning) + ")";
}
}  // namespace lumwright::report
