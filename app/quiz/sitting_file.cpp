#include "app/quiz/sitting_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include "app/quiz/tr.h"
#include "db/sql/place.h"

namespace wm::app {

SittingFile::SittingFile(const QString& folder)
    : path_(folder.isEmpty() ? QString() : QDir(folder).filePath("quiz.json")) {}

Expected<void> SittingFile::take() {
  if (path_.isEmpty() || lock_) return {};
  auto lock = std::make_unique<QLockFile>(path_ + ".lock");
  // Only a program that is gone leaves a lock that may be taken over, not one that is merely old.
  lock->setStaleLockTime(0);
  if (!lock->tryLock(0))
    return tl::unexpected(
        Problem{path_.toStdString(),
                QuizWords::tr("Somebody takes a quiz in another window of this computer").toStdString(),
                QuizWords::tr("Go on there, or wait for its end").toStdString()});
  lock_ = std::move(lock);
  return {};
}

SittingFile::Found SittingFile::read(Instant now) const {
  QFile file(path_);
  if (path_.isEmpty() || !file.exists()) return {};
  const auto state = file.open(QFile::ReadOnly) ? sitting_state(file.readAll()) : std::nullopt;
  file.close();
  if (state) return {state, {}};
  const QString aside = put_aside(now);
  return {
      {},
      Problem{aside.toStdString(),
              QuizWords::tr("What was answered at this station could not be read").toStdString(),
              QuizWords::tr("Identify yourself again: the same questions come once more, with the time that "
                            "is left. The file was kept")
                  .toStdString()}};
}

QString SittingFile::put_aside(Instant now) const {
  QString aside = path_ + "." + QString::number(now.seconds) + ".unreadable";
  for (int i = 2; QFile::exists(aside); ++i)
    aside = path_ + "." + QString::number(now.seconds) + "-" + QString::number(i) + ".unreadable";
  QFile::rename(path_, aside);
  return aside;
}

std::optional<Problem> SittingFile::write(const SittingState& state) const {
  if (path_.isEmpty()) return std::nullopt;
  QSaveFile file(path_);
  const QByteArray text = to_json(state);
  // commit() brings the file to the disk before it gets its name; the name is brought there after it.
  if (file.open(QFile::WriteOnly) && file.write(text) == text.size() && file.commit() &&
      db::sync_folder(QFileInfo(path_).path().toStdString()))
    return std::nullopt;
  return Problem{path_.toStdString(),
                 QuizWords::tr("The answers are not kept if the program ends now: %1")
                     .arg(file.errorString())
                     .toStdString(),
                 QuizWords::tr("Go on to the end, and tell the desk to make room on the disk").toStdString()};
}

void SittingFile::drop() const {
  if (path_.isEmpty()) return;
  QFile::remove(path_);
  (void)db::sync_folder(QFileInfo(path_).path().toStdString());
}

}  // namespace wm::app
