#pragma once
// Whether a file's tables, indexes and guards are those that the migrations make.
#include "db/verify/file.h"
#include "db/verify/findings.h"

namespace wm::verify {

void check_schema(const File& file, Findings& findings);

}  // namespace wm::verify
