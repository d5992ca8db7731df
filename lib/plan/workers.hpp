// A loop whose rounds are shared out among threads.
#pragma once
#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <mutex>
#include <system_error>
#include <thread>
#include <vector>

namespace lumwright::plan {
// a browser's program has no threads unless it was built for them
#if defined(__EMSCRIPTEN__) && !defined(__EMSCRIPTEN_PTHREADS__)
inline constexpr bool has_threads = false;
#else
inline constexpr bool has_threads = true;
#endif
/// work(i) for every i below `count`, in any order and on any thread, the caller's among them; on fewer threads than
/// asked where the machine gives no more. The first exception is thrown on when all have stopped.
template <class F>
void share_out(std::size_t count, unsigned threads, const F& work) {
  std::atomic<std::size_t> next{0};
  std::exception_ptr failure;
  std::mutex guard;
  const auto loop = [&] {
    try {
      for (std::size_t i = next++; i < count; i = next++) work(i);
    } catch (...) {
      const std::lock_guard lock(guard);
      if (!failure) failure = std::current_exception();
      next = count;
    }
  };
  const std::size_t most = has_threads ? std::max(threads, 1U) : 1;
  const std::size_t helpers = std::min(most, std::max<std::size_t>(count, 1)) - 1;
  std::vector<std::thread> workers;
  workers.reserve(helpers);
  try {
    for (std::size_t i = 0; i < helpers; ++i) workers.emplace_back(loop);
  } catch (const std::system_error&) {  // a limit on processes, or no room for a stack
  }
  loop();
  for (std::thread& one : workers) one.join();
  if (failure) std::rethrow_exception(failure);
}
}  // namespace lumwright::plan
