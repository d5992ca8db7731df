// What is said when a command cannot be carried out.
#pragma once
#include "exit_status.hpp"
#include <exception>
#include <string>

namespace lumwright::cli {
struct Complaint {
  std::string text;  // without a line end
  ExitStatus status;
};
/// What is told of an exception of a command or of its arguments, and the status to leave with.
Complaint complaint_of(const std::exception& e);
}  // namespace lumwright::cli
