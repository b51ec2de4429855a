#pragma once
// Texts of banks or run sheets that were edited and not issued, kept by this station: in memory, and in files
// where there is a folder for them, so that neither Escape nor a power cut nor a hand-over costs anybody what
// they typed. A draft is no record.
#include <map>
#include <optional>

#include "app/works/work_files.h"

namespace wm::app {

class WorkDrafts {
 public:
  /// `folder` empty: in memory only. `kind` ("bank") tells files of one kind from those of another.
  WorkDrafts(QString folder, QString kind) : folder_(std::move(folder)), kind_(std::move(kind)) {}
  /// `of`: the name of the work, or the path of the file, that was opened.
  std::optional<WorkFile> find(const QString& of);
  /// Where that can't be written it is kept in memory, and said.
  std::optional<Problem> keep(const QString& of, const WorkFile& draft);
  void drop(const QString& of);

 private:
  QString path(const QString& of) const;

  QString folder_, kind_;
  std::map<QString, WorkFile> all_;
};

}  // namespace wm::app
