#pragma once
// Rulebooks as JSON, read strictly: form, ranges, names and circles.
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"
#include "core/rulebook/rulebook.h"

namespace wm {

/// Reads one rulebook object by itself; every mistake found, with its JSON pointer.
tl::expected<Rulebook, std::vector<Problem>> read_rulebook(std::string_view json);
/// Written so that reading it again gives an equal rulebook; what has its default is left out.
std::string to_json(const Rulebook& rulebook);

/// What a rulebook must also be, however it was made: names defined, no two alike, no circle among the rungs.
/// `where` of each Problem is a JSON pointer inside the rulebook's object.
std::vector<Problem> mistakes_in(const Rulebook& rulebook);

}  // namespace wm
