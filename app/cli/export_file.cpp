#include "app/cli/export_file.h"

#include <QDateTime>
#include <QFile>
#include <QSaveFile>
#include <iostream>

#include "app/cli/application.h"
#include "app/cli/refusal.h"
#include "db/export/person_export.h"

namespace wm::app {
namespace {

/// Whole or not at all. Only its owner may read it.
Expected<void> save(const std::string& path, const std::string& content, bool replace) {
  const QString name = QString::fromStdString(path);
  if (!replace && QFile::exists(name))
    return tl::make_unexpected(
        Problem{path, "There is a file of this name", "Give another name, or --replace"});
  QSaveFile file(name);
  if (!file.open(QIODevice::WriteOnly) ||
      !file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) ||
      file.write(QByteArray::fromStdString(content)) < 0 || !file.commit())
    return tl::make_unexpected(Problem{path,
                                       "The file cannot be written: " + file.errorString().toStdString(),
                                       "Give a place where you may write and that is not full"});
  return {};
}

Expected<void> exported(const ExportWords& words) {
  auto store = db::Store::open(words.store, [] { return Instant{QDateTime::currentSecsSinceEpoch()}; });
  if (!store) return tl::make_unexpected(store.error());
  const auto id = db::find_person(*store, words.person);
  if (!id) return tl::make_unexpected(id.error());
  const auto json = db::export_person(*store, *id);
  if (!json) return tl::make_unexpected(json.error());
  return save(words.json, *json, words.replace);
}

}  // namespace

int export_file(const ExportWords& words) {
  const Application application;
  const auto done = exported(words);
  if (!done) return refuse(done.error());
  std::cout << words.json << ": all that the shop holds about this person. Hand it to nobody else.\n";
  return 0;
}

}  // namespace wm::app
