#pragma once
// Random numbers that are the same on every machine and for ever, so that a paper can be drawn again years
// later.
#include <cstddef>
#include <cstdint>
#include <span>
#include <utility>

namespace wm::teach {

/// SplitMix64 (Steele, Lea, Flood: Fast splittable pseudorandom number generators, OOPSLA 2014, figures 16
/// and 17, with the mixing function that java.util.SplittableRandom has). No secret can be made of it: who
/// knows a seed knows the paper.
class Random {
 public:
  explicit Random(std::uint64_t seed) : state_(seed) {}

  std::uint64_t next() {
    std::uint64_t z = state_ += 0x9E3779B97F4A7C15u;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return z ^ (z >> 31);
  }
  /// From 0 to below `count` (1 or more), each as likely: what would favour small ones is thrown away.
  std::size_t below(std::size_t count) {
    const std::uint64_t n = count, left_over = (0 - n) % n;  // 2^64 mod n
    std::uint64_t drawn = next();
    while (drawn < left_over) drawn = next();
    return static_cast<std::size_t>(drawn % n);
  }

 private:
  std::uint64_t state_;
};

/// Every order is as likely (Durstenfeld, Algorithm 235, CACM 7(7), 1964): from the last place down, each
/// takes one of those not yet placed.
template <class T>
void shuffle(std::span<T> items, Random& random) {
  for (std::size_t left = items.size(); left > 1; --left)
    std::swap(items[left - 1], items[random.below(left)]);
}

}  // namespace wm::teach
