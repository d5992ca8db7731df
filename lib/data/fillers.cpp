#include "data/fillers.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <algorithm>

namespace lumwright::data {
namespace {
bool same_letters(std::string_view a, std::string_view b) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c; };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&](char x, char y) { return lower(x) == lower(y); });
}
}  // namespace

const std::vector<FillerRow>& fillers() {
  static const std::vector<FillerRow> all = [] {
    std::vector<FillerRow> found;
    for (const Row& row : rows("fillers", "fillers"))
      found.push_back({row.text("name"), row.texts("also"),
                       row.text("kind") == "soft" ? FillerKind::soft : FillerKind::silver, row.text("composition"),
                       row.quantity<Temperature>("solidus"), row.quantity<Temperature>("liquidus"),
                       row.yes("not_on_iron"), row.yes("not_in_sulphur"), row.basis()});
    return found;
  }();
  return all;
}

const FillerRow& filler(std::string_view name) {
  std::string known;
  for (const FillerRow& row : fillers()) {
    const auto is_it = [&](const std::string& word) { return same_letters(word, name); };
    if (is_it(row.name) || std::any_of(row.also.begin(), row.also.end(), is_it)) return row;
    known += (known.empty() ? "`" : ", `") + row.name + "`";
  }
  throw ModelError("no filler is called `" + std::string(name) + "`; known: " + known);
}
}  // namespace lumwright::data
