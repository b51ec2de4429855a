#pragma once
// What a quiz's scores say about the quiz.
#include <optional>
#include <span>

#include "core/figures/interval.h"
#include "core/teach/figure.h"
#include "core/teach/seen.h"

namespace wm::teach {

struct PaperFigures {
  std::size_t people = 0, passed = 0;      // attempts, not persons: who sits it twice counts twice
  std::optional<stats::Interval> passing;  // of the share that passed; nothing where there is nobody
  Figure mean, deviation;                  // of the questions right; the deviation with n - 1
  Figure kr20, kr21, alpha;
  Figure standard_error;  // in questions
  friend bool operator==(const PaperFigures&, const PaperFigures&) = default;
};

/// KR-20 and KR-21 are formulas (20) and (21) of G. F. Kuder, M. W. Richardson, The theory of the estimation
/// of test reliability, Psychometrika 2:151-160 (1937), on whole questions right, with variances over n. The
/// latter needs no more than the papers' length, mean and variance, so that it also stands where papers are
/// drawn at random.
/// Alpha is that of L. J. Cronbach, Coefficient alpha and the internal structure of tests, Psychometrika
/// 16:297-334 (1951), on scores with their parts.
/// The standard error is deviation * sqrt(1 - reliability), by KR-20, or by KR-21 where not all were asked
/// the same.
/// All sums are exact; only the last step is in floating point.
PaperFigures paper_figures(std::span<const SeenAttempt> attempts);

}  // namespace wm::teach
