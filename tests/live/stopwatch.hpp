// How long a piece of work takes, for the probes that ratios.py asks.
#pragma once
#include <algorithm>
#include <chrono>
#include <vector>

/// Median of `runs` runs in seconds; 0 for none.
template <class F>
double median_seconds(int runs, F&& work) {
  if (runs < 1) return 0.0;
  std::vector<double> times;
  for (int i = 0; i < runs; ++i) {
    const auto start = std::chrono::steady_clock::now();
    work();
    times.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
  }
  std::nth_element(times.begin(), times.begin() + runs / 2, times.end());
  return times[static_cast<std::size_t>(runs / 2)];
}
