// Text that names a sheet or a wire by its gauge number, which no reader should turn into a thickness.
#pragma once
#include <optional>
#include <string_view>

namespace lumwright {
/// The number in "22 swg", "16 ga", "22g", "No. 22", "#22", "AWG 24"; empty for any other text.
std::optional<int> gauge_number(std::string_view text);
}  // namespace lumwright
