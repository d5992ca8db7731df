// What the program knows of the terminal it runs in.
#pragma once

namespace lumwright::cli {
/// Standard output is a terminal that shows colour and nobody has asked for none: NO_COLOR is unset or empty
/// (no-color.org) and TERM is not `dumb`.
bool terminal_takes_colour();
/// Standard error is a terminal that can rewrite a line.
bool complaints_go_to_terminal();
/// A reader that goes away early becomes a failed write, not the end of the process.
void survive_closed_pipes();
/// Ends the process as a closed pipe ends one that takes no care; returns the status that a shell would see of that
/// where the signal is not to be had.
int end_by_closed_pipe();
}  // namespace lumwright::cli
