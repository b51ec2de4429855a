#pragma once
// Whether two files hold the same.
#include <string>

#include "db/verify/file.h"

namespace wm::db {

/// Every definition, the file's numbers and every row of every table, kinds of values included, compared one
/// by one by SQLite itself, each file at one moment. Where the rows lie in the file plays no part. False too
/// where one of them can't be read to its end.
bool same_content(const verify::File& file, const std::string& other);

}  // namespace wm::db
