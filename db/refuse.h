#pragma once
// The short way to say no.
#include <string>
#include <utility>

#include "core/problem.h"

namespace wm::db {

inline tl::unexpected<Problem> refuse(std::string where, std::string what, std::string remedy) {
  return tl::make_unexpected(Problem{std::move(where), std::move(what), std::move(remedy)});
}

}  // namespace wm::db
