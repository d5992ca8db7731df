// One value of a description: from a node of the file to a number, a word or a count, with a fault at what is wrong in
// it.
#pragma once
#include "description/given.hpp"
#include "input/yaml_tree.hpp"
#include "quantity/text.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::description {
/// Where the faults of one key go. `item` names the point of a list: "point 3: ".
struct Complaints {
  std::vector<input::Fault>* faults;
  std::string key;
  std::string item{};
  void add(input::Position at, std::string message, std::string help = "") const;
};

/// "nothing", "a list", "a section", or the text itself in quotes: what a message says was found.
std::string found(const input::Node& node);
/// "brass, copper, steel"
std::string listed(const std::vector<std::string>& words);

enum class Spread { allowed, refused };
/// All three return nothing after a complaint.
std::optional<WrittenBand> read_quantity(const input::Node& node, Kind kind, Limits limits, Spread spread,
                                         const Complaints& complaints);
std::optional<int> read_count(const input::Node& node, int least, int most, const Complaints& complaints);
std::optional<std::string> read_words(const input::Node& node, Allowed allowed, const Complaints& complaints);

inline constexpr std::size_t fewest_points = 2, most_points = 100, longest_text = 200;
/// The items of a list of `members` values each, such as pairs. Items that are not are complained of and left out.
std::vector<const input::Node*> read_items(const input::Node& node, std::size_t members, std::string_view example,
                                           const Complaints& complaints);

/// What the reader checks of a converter's efficiency, and the schema repeats.
inline constexpr Limits efficiency_input{"0.3 V", "60 V"}, efficiency_output{"0 W", "500 W"},
    efficiency_share{"1 %", "100 %"};
}  // namespace lumwright::description
