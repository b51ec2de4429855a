#pragma once
// Small random questions, and the best proposal found by trying them all, written apart from core/match.
#include <random>

#include "core/match/fit.h"

namespace wm::small_match {

inline const GoOn to_the_end = [](Aim, const Measures&) { return true; };

FitQuestion question(std::mt19937_64& random);
/// Too large to try all: two assessors with long hours, some past midnight, and something booked amid them.
FitQuestion long_evening(std::mt19937_64& random);

/// Whether nobody and nothing is in two places, and limits hold: looked at pair by pair and minute by minute.
bool allowed(const FitQuestion& question, const std::vector<Placed>& placed);
Measures counted(const FitQuestion& question, const std::vector<Placed>& placed);
/// The best measures of any proposal, by trying each.
Measures best(const FitQuestion& question);

}  // namespace wm::small_match
