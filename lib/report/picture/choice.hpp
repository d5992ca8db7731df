// The picture of a choice: what each combination of one engine comes to, against what its owner wants.
#pragma once
#include "choose/choose.hpp"
#include "report/picture/picture.hpp"
#include <string>

namespace lumwright::report {
/// Minutes to steam against whole light-ups, one mark a combination: those on the front, those in the ranking with
/// their number, and all others that raise steam. It refers to the engine, which must outlive it.
Picture picture_of_choice(const choose::EngineChoice& engine, const std::string& id, const TextStyle& style);
}  // namespace lumwright::report
