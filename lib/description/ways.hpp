// Where a user is told to go on: a command of the terminal, or a place of the page. The only home of that difference.
#pragma once
#include <string>
#include <string_view>

namespace lumwright::description {
enum class FrontEnd { terminal, page };
/// The words of a row of ways.yaml. Throws std::logic_error for an id that it has not.
const std::string& way(std::string_view id, FrontEnd front);
/// A sentence of our own with each "{way tune}" in its words.
std::string with_ways(std::string_view sentence, FrontEnd front);
}  // namespace lumwright::description
