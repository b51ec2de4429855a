#include "app/print/own_file.h"

#include <QFile>
#include <QRegularExpression>
#include <QSaveFile>

namespace wm::app {

QString as_file_name(QString name) {
  static const QRegularExpression others("[^\\w]+", QRegularExpression::UseUnicodePropertiesOption);
  return name.replace(others, "-");
}

Expected<void> check_name_free(const QString& path, bool replace) {
  if (replace || !QFile::exists(path)) return {};
  return tl::make_unexpected(
      Problem{path.toStdString(), "There is a file of this name", "Give another name, or --replace"});
}

Expected<void> write_own_file(const QString& path, const std::string& content, bool replace) {
  if (auto free = check_name_free(path, replace); !free) return free;
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly) ||
      !file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) ||
      file.write(QByteArray::fromStdString(content)) < 0 || !file.commit())
    return tl::make_unexpected(Problem{path.toStdString(),
                                       "The file cannot be written: " + file.errorString().toStdString(),
                                       "Give a place where you may write and that is not full"});
  return {};
}

}  // namespace wm::app
