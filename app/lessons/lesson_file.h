#pragma once
// A lesson's page as a file, with what it shows beside its words.
#include <QString>
#include <vector>

#include "core/problem.h"
#include "db/facts.h"

namespace wm::app {

struct LessonFile {
  std::string text;
  std::vector<db::Enclosure> enclosures;  // pictures and PDFs; a video stays outside of the records
};

/// Pictures and PDFs are looked for beside the page. Refused with the page's line where one is missing, too
/// big, or nothing that a lesson shows.
Expected<LessonFile> read_lesson_file(const QString& path);

/// Where this computer has the shop's videos: the folder "lessons" beside its store.
QString video_path(const std::string& store_path, const QString& name);

}  // namespace wm::app
