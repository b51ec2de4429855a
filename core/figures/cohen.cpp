#include <cassert>
#include <cmath>
#include <numeric>

#include "core/figures/kappa.h"

namespace wm::stats {
namespace {

/// Shares of all that was scored, in the notation of the 1969 paper.
struct Shares {
  std::size_t k = 0;
  double n = 0;
  std::vector<double> p;            // p_ij
  std::vector<double> row, column;  // p_i. and p_.j
  std::vector<double> w;            // the weights
  std::vector<double> row_weight,
      column_weight;  // mean weights: w_i. over the columns' shares, w_.j over the rows'
};

Shares shares_of(const CrossTable& table, const AgreementWeights& weights) {
  const std::size_t k = table.categories;
  Shares s{k,
           0,
           std::vector<double>(k * k),
           std::vector<double>(k),
           std::vector<double>(k),
           weights,
           std::vector<double>(k),
           std::vector<double>(k)};
  s.n = static_cast<double>(std::accumulate(table.counts.begin(), table.counts.end(), 0L));
  for (std::size_t i = 0; i < k; ++i)
    for (std::size_t j = 0; j < k; ++j) {
      const double share = static_cast<double>(table.at(i, j)) / s.n;
      s.p[i * k + j] = share;
      s.row[i] += share;
      s.column[j] += share;
    }
  for (std::size_t i = 0; i < k; ++i)
    for (std::size_t j = 0; j < k; ++j) {
      s.row_weight[i] += weights[i * k + j] * s.column[j];
      s.column_weight[j] += weights[i * k + j] * s.row[i];
    }
  return s;
}

/// The sum of term(i, j) over all cells.
template <class Term>
double over_cells(const Shares& s, const Term& term) {
  double sum = 0;
  for (std::size_t i = 0; i < s.k; ++i)
    for (std::size_t j = 0; j < s.k; ++j) sum += term(i, j);
  return sum;
}

double root_of(double variance) { return variance > 0 ? std::sqrt(variance) : 0; }

double error_of(const Shares& s, double observed, double expected) {
  const double cells = over_cells(s, [&](std::size_t i, std::size_t j) {
    const double part =
        s.w[i * s.k + j] * (1 - expected) - (s.row_weight[i] + s.column_weight[j]) * (1 - observed);
    return s.p[i * s.k + j] * part * part;
  });
  const double middle = observed * expected - 2 * expected + observed;
  return root_of((cells - middle * middle) / s.n) / ((1 - expected) * (1 - expected));
}

double error_by_chance_of(const Shares& s, double expected) {
  const double cells = over_cells(s, [&](std::size_t i, std::size_t j) {
    const double part = s.w[i * s.k + j] - (s.row_weight[i] + s.column_weight[j]);
    return s.row[i] * s.column[j] * part * part;
  });
  return root_of((cells - expected * expected) / s.n) / (1 - expected);
}

/// Weights that fall with the distance to the power of `power`.
AgreementWeights falling_weights(std::size_t k, double power) {
  AgreementWeights weights = unweighted(k);
  for (std::size_t i = 0; i < k; ++i)
    for (std::size_t j = 0; j < k; ++j)
      if (i != j)
        weights[i * k + j] =
            1 - std::pow(static_cast<double>(i > j ? i - j : j - i) / static_cast<double>(k - 1), power);
  return weights;
}

}  // namespace

CrossTable cross_table(std::span<const std::size_t> first, std::span<const std::size_t> second,
                       std::size_t categories) {
  assert(first.size() == second.size());
  CrossTable table{categories, std::vector<long>(categories * categories)};
  for (std::size_t i = 0; i < first.size(); ++i) ++table.counts[first[i] * categories + second[i]];
  return table;
}

AgreementWeights unweighted(std::size_t categories) {
  AgreementWeights weights(categories * categories);
  for (std::size_t i = 0; i < categories; ++i) weights[i * categories + i] = 1;
  return weights;
}

AgreementWeights linear_weights(std::size_t categories) { return falling_weights(categories, 1); }
AgreementWeights quadratic_weights(std::size_t categories) { return falling_weights(categories, 2); }

tl::expected<Kappa, NoKappa> cohens_kappa(const CrossTable& table, const AgreementWeights& weights,
                                          double z) {
  assert(table.counts.size() == table.categories * table.categories && weights.size() == table.counts.size());
  const Shares s = shares_of(table, weights);
  if (!(s.n > 0)) return tl::unexpected(NoKappa::nothing_scored);
  if (table.categories < 2) return tl::unexpected(NoKappa::one_category);
  const auto weight = [&](std::size_t i, std::size_t j) { return s.w[i * s.k + j]; };
  const double observed = over_cells(s, [&](auto i, auto j) { return weight(i, j) * s.p[i * s.k + j]; });
  const double expected =
      over_cells(s, [&](auto i, auto j) { return weight(i, j) * s.row[i] * s.column[j]; });
  if (chance_is_all(expected)) return tl::unexpected(NoKappa::chance_is_all);
  return kappa_of(observed, expected, error_of(s, observed, expected), error_by_chance_of(s, expected), z);
}

tl::expected<Kappa, NoKappa> cohens_kappa(const CrossTable& table, double z) {
  return cohens_kappa(table, unweighted(table.categories), z);
}

}  // namespace wm::stats
