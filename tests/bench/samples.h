#pragma once
// The time of each iteration by the clock, kept for what somebody notices: the median and the slow ones.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <vector>

namespace wm::bench {

/// Adds "median_s", "p95_s" and "p99_s", in seconds, to what the benchmark says.
class Samples {
 public:
  explicit Samples(benchmark::State& state) : state_(state) {}
  template <class Call>
  void take(Call call) {
    const auto start = std::chrono::steady_clock::now();
    call();
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    state_.SetIterationTime(took.count());
    seconds_.push_back(took.count());
  }
  ~Samples() {
    if (seconds_.empty()) return;
    std::sort(seconds_.begin(), seconds_.end());
    state_.counters["median_s"] = at(50);
    state_.counters["p95_s"] = at(95);
    state_.counters["p99_s"] = at(99);
  }

 private:
  double at(std::size_t percent) const {
    return seconds_[std::min(seconds_.size() - 1, seconds_.size() * percent / 100)];
  }

  benchmark::State& state_;
  std::vector<double> seconds_;
};

}  // namespace wm::bench
