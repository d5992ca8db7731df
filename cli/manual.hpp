// The pages of the manual, made from the tables of commands and options.
#pragma once
#include "command.hpp"
#include <string>

namespace lumwright::cli {
/// What the program is for, its commands, and what holds for all of them.
std::string first_page();
/// What one command does, its options and examples.
std::string page_of(const CommandRow& command);
}  // namespace lumwright::cli
