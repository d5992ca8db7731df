// Which keys take a shop's own forms of a value, and what those forms mean.
#pragma once
#include "data/renamed.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
/// Whether the key at `path` takes `form`: "sheet", "wire" or "water".
bool takes(std::string_view path, std::string_view form);
Density weighed_water();  // what a weight of water is divided by
int most_strands();

struct OtherWord {
  std::string key, also, word;
};
/// Words that mean the same as one of those that the key takes.
const std::vector<OtherWord>& other_words();
}  // namespace lumwright::data
