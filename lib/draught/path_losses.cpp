// The losses of a path's elements, told one by one.
#include "draught/gas_path.hpp"
#include <array>

namespace lumwright::draught {
std::vector<ElementLoss> losses(const GasPath& path, const PathFlow& flow) {
  const bool adapter = path.adapter.has_value(), tubes = path.tubes.has_value();
  const std::array<bool, element_count> present = {path.air_entry.has_value(),
                                                   path.grate.has_value(),
                                                   path.bed.has_value(),
                                                   tubes,
                                                   tubes,
                                                   tubes,
                                                   path.blast_pipe_gap.has_value(),
                                                   adapter,
                                                   adapter,
                                                   adapter && path.adapter->fittings > 0.0,
                                                   adapter,
                                                   path.box.has_value(),
                                                   path.guard.has_value()};
  std::vector<ElementLoss> found;
  for (std::size_t i = 0; i < element_count; ++i)
    if (present[i]) found.push_back({.name = name(static_cast<Element>(i)), .loss = flow.loss[i]});
  return found;
}
}  // namespace lumwright::draught
