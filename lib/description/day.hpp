// The day of a lighting-up, as its owner writes it.
#pragma once
#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace lumwright::description {
/// The date that a text begins with: "2026-05-03" (ISO 8601) or "3 May 2026", with anything behind a blank or a comma.
/// Nothing where it begins with none, or with a day that no calendar has; years from 1900 to 2199.
std::optional<std::chrono::sys_days> day_of(std::string_view text);
/// "3 May 2026"
std::string day_text(std::chrono::sys_days day);
}  // namespace lumwright::description
