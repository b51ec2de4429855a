#pragma once
// How far assessors who marked the same performances apart agree, by sheet and by line.
#include <span>
#include <string>
#include <vector>

#include "core/figures/agreement.h"
#include "core/sheet/mark.h"

namespace wm {

/// A performance as each assessor marked it: the one who signed the check-out first. All marks in the order
/// of the sheet's lines, as many for each.
struct MarkedTwice {
  std::string sheet;
  int revision = 0;
  std::vector<std::vector<Mark>> by;    // two or more
  std::vector<std::string> words = {};  // of its lines; empty where the sheet is not known
  friend bool operator==(const MarkedTwice&, const MarkedTwice&) = default;
};

/// Below this many a kappa says nothing: its interval is meant for many. Common practice, no source.
inline constexpr std::size_t least_to_judge = 10;

/// Of things that all of the assessors marked; a line that one of them left out is no thing.
struct Agreed {
  std::size_t things = 0;
  std::size_t alike = 0;  // on which all gave the same mark
  /// Beyond chance. Two assessors: Cohen's, a mark apart of three counting as half (shown, when asked, not
  /// shown); more: Fleiss', each difference counting whole.
  tl::expected<stats::Kappa, stats::NoKappa> kappa = tl::unexpected(stats::NoKappa::nothing_scored);
  bool few() const { return things < least_to_judge; }
};

struct LineAgreed {
  std::size_t line = 0;  // from 0 on
  Agreed agreed;
  std::string words = {};  // empty where the sheet is not known
};

/// One revision of a sheet, marked by so many assessors.
struct SheetAgreed {
  std::string sheet;
  int revision = 0;
  std::size_t assessors = 2, performances = 0;
  /// Every line of every performance: those of one performance hang together, so its interval is too narrow.
  Agreed all;
  /// The worst first: where the smallest part of all is marked alike, then by kappa, then in the sheet's
  /// order. Lines that nobody marked twice are left out.
  std::vector<LineAgreed> lines;
};

/// In order of sheet, revision (the newest first) and assessors.
std::vector<SheetAgreed> sheets_agreed(std::span<const MarkedTwice> performances);

}  // namespace wm
