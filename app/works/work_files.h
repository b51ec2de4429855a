#pragma once
// A bank or a run sheet as files: its text, and the pictures beside it.
#include <QString>

#include "core/problem.h"
#include "db/facts.h"

namespace wm::app {

struct WorkFile {
  std::string text;
  std::vector<db::Enclosure> pictures;
};

/// The text, and every picture of its folder that the text names. A picture that is missing is left out: the
/// problems of the text say so.
Expected<WorkFile> open_work_file(const QString& path);
/// The text at `path` and the pictures beside it, each whole or not at all. A picture that is there under the
/// same name and is another one is not written over: refused before anything is written.
Expected<void> save_work_file(const WorkFile& bank, const QString& path);

/// The pictures that a text names, in order; also where the text has mistakes.
std::vector<std::string> pictures_named(const std::string& text);

}  // namespace wm::app
