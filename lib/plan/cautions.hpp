// The cautions: which of cautions/*.yaml apply to a build.
#pragma once
#include "description/build.hpp"
#include "plan/assessment.hpp"
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::plan {
/// A condition that a caution may name in its `when`. Judged from the description and from what the checks found.
struct CautionCondition {
  std::string_view name;     // "always", "lithium_cells", "hot_gas_at_fan"
  std::string_view meaning;  // for the developer's manual
  bool (*holds)(const description::Build& build, const Assessment& so_far);
};
std::span<const CautionCondition> conditions();

/// What one lighting-up would do to the air of a shut garage, in words; nothing where the raise is not known.
std::optional<std::string> garage_reckoning(const Assessment& so_far);

/// The cautions that apply, those that head every output first, each once. Throws std::logic_error for a caution whose `when`
/// names no condition: our mistake.
std::vector<Caution> cautions_for(const description::Build& build, const Assessment& so_far);
/// Those of some ids, in the same order, without what is worked out for one build.
std::vector<Caution> cautions_called(const std::set<std::string>& ids);
}  // namespace lumwright::plan
