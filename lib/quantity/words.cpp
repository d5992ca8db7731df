#include "quantity/words.hpp"
#include <algorithm>
#include <numeric>
#include <utility>

namespace lumwright {
namespace {
std::size_t edit_distance(std::string_view a, std::string_view b) {  // Levenshtein, one row at a time
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 0; i < a.size(); ++i) {
    std::size_t diagonal = std::exchange(row[0], i + 1);
    for (std::size_t j = 0; j < b.size(); ++j)
      diagonal = std::exchange(row[j + 1], std::min({row[j + 1] + 1, row[j] + 1, diagonal + (a[i] != b[j])}));
  }
  return row.back();
}
}  // namespace

std::vector<std::string_view> words(std::string_view text) {
  std::vector<std::string_view> out;
  while (!text.empty()) {
    const auto end = std::min(text.find(' '), text.size());
    if (end > 0) out.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return out;
}

std::string_view nearest(std::string_view word, std::span<const std::string_view> candidates) {
  std::string_view best;
  if (word.size() > 60) return best;  // no key or unit is that long: not worth the square of it
  std::size_t limit = std::max<std::size_t>(1, word.size() / 3) + 1;
  for (std::string_view candidate : candidates)
    if (const auto d = edit_distance(word, candidate); d < limit) {
      limit = d;
      best = candidate;
    }
  return best;
}
}  // namespace lumwright
