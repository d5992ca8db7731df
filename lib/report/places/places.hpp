// Drawings of the parts of a build with the places marked that a description asks for. Sketches: no size is to be taken
// from them.
#pragma once
#include "description/build.hpp"
#include "model/assumed.hpp"
#include "report/picture/picture.hpp"
#include <string>
#include <vector>

namespace lumwright::report::places {
struct PartPicture {
  std::string part;  // of the description: "engine.chimney"
  Picture picture;
};
/// In the order in which one measures. What is written shows its value, what is not what was assumed for it, in grey;
/// every place carries its key (`data-key`). They refer to build and assumed, which must outlive them.
std::vector<PartPicture> pictures(const description::Build& build, const std::vector<model::Assumed>& assumed,
                                  const TextStyle& style);
}  // namespace lumwright::report::places
