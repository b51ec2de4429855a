#pragma once
// How far a share that was counted may lie from the one behind it.
#include <cstddef>
#include <optional>

namespace wm::stats {

struct Interval {
  double low = 0, high = 1;
  friend bool operator==(const Interval&, const Interval&) = default;
};

/// The standard normal's 0.975 quantile, for 95 percent.
constexpr double z_95 = 1.959963984540054;

/// The score interval of E. B. Wilson (J. Am. Stat. Assoc. 22:209-212, 1927) without continuity correction,
/// as in R. G. Newcombe, Statist. Med. 17:857-872 (1998), method 3. `count` is at most `of`; nothing where
/// `of` is 0.
std::optional<Interval> wilson(std::size_t count, std::size_t of, double z = z_95);

}  // namespace wm::stats
