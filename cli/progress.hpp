// A line on the terminal that says how far a long job has come.
#pragma once
#include <chrono>
#include <cstddef>
#include <functional>
#include <string>

namespace lumwright::cli {
/// Writes to standard error, only to a terminal, only after a second, some times a second; wipes its line at the end.
class Progress {
 public:
  explicit Progress(std::string what);
  ~Progress();
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;
  void show(std::size_t done, std::size_t of);
  /// show() for a job to call; refers to this object.
  std::function<void(std::size_t done, std::size_t of)> watch() {
    return [this](std::size_t done, std::size_t of) { show(done, of); };
  }

 private:
  using Clock = std::chrono::steady_clock;
  std::string what_;
  bool wanted_;
  bool shown_ = false;
  Clock::time_point start_, last_;
};
}  // namespace lumwright::cli
