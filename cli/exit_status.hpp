// What the program tells the shell.
#pragma once

namespace lumwright::cli {
enum ExitStatus : int {
  fine = 0,       // pass or watch
  fails = 1,      // at least one check fails
  bad_input = 2,  // arguments or description cannot be used
  internal = 3,   // our mistake, or the answer could not be written
};
}  // namespace lumwright::cli
