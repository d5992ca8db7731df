#include "quantity/words.hpp"
#include <algorithm>
#include <string>

namespace lumwright {
namespace {
std::string lower(std::string_view text) {
  std::string out(text);
  for (char& c : out) c = static_cast<char>(c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c);
  return out;
}
std::size_t edit_distance(std::string_view a, std::string_view b) {  // three rows of the usual table
  std::vector<std::size_t> before(b.size() + 1), above(b.size() + 1), row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    before.swap(above);
    above.swap(row);
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + (a[i - 1] != b[j - 1])});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) row[j] = std::min(row[j], before[j - 2] + 1);
    }
  }
  return row.back();
}
}  // namespace

std::size_t characters(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

std::vector<std::string_view> words(std::string_view text, char between) {
  std::vector<std::string_view> out;
  while (!text.empty()) {
    const auto end = std::min(text.find(between), text.size());
    if (end > 0) out.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return out;
}

std::string_view nearest(std::string_view word, std::span<const std::string_view> candidates) {
  std::string_view best;
  if (word.empty() || word.size() > 60) return best;  // no key or unit is that long: not worth the square of it
  std::size_t limit = std::max<std::size_t>(1, word.size() / 3) + 1;
  for (std::string_view candidate : candidates)
    if (const auto distance = edit_distance(lower(word), lower(candidate));
        distance < std::min(limit, candidate.size())) {
      limit = distance;
      best = candidate;
    }
  return best;
}
}  // namespace lumwright
