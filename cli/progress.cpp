#include "progress.hpp"
#include "terminal.hpp"
#include <cmath>
#include <cstdio>
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
using namespace std::chrono_literals;
void put(const std::string& text) {
  std::fwrite(text.data(), 1, text.size(), stderr);
  std::fflush(stderr);
}
}  // namespace

Progress::Progress(std::string what)
    : what_(std::move(what)), wanted_(complaints_go_to_terminal()), start_(Clock::now()), last_(start_) {}
Progress::~Progress() {
  if (shown_) put("\r" + std::string(78, ' ') + "\r");
}
void Progress::show(std::size_t done, std::size_t of) {
  const Clock::time_point now = Clock::now();
  if (!wanted_ || done == 0 || now - start_ < 1s || now - last_ < 200ms) return;
  last_ = now;
  shown_ = true;
  const double gone = std::chrono::duration<double>(now - start_).count();
  const double left = gone * static_cast<double>(of - done) / static_cast<double>(done);
  put(fmt::format("\r{:<78}", fmt::format("{} of {} {}, about {:.0f} s left", done, of, what_, std::ceil(left))));
}
}  // namespace lumwright::cli
