// Forms of a value that only some keys take: a gauge number, strands of a wire, the weight of water, a second word.
#pragma once
#include "quantity/text.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::description {
/// "22 swg" for sheet and wall, "22 swg", "24 AWG" or "7/0.2" for a wire, "300 g" for a volume of water, where the key
/// at `path` takes it. Nothing for any other text. Throws QuantityError for a number that is in no table, or strands
/// that no wire has.
std::optional<WrittenBand> shop_form(std::string_view text, Kind kind, std::string_view path);
/// Whether the key takes the weight of water and `text` is one.
bool is_weighed_water(std::string_view text, std::string_view path);
/// The forms that the key takes, for its faults: "`22 swg`"; empty where it takes none.
std::string shop_forms_of(std::string_view path);
/// The same as patterns of a regular expression, without anchors, for the schema.
std::vector<std::string> shop_patterns(std::string_view path);

/// The word of today that `word` is another name for under that key, or `word` itself.
std::string_view usual_word(std::string_view word, std::string_view path);
/// All other names under that key.
std::vector<std::string> other_words(std::string_view path);
}  // namespace lumwright::description
