#include "terminal.hpp"
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <string_view>
#ifdef _WIN32
#include <io.h>
#else
#include <unistd.h>
#endif

namespace lumwright::cli {
namespace {
bool is_terminal(std::FILE* stream) {
#ifdef _WIN32
  return _isatty(_fileno(stream)) != 0;
#else
  return isatty(fileno(stream)) != 0;
#endif
}
std::string_view environment(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string_view() : std::string_view(value);
}
}  // namespace

bool terminal_takes_colour() {
  return environment("NO_COLOR").empty() && environment("TERM") != "dumb" && is_terminal(stdout);
}
bool complaints_go_to_terminal() { return environment("TERM") != "dumb" && is_terminal(stderr); }
void survive_closed_pipes() {
#ifdef SIGPIPE
  std::signal(SIGPIPE, SIG_IGN);
#endif
}
int end_by_closed_pipe() {
#ifdef SIGPIPE
  std::signal(SIGPIPE, SIG_DFL);
  std::raise(SIGPIPE);
#endif
  return 128 + 13;  // 13 is SIGPIPE (POSIX.1-2017, kill)
}
}  // namespace lumwright::cli
