#include "app/backups/backup_words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>
#include <algorithm>

#include "app/words/words.h"

namespace wm::app {
namespace {

struct BackupWords {
  Q_DECLARE_TR_FUNCTIONS(BackupWords)
};

}  // namespace

QString backup_reminder(Session& session) {
  const Backups& backups = session.backups();
  switch (backups.care()) {
    case BackupCare::fine:
      return {};
    case BackupCare::not_set_up:
      return session.store().details().demo_clock != 0
                 ? QString()
                 : BackupWords::tr("No backups are made of this shop. Please ask a manager to set them up.");
    case BackupCare::no_folder:
      return BackupWords::tr("The folder for backups can't be reached. Please ask a manager to look.");
    case BackupCare::none_yet:
      return BackupWords::tr("There is no backup yet. Please ask a manager to look.");
    case BackupCare::too_old:
      return BackupWords::tr("The last good backup is %n days old, of %1. Please ask a manager to look.", "",
                             backups.days_old())
          .arg(long_day(backups.files().front().made, session.zone()));
  }
  return {};
}

QString backup_file_words(const db::BackupFile& file) {
  return BackupWords::tr("%1, %2", "file, size")
      .arg(QFileInfo(QString::fromStdString(file.path)).fileName(),
           QLocale().formattedDataSize(file.bytes, 1, QLocale::DataSizeSIFormat));
}

QString backup_rhythm(int every_days) {
  if (every_days <= 0) return BackupWords::tr("only by hand");
  return every_days < 7 ? BackupWords::tr("each day") : BackupWords::tr("each week");
}

QString lost_words(const db::MissingCommit& commit, const db::Store& store, const RecordReader& reader) {
  QStringList sentences;
  for (const db::Entry& entry :
       std::ranges::equal_range(store.entries(), commit.number, {}, &db::Entry::commit))
    sentences << record_sentence(entry, reader);
  if (!sentences.isEmpty()) return sentences.join(' ');
  return BackupWords::tr("An entry that has been taken out since.");
}

}  // namespace wm::app
