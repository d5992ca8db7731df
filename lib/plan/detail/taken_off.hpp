// Metal to take off, no finer than the tool that takes it.
#pragma once
#include "model/solved.hpp"
#include <string>

namespace lumwright::plan {
/// What a tool is set to, and how a man at the bench says it.
struct TakenOff {
  Length length;
  std::string text;
};
/// `least` rounded up to whole steps of the tool: "finest cut" of the lathe or "finest filing" (data/fits.yaml); in
/// inches to whole thou.
TakenOff taken_off(const model::Solved& solved, Length least, const char* step);
}  // namespace lumwright::plan
