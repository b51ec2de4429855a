#include "app/works/work_files.h"

#include "app/lists/issued.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <algorithm>
#include <set>
#include <sstream>

namespace wm::app {
namespace {

struct WorkFiles {
  Q_DECLARE_TR_FUNCTIONS(wm::app::WorkFiles)
};

// As a text may have, and what a picture may.
constexpr qint64 largest_text = 16 << 20, largest_picture = 16 << 20;

Expected<QByteArray> contents(const QString& path, qint64 largest) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    return tl::unexpected(Problem{path.toStdString(), file.errorString().toStdString(),
                                  WorkFiles::tr("Choose a file that can be read").toStdString()});
  if (file.size() > largest)
    return tl::unexpected(Problem{path.toStdString(),
                                  WorkFiles::tr("The file has more than 16 MiB").toStdString(),
                                  WorkFiles::tr("Choose a smaller one").toStdString()});
  return file.readAll();
}

Expected<void> write_whole(const QString& path, const QByteArray& bytes) {
  QSaveFile file(path);
  if (file.open(QIODevice::WriteOnly) && file.write(bytes) >= 0 && file.commit()) return {};
  return tl::unexpected(
      Problem{path.toStdString(), file.errorString().toStdString(),
              WorkFiles::tr("Choose a place where you may write and that is not full").toStdString()});
}

/// A name that stays in its folder.
bool is_plain_name(const std::string& name) {
  const QString words = QString::fromStdString(name);
  return !words.isEmpty() && QFileInfo(words).fileName() == words && words != "." && words != ".." &&
         !words.contains('\\') && !words.contains(':');
}

}  // namespace

std::vector<std::string> pictures_named(const std::string& text) {
  constexpr std::string_view key = "picture:";
  std::vector<std::string> names;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    if (!line.starts_with(key)) continue;
    const std::string name = QString::fromStdString(line.substr(key.size())).trimmed().toStdString();
    if (std::ranges::find(names, name) == names.end()) names.push_back(name);
  }
  return names;
}

Expected<WorkFile> open_work_file(const QString& path) {
  const auto text = contents(path, largest_text);
  if (!text) return tl::unexpected(text.error());
  WorkFile bank{text->toStdString(), {}};
  const QDir folder = QFileInfo(path).dir();
  for (const std::string& name : pictures_named(bank.text)) {
    const QString beside = folder.filePath(QString::fromStdString(name));
    if (!is_plain_name(name) || !QFile::exists(beside)) continue;
    const auto picture = contents(beside, largest_picture);
    if (!picture) return tl::unexpected(picture.error());
    bank.pictures.push_back({name, picture->toBase64().toStdString()});
  }
  return bank;
}

Expected<void> save_work_file(const WorkFile& bank, const QString& path) {
  const QDir folder = QFileInfo(path).dir();
  for (const db::Enclosure& picture : bank.pictures) {
    const QString beside = folder.filePath(QString::fromStdString(picture.name));
    const auto there = is_plain_name(picture.name) && QFile::exists(beside)
                           ? contents(beside, largest_picture)
                           : Expected<QByteArray>(bytes_of(picture));
    if (is_plain_name(picture.name) && there && *there == bytes_of(picture)) continue;
    return tl::unexpected(Problem{beside.toStdString(),
                                  WorkFiles::tr("Another picture of this name is there").toStdString(),
                                  WorkFiles::tr("Save it in a folder of its own").toStdString()});
  }
  for (const db::Enclosure& picture : bank.pictures)
    if (auto written = write_whole(folder.filePath(QString::fromStdString(picture.name)), bytes_of(picture));
        !written)
      return written;
  return write_whole(path, QByteArray::fromStdString(bank.text));
}

}  // namespace wm::app
