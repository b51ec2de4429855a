#pragma once
// How far assessors who scored the same things agree, beyond what chance would make them.
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "core/figures/interval.h"

namespace wm::stats {

/// Why there is no kappa. `chance_is_all`: chance alone would make them agree on everything, as where nobody
/// ever used but one category.
enum class NoKappa { nothing_scored, one_category, one_rater, unequal_raters, chance_is_all };

/// An agreement of 1 is perfect, 0 what chance makes, below 0 worse than that. Errors and intervals hold for
/// many things scored, not for a handful.
struct Kappa {
  double kappa = 0;
  double observed = 0, expected = 0;  // the agreement seen, and that which chance makes; 0 to 1
  double error = 0;                   // standard error of kappa
  double error_by_chance = 0;         // what it would be were there no agreement but by chance
  /// Cut off at -1 and 1. None where the error is zero, as where all agree on everything: that is no
  /// certainty.
  std::optional<Interval> interval;
  friend bool operator==(const Kappa&, const Kappa&) = default;
};

/// How often two raters gave which pair of categories: row by the first one, column by the second.
struct CrossTable {
  std::size_t categories = 0;
  std::vector<long> counts;  // categories * categories of them, row by row, none below zero
  long at(std::size_t first, std::size_t second) const { return counts[first * categories + second]; }
  friend bool operator==(const CrossTable&, const CrossTable&) = default;
};
/// Of two raters' categories, thing by thing, each below `categories`; both of one length.
CrossTable cross_table(std::span<const std::size_t> first, std::span<const std::size_t> second,
                       std::size_t categories);

/// How much a pair of categories counts as agreement: from 0 to 1, row by row as in a CrossTable; 1 for the
/// same.
using AgreementWeights = std::vector<double>;
AgreementWeights unweighted(std::size_t categories);
/// For categories in order: 1 - d/(k-1) and 1 - d²/(k-1)², d apart of k.
AgreementWeights linear_weights(std::size_t categories);
AgreementWeights quadratic_weights(std::size_t categories);

/// Cohen's kappa (Cohen, Educational and Psychological Measurement 20, 1960, 37-46), weighted (Cohen,
/// Psychological Bulletin 70, 1968, 213-220); errors by Fleiss, Cohen and Everitt, Psychological Bulletin 72,
/// 1969, 323-327.
tl::expected<Kappa, NoKappa> cohens_kappa(const CrossTable& table, const AgreementWeights& weights,
                                          double z = z_95);
tl::expected<Kappa, NoKappa> cohens_kappa(const CrossTable& table, double z = z_95);

/// How many raters put each thing into each category: a row a thing, each row of one length.
using RatingCounts = std::vector<std::vector<long>>;

struct FleissKappa {
  Kappa all;
  /// By category: how far they agree on what belongs to it and what does not. None for one never used, or
  /// always.
  std::vector<std::optional<double>> by_category;
  friend bool operator==(const FleissKappa&, const FleissKappa&) = default;
};

/// Fleiss' kappa for any number of raters, the same for each thing (Fleiss, Psychological Bulletin 76, 1971,
/// 378-382). The error by chance is that of Fleiss, Nee and Landis, Psychological Bulletin 86, 1979, 974-977.
/// The error is a jackknife over the things scored (Fleiss and Davies, American Journal of Epidemiology 115,
/// 1982, 841-845).
tl::expected<FleissKappa, NoKappa> fleiss_kappa(const RatingCounts& counts, double z = z_95);

/// The words of Landis and Koch, Biometrics 33, 1977, 159-174: below 0, to 0.20, 0.40, 0.60, 0.80, to 1.
enum class Strength { poor, slight, fair, moderate, substantial, almost_perfect };
Strength strength_of(double kappa);

}  // namespace wm::stats
