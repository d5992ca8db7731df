// A command carried out, and what is said when it cannot be.
#pragma once
#include "commands.hpp"
#include <exception>
#include <string>

namespace lumwright::cli {
/// The body of the command that the options name. Throws as that does.
Answer run(const Options& options);

struct Complaint {
  std::string text;  // without a line end
  ExitStatus status;
};
/// What is told of an exception of a command or of its arguments, and the status to leave with.
Complaint complaint_of(const std::exception& e);
}  // namespace lumwright::cli
