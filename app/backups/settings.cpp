#include "app/backups/settings.h"

#include <QCryptographicHash>
#include <QFileInfo>
#include <QSettings>

#include "db/sql/server.h"

namespace wm::app {

QString shop_key(const std::string& path) {
  const QByteArray place = db::is_on_server(path)
                               ? QByteArray::fromStdString(db::shown_name(path))
                               : QFileInfo(QString::fromStdString(path)).canonicalFilePath().toUtf8();
  return QCryptographicHash::hash(place, QCryptographicHash::Sha256).left(8).toHex();
}

BackupSettings backup_settings(const QString& shop_key) {
  QSettings kept;
  kept.beginGroup("backups/" + shop_key);
  BackupSettings settings;
  settings.folder = kept.value("folder").toString();
  settings.every_days = kept.value("every_days", settings.every_days).toInt();
  settings.remind_days = kept.value("remind_days", settings.remind_days).toInt();
  return settings;
}

void set_backup_settings(const QString& shop_key, const BackupSettings& settings) {
  QSettings kept;
  kept.beginGroup("backups/" + shop_key);
  kept.setValue("folder", settings.folder);
  kept.setValue("every_days", settings.every_days);
  kept.setValue("remind_days", settings.remind_days);
}

}  // namespace wm::app
