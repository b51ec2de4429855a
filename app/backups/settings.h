#pragma once
// How a shop's backups are made at this computer: kept in the program's own settings, one set for each shop's
// file.
#include <QString>
#include <string>

namespace wm::app {

struct BackupSettings {
  QString folder;       // empty: not set up
  int every_days = 1;   // the program makes one by itself after so many days; 0: only by hand
  int remind_days = 3;  // after so many days without one the desk is told
  friend bool operator==(const BackupSettings&, const BackupSettings&) = default;
};

/// A short name for a shop's file by its place, the same however the path is written.
QString shop_key(const std::string& path);
BackupSettings backup_settings(const QString& shop_key);
void set_backup_settings(const QString& shop_key, const BackupSettings& settings);

}  // namespace wm::app
