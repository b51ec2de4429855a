#pragma once
// A file with people's details in it.
#include <QString>
#include <string>

#include "core/problem.h"

namespace wm::app {

/// What a thing is called as a file's name, without its ending: letters and figures of any script, and
/// hyphens.
QString as_file_name(QString name);

/// Refuses a name that is taken, unless it may be replaced.
Expected<void> check_name_free(const QString& path, bool replace);

/// Whole or not at all; only its owner may read it. Refuses a name that is taken, unless it may be replaced.
Expected<void> write_own_file(const QString& path, const std::string& content, bool replace);

}  // namespace wm::app
