#include "passing_files.hpp"
#include <algorithm>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <fmt/format.h>
#include <random>
#include <string_view>
#include <system_error>
#include <vector>
#ifndef _WIN32
#include <sys/types.h>
#include <unistd.h>
#endif

namespace lumwright::cli {
namespace {
constexpr std::string_view passing_prefix = ".lumwright-", passing_suffix = ".part";

#ifdef _WIN32
long own_process() { return 0; }
bool has_ended(long) { return false; }  // nobody to ask: what was left stays
struct Undisturbed {};
std::vector<std::string>& noted() {
  static std::vector<std::string> names;
  return names;
}
void watch_for_stops() {}
#else
constexpr int stops[] = {SIGINT, SIGTERM, SIGHUP};

long own_process() { return static_cast<long>(getpid()); }
bool has_ended(long process) { return kill(static_cast<pid_t>(process), 0) != 0 && errno == ESRCH; }

/// No stop comes in while one lives: the list below is never seen half changed.
class Undisturbed {
 public:
  Undisturbed() {
    sigset_t held;
    sigemptyset(&held);
    for (int stop : stops) sigaddset(&held, stop);
    pthread_sigmask(SIG_BLOCK, &held, &before_);
  }
  ~Undisturbed() { pthread_sigmask(SIG_SETMASK, &before_, nullptr); }
  Undisturbed(const Undisturbed&) = delete;
  Undisturbed& operator=(const Undisturbed&) = delete;

 private:
  sigset_t before_;
};
std::vector<std::string>& noted() {
  static auto* names = new std::vector<std::string>;  // never destroyed: a stop may come while the program leaves
  return *names;
}
void clear_and_stop(int stop) {  // nothing here but what a handler may call (POSIX.1-2017, 2.4.3)
  for (const std::string& name : noted()) unlink(name.c_str());
  std::signal(stop, SIG_DFL);
  ::raise(stop);
}
void watch_for_stops() {
  static const bool watched = [] {
    for (int stop : stops)
      if (std::signal(stop, clear_and_stop) == SIG_IGN) std::signal(stop, SIG_IGN);  // nohup asked for that
    return true;
  }();
  static_cast<void>(watched);
}
#endif

/// The process in ".lumwright-1234-0badcafe.part"; 0 for a name of another form.
long process_of(std::string_view name) {
  if (!name.starts_with(passing_prefix) || !name.ends_with(passing_suffix)) return 0;
  name.remove_prefix(passing_prefix.size());
  long process = 0;
  const auto [end, error] = std::from_chars(name.data(), name.data() + name.size(), process);
  return error == std::errc{} && *end == '-' && process > 0 ? process : 0;
}
}  // namespace

std::string passing_name(const std::filesystem::path& folder) {
  const std::string name =
      (folder / fmt::format("{}{}-{:08x}{}", passing_prefix, own_process(), std::random_device()(), passing_suffix))
          .string();
  [[maybe_unused]] const Undisturbed undisturbed;
  noted().push_back(name);
  watch_for_stops();
  return name;
}

void forget_passing(const std::string& name) {
  [[maybe_unused]] const Undisturbed undisturbed;
  std::erase(noted(), name);
}

void clear_left_behind(const std::filesystem::path& folder) {
  std::error_code ignored;
  std::vector<std::filesystem::path> left;
  for (std::filesystem::directory_iterator at(folder.empty() ? "." : folder, ignored), end; !ignored && at != end;
       at.increment(ignored))
    if (const long process = process_of(at->path().filename().string()); process != 0 && has_ended(process))
      left.push_back(at->path());
  for (const std::filesystem::path& path : left) std::filesystem::remove(path, ignored);
}
}  // namespace lumwright::cli
