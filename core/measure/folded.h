#pragma once
// What people type, folded into the few characters that numbers and lengths are read from.
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"

namespace wm {

/// `text` in lower-case ASCII: "½" is " 1/2", every dash "-", every kind of inch mark a '"', every kind of
/// space a space, none at either end. `place[i]` is the character that text[i] comes from, from 1 on in code
/// points; one more says where the text ends.
struct Folded {
  std::string text;
  std::vector<std::size_t> place;
};

/// Refuses what is longer than 60 bytes or has a character that is none of these.
Expected<Folded> folded(std::string_view typed);

/// A Problem of what stands at `at` of the folded text.
Problem problem_at(const Folded& folded, std::size_t at, std::string what, std::string remedy);

}  // namespace wm
