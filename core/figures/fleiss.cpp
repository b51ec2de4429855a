#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/figures/kappa.h"

namespace wm::stats {
namespace {

/// Sums over things scored, from which kappa follows, and from which one thing is easily taken out.
struct Sums {
  double things = 0, raters = 0;
  double agreeing = 0;           // over all things: the share of pairs of raters who agree
  std::vector<double> category;  // how often each was used
};

double agreeing_pairs(const std::vector<long>& thing, double raters) {
  double pairs = 0;
  for (const long count : thing) pairs += static_cast<double>(count) * static_cast<double>(count - 1);
  return pairs / (raters * (raters - 1));
}

void add(Sums& sums, const std::vector<long>& thing, double times) {
  sums.things += times;
  sums.agreeing += times * agreeing_pairs(thing, sums.raters);
  for (std::size_t j = 0; j < thing.size(); ++j) sums.category[j] += times * static_cast<double>(thing[j]);
}

double share(const Sums& sums, std::size_t category) {
  return sums.category[category] / (sums.things * sums.raters);
}
double observed(const Sums& sums) { return sums.agreeing / sums.things; }

double expected(const Sums& sums) {
  double by_chance = 0;
  for (std::size_t j = 0; j < sums.category.size(); ++j) by_chance += share(sums, j) * share(sums, j);
  return by_chance;
}

std::optional<NoKappa> no_kappa(const RatingCounts& counts) {
  if (counts.empty()) return NoKappa::nothing_scored;
  if (counts[0].size() < 2) return NoKappa::one_category;
  const auto raters = [](const std::vector<long>& thing) {
    return std::accumulate(thing.begin(), thing.end(), 0L);
  };
  const auto same = [&](const auto& thing) {
    return thing.size() == counts[0].size() && raters(thing) == raters(counts[0]);
  };
  if (!std::all_of(counts.begin(), counts.end(), same)) return NoKappa::unequal_raters;
  return raters(counts[0]) < 2 ? std::optional(NoKappa::one_rater) : std::nullopt;
}

Sums sums_of(const RatingCounts& counts) {
  Sums sums;
  sums.raters = static_cast<double>(std::accumulate(counts[0].begin(), counts[0].end(), 0L));
  sums.category.resize(counts[0].size());
  for (const auto& thing : counts) add(sums, thing, 1);
  return sums;
}

/// Leaves out each thing in turn. Without an error where that leaves nothing to go by, as with one thing
/// only.
double jackknifed_error(const RatingCounts& counts, const Sums& sums) {
  std::vector<double> kappas;
  for (const auto& thing : counts) {
    Sums without = sums;
    add(without, thing, -1);
    if (without.things < 1 || chance_is_all(expected(without))) return 0;
    kappas.push_back((observed(without) - expected(without)) / (1 - expected(without)));
  }
  const double mean = std::accumulate(kappas.begin(), kappas.end(), 0.0) / sums.things;
  double squares = 0;
  for (const double kappa : kappas) squares += (kappa - mean) * (kappa - mean);
  return std::sqrt(squares * (sums.things - 1) / sums.things);
}

/// Fleiss, Nee and Landis 1979.
double error_by_chance(const Sums& sums) {
  double spread = 0, skew = 0;
  for (std::size_t j = 0; j < sums.category.size(); ++j) {
    const double p = share(sums, j), q = 1 - p;
    spread += p * q;
    skew += p * q * (q - p);
  }
  const double pairs = sums.things * sums.raters * (sums.raters - 1);
  return std::sqrt(2 * std::max(0.0, spread * spread - skew) / pairs) / spread;
}

/// Of those who put a thing into `category`, how many of the others did too, beyond chance.
std::optional<double> category_kappa(const RatingCounts& counts, const Sums& sums, std::size_t category) {
  const double p = share(sums, category), q = 1 - p;
  if (p <= 0 || chance_is_all(p)) return std::nullopt;
  double differing = 0;
  for (const auto& thing : counts) {
    const auto count = static_cast<double>(thing[category]);
    differing += count * (sums.raters - count);
  }
  return 1 - differing / (sums.things * sums.raters * (sums.raters - 1) * p * q);
}

}  // namespace

tl::expected<FleissKappa, NoKappa> fleiss_kappa(const RatingCounts& counts, double z) {
  if (const auto why = no_kappa(counts)) return tl::unexpected(*why);
  const Sums sums = sums_of(counts);
  if (chance_is_all(expected(sums))) return tl::unexpected(NoKappa::chance_is_all);
  FleissKappa made{
      kappa_of(observed(sums), expected(sums), jackknifed_error(counts, sums), error_by_chance(sums), z), {}};
  for (std::size_t j = 0; j < sums.category.size(); ++j)
    made.by_category.push_back(category_kappa(counts, sums, j));
  return made;
}

}  // namespace wm::stats
