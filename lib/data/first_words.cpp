#include "data/first_words.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<std::string>& first_words() {
  static const std::vector<std::string> words = [] {
    std::vector<std::string> found;
    for (const Row& row : documents("cautions"))
      if (row.has("head")) found.push_back(row.text("head"));
    return found;
  }();
  return words;
}
std::string first_lines(const std::string& mark) {
  std::string lines;
  for (const std::string& words : first_words()) lines += mark + words + "\n";
  return lines;
}
}  // namespace lumwright::data
