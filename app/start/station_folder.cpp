#include "app/start/station_folder.h"

#include <QDir>
#include <QStandardPaths>

#include "app/backups/settings.h"

namespace wm::app {

QString station_folder(const std::string& store) {
  const QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation));
  QString own = folder.filePath("station-" + shop_key(store));
  QDir().mkpath(own);
  return own;
}

}  // namespace wm::app
