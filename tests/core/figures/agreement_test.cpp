// Both kappas against published tables, to the last digit printed.
#include "core/figures/agreement.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "tests/core/figures/prints.h"

namespace {

using namespace wm::stats;

CrossTable three(std::vector<long> counts) { return {3, std::move(counts)}; }

/// A SAS example, as printed in statsmodels, stats/tests/test_inter_rater.py.
const CrossTable sas = three({0, 4, 1, 0, 8, 0, 0, 1, 5});
/// J. Cohen, A coefficient of agreement for nominal scales, 1960, his table of 200.
const CrossTable cohen_1960 = three({88, 14, 18, 10, 40, 10, 2, 6, 12});

/// J. L. Fleiss, Measuring nominal scale agreement among many raters, 1971: each patient's diagnoses by six
/// raters, in order of category; as in statsmodels, stats/tests/test_inter_rater.py.
RatingCounts diagnoses() {
  const char* patients[] = {"444444", "222555", "233335", "555555", "222444", "113333", "333355", "113334",
                            "114444", "555555", "144444", "124444", "222333", "144444", "224445", "333335",
                            "111455", "111112", "224444", "133555", "555555", "244444", "224555", "114444",
                            "144445", "222224", "111155", "224444", "133333", "555555"};
  RatingCounts counts;
  for (const std::string given : patients) {
    counts.emplace_back(5);
    for (const char category : given) ++counts.back()[static_cast<std::size_t>(category - '1')];
  }
  return counts;
}

/// The example of ten things, five categories and fourteen raters, as in statsmodels,
/// stats/tests/test_inter_rater.py, table0.
const RatingCounts fourteen_raters{{0, 0, 0, 0, 14}, {0, 2, 6, 4, 2}, {0, 0, 3, 5, 6}, {0, 3, 9, 2, 0},
                                   {2, 2, 8, 1, 1},  {7, 7, 0, 0, 0}, {3, 2, 6, 3, 0}, {2, 5, 3, 2, 2},
                                   {6, 5, 2, 1, 0},  {0, 2, 2, 3, 7}};

/// "anxiety", second and third rater, of the R package irr, as in statsmodels,
/// stats/tests/test_inter_rater.py. Nobody used 5.
CrossTable anxiety() {
  const std::vector<std::size_t> second{3, 6, 4, 6, 2, 4, 2, 4, 3, 3, 2, 3, 3, 3, 2, 2, 1, 3, 3, 4},
      third{2, 1, 4, 4, 3, 2, 1, 6, 1, 1, 1, 2, 3, 3, 1, 1, 3, 3, 2, 2};
  const auto without_five = [](std::vector<std::size_t> scores) {
    for (std::size_t& score : scores) score = score == 6 ? 4 : score - 1;
    return scores;
  };
  return cross_table(without_five(second), without_five(third), 5);
}

}  // namespace

TEST_CASE("Cohen's kappa and its errors are those that SAS prints", "[figures]") {
  const auto plain = cohens_kappa(sas);
  REQUIRE(plain);
  CHECK(prints(plain->kappa, .4842, 4));
  CHECK(prints(plain->error, .1380, 4));
  CHECK(prints(plain->interval->low, .2137, 4));
  CHECK(prints(plain->interval->high, .7547, 4));
  CHECK(prints(plain->error_by_chance, .1484, 4));
  CHECK(prints(plain->kappa / plain->error_by_chance, 3.2626, 4));
  const auto weighted = cohens_kappa(sas, linear_weights(3));
  REQUIRE(weighted);
  CHECK(prints(weighted->kappa, .4701, 4));
  CHECK(prints(weighted->error, .1457, 4));
  CHECK(prints(weighted->interval->low, .1845, 4));
  CHECK(prints(weighted->interval->high, .7558, 4));
  CHECK(prints(weighted->error_by_chance, .1426, 4));
  CHECK(prints(weighted->kappa / weighted->error_by_chance, 3.2971, 4));
}

TEST_CASE("Cohen's kappa of 1960 and the weighted one of 1968 come out of the table printed there",
          "[figures]") {
  // The table is from memory; errors recomputed with R's psych and by hand.
  const auto plain = cohens_kappa(cohen_1960);
  REQUIRE(plain);
  CHECK(prints(plain->observed, .70, 10));
  CHECK(prints(plain->expected, .41, 10));
  CHECK(prints(plain->kappa, .4915254, 7));
  CHECK(prints(plain->error, .0510018, 7));
  // Recomputed with Python's fractions. Cohen's own of 1960 was larger: the root of .41 / (200 * .59),
  // .0589455.
  CHECK(prints(plain->error_by_chance, .0519789, 7));
  // Disagreements 0 1 3 / 1 0 6 / 3 6 0, of 6.
  const AgreementWeights of_1968{1, 5. / 6, 3. / 6, 5. / 6, 1, 0, 3. / 6, 0, 1};
  CHECK(prints(cohens_kappa(cohen_1960, of_1968)->kappa, .3478261, 7));
  CHECK(prints(cohens_kappa(cohen_1960, linear_weights(3))->kappa, .4736842, 7));
  CHECK(prints(cohens_kappa(cohen_1960, quadratic_weights(3))->kappa, .4545455, 7));
}

TEST_CASE("Cohen's kappa and its test against chance are those of R's irr", "[figures]") {
  const auto check = [](const AgreementWeights& weights, double kappa, int digits, double z, int z_digits) {
    const auto got = cohens_kappa(anxiety(), weights);
    REQUIRE(got);
    CHECK(prints(got->kappa, kappa, digits));
    CHECK(prints(got->kappa / got->error_by_chance, z, z_digits));
  };
  check(unweighted(5), -0.006289308, 9, -0.0604067, 7);
  check(linear_weights(5), 0.1459075, 7, 1.282472, 6);
  check(quadratic_weights(5), 0.2520325, 7, 1.437451, 6);
}

TEST_CASE("Two tables with the same agreement differ in kappa, by what chance makes of them", "[figures]") {
  // The usual examples, from memory; recomputed.
  CHECK(prints(cohens_kappa({2, {20, 5, 10, 15}})->kappa, .4, 7));
  CHECK(prints(cohens_kappa({2, {45, 15, 25, 15}})->kappa, .1304348, 7));
  CHECK(prints(cohens_kappa({2, {25, 35, 5, 35}})->kappa, .2592593, 7));
  CHECK(cohens_kappa({2, {45, 15, 25, 15}})->observed ==
        Approx(cohens_kappa({2, {25, 35, 5, 35}})->observed));
}

TEST_CASE("Fleiss' kappa of the diagnoses of 1971 is that of R's irr", "[figures]") {
  const auto got = fleiss_kappa(diagnoses());
  REQUIRE(got);
  CHECK(prints(got->all.kappa, .4302445, 7));
  CHECK(prints(got->all.kappa / got->all.error_by_chance, 17.65183, 5));
  // The categories' own, as irr prints them with detail.
  const double by_category[] = {.245, .245, .520, .471, .566};
  for (std::size_t j = 0; j < 5; ++j) CHECK(prints(*got->by_category[j], by_category[j], 3));
}

TEST_CASE("Fleiss' kappa of ten things and fourteen raters is 0.210", "[figures]") {
  const auto got = fleiss_kappa(fourteen_raters);
  REQUIRE(got);
  CHECK(prints(got->all.kappa, .210, 3));
  // Recomputed.
  CHECK(prints(got->all.kappa, .2099307, 7));
  CHECK(prints(got->all.observed, .37802198, 8));
  CHECK(prints(got->all.expected, .21275510, 8));
}

TEST_CASE("The error of Fleiss' kappa is what leaving out each thing in turn comes to", "[figures]") {
  std::vector<double> without;
  for (std::size_t i = 0; i < fourteen_raters.size(); ++i) {
    RatingCounts rest = fourteen_raters;
    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(i));
    without.push_back(fleiss_kappa(rest)->all.kappa);
  }
  double mean = 0, squares = 0;
  for (const double kappa : without) mean += kappa / 10;
  for (const double kappa : without) squares += (kappa - mean) * (kappa - mean);
  CHECK(fleiss_kappa(fourteen_raters)->all.error == Approx(std::sqrt(squares * 9 / 10)));
}

TEST_CASE("An interval at 95 % holds the true kappa about as often as it says", "[figures]") {
  // Each thing is in one of two categories, half and half; each rater says which with a chance of 0.85, else
  // the other. Two raters then agree with a chance of 0.85² + 0.15² = 0.745, and chance makes 0.5: kappa is
  // 0.49.
  std::mt19937 bits(1971);
  std::bernoulli_distribution half(0.5), right(0.85);
  constexpr int shops = 2000, things = 80;
  int cohen_holds = 0, fleiss_holds = 0;
  for (int shop = 0; shop < shops; ++shop) {
    CrossTable pairs{2, std::vector<long>(4)};
    RatingCounts counts;
    for (int thing = 0; thing < things; ++thing) {
      const bool is = half(bits);
      const auto says = [&] { return static_cast<std::size_t>(right(bits) ? is : !is); };
      const std::size_t first = says(), second = says();
      ++pairs.counts[first * 2 + second];
      counts.push_back({0, 0});
      for (const std::size_t said : {first, second, says(), says()}) ++counts.back()[said];
    }
    const auto holds = [](const Kappa& kappa) {
      return kappa.interval->low <= 0.49 && 0.49 <= kappa.interval->high;
    };
    cohen_holds += holds(*cohens_kappa(pairs));
    fleiss_holds += holds(fleiss_kappa(counts)->all);
  }
  // Four standard errors of a share of 0.95 among 2,000, and what approximations are off with 80 things.
  CHECK(cohen_holds / double{shops} == Approx(0.95).margin(0.025));
  CHECK(fleiss_holds / double{shops} == Approx(0.95).margin(0.025));
}

TEST_CASE("Where there is no kappa, it is said why", "[figures]") {
  CHECK(cohens_kappa({2, {0, 0, 0, 0}}).error() == NoKappa::nothing_scored);
  CHECK(cohens_kappa({0, {}}).error() == NoKappa::nothing_scored);
  CHECK(cohens_kappa({1, {5}}).error() == NoKappa::one_category);
  CHECK(cohens_kappa({2, {5, 0, 0, 0}}).error() == NoKappa::chance_is_all);
  CHECK(fleiss_kappa({}).error() == NoKappa::nothing_scored);
  CHECK(fleiss_kappa({{3}, {3}}).error() == NoKappa::one_category);
  CHECK(fleiss_kappa({{1, 0}, {0, 1}}).error() == NoKappa::one_rater);
  CHECK(fleiss_kappa({{0, 0}, {0, 0}}).error() == NoKappa::one_rater);
  CHECK(fleiss_kappa({{2, 0}, {1, 2}}).error() == NoKappa::unequal_raters);
  CHECK(fleiss_kappa({{2, 0}, {2}}).error() == NoKappa::unequal_raters);
  CHECK(fleiss_kappa({{2, 0}, {2, 0}}).error() == NoKappa::chance_is_all);
}

TEST_CASE("Perfect agreement is a kappa of 1 without an interval: it is no certainty", "[figures]") {
  const auto cohen = cohens_kappa({2, {5, 0, 0, 5}});
  REQUIRE(cohen);
  CHECK(cohen->kappa == 1);
  CHECK_FALSE(cohen->interval);
  const auto fleiss = fleiss_kappa({{3, 0}, {0, 3}, {3, 0}, {0, 3}});
  REQUIRE(fleiss);
  CHECK(fleiss->all.kappa == 1);
  CHECK_FALSE(fleiss->all.interval);
  // One thing alone says nothing about how others would be scored.
  CHECK_FALSE(fleiss_kappa({{2, 1}})->all.interval);
  // No agreement at all where chance would make half: the interval is cut off at -1.
  CHECK(cohens_kappa({2, {1, 5, 5, 0}})->interval->low == -1);
  CHECK_FALSE(fleiss_kappa({{3, 0, 0}, {0, 3, 0}})->by_category[2]);
}

TEST_CASE("Kappas are put into the words of Landis and Koch", "[figures]") {
  // Biometrics 33, 1977, from memory.
  CHECK(strength_of(-0.01) == Strength::poor);
  CHECK(strength_of(0) == Strength::slight);
  CHECK(strength_of(0.20) == Strength::slight);
  CHECK(strength_of(0.21) == Strength::fair);
  CHECK(strength_of(0.40) == Strength::fair);
  CHECK(strength_of(0.60) == Strength::moderate);
  CHECK(strength_of(0.80) == Strength::substantial);
  CHECK(strength_of(0.41) == Strength::moderate);
  CHECK(strength_of(0.61) == Strength::substantial);
  CHECK(strength_of(0.81) == Strength::almost_perfect);
  CHECK(strength_of(1) == Strength::almost_perfect);
}
