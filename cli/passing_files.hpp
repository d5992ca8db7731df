// Files under passing names: whole files get their own name from them, and none stays behind when the program is
// stopped.
#pragma once
#include <filesystem>
#include <string>

namespace lumwright::cli {
/// A name in `folder` that no other file has and nobody looks for. It tells which process it belongs to, and is short,
/// because the name that it stands for may be as long as names can be. Noted until `forget_passing`: SIGINT, SIGTERM
/// and SIGHUP remove what is noted before they end the program as they would have.
std::string passing_name(const std::filesystem::path& folder);
/// The file has its own name, or is gone.
void forget_passing(const std::string& name);
/// Removes passing files of processes that are no more (killed, or the power went); what cannot be removed stays.
void clear_left_behind(const std::filesystem::path& folder);
}  // namespace lumwright::cli
