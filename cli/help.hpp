// Help and version, which are asked for by options as well.
#pragma once
#include "command.hpp"

namespace lumwright::cli {
extern const CommandRow version_command;
/// `help`, asked on that command; on none for the first page.
Words help_words(const std::string& command);
}  // namespace lumwright::cli
