#pragma once
// A shop's backups while the program is open: made by hand or by themselves, looked through, compared. All of
// it behind the window, by the path of the shop's file; what came of it is told on the thread of whoever
// asked.
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <functional>
#include <optional>
#include <vector>

#include "app/backups/settings.h"
#include "core/time/zone.h"
#include "db/backup/backup.h"

namespace wm::app {

/// Whether the desk must be told.
enum class BackupCare {
  fine,        // there is one that is young enough, or it is not known yet
  not_set_up,  // no folder was ever chosen
  no_folder,   // the folder cannot be looked into
  none_yet,    // nothing in it
  too_old      // the last is older than the shop's limit
};

class Backups : public QObject {
  Q_OBJECT
 public:
  /// `real_now`: the time of the world, also in a demo shop.
  Backups(std::string store, Zone zone, std::function<Instant()> real_now, QObject* parent = nullptr);
  /// A backup that is being made is finished first.
  ~Backups() override;

  /// From now on looks into the folder, and makes a backup whenever one is due.
  void start();
  const BackupSettings& settings() const { return settings_; }
  void set(const BackupSettings& settings);

  /// What is in the folder, the latest first; as last looked.
  const std::vector<db::BackupFile>& files() const { return files_; }
  /// What stood in the way the last time.
  const std::optional<Problem>& problem() const { return problem_; }
  bool making() const { return making_; }
  BackupCare care() const;
  /// Whole days since the last one was made; 0 where there is none.
  int days_old() const;

  /// Looks into the folder again.
  void look();
  /// `made` or `failed` tells what came of it.
  void back_up_now();
  /// What putting this one back would lose; `planned` tells.
  void plan(const std::string& backup);
  /// Asks whoever holds the shop open to close it and put this one back.
  void put_back(const std::string& backup) { emit put_back_wanted(QString::fromStdString(backup)); }

 signals:
  /// Something that the calls above tell is another now.
  void changed();
  /// By hand, not by itself.
  void made(const wm::db::BackupFile& file);
  void failed(const wm::Problem& problem);
  void planned(const std::string& backup, const wm::Expected<wm::db::RestorePlan>& plan);
  void put_back_wanted(const QString& backup);

 private:
  /// What a look or a backup comes to.
  struct Outcome {
    BackupSettings settings;  // as they were when it was asked for
    std::optional<std::vector<db::BackupFile>> files;
    std::optional<Problem> problem;
  };
  /// For a program that only looks at a shop nothing is made by itself.
  enum class Make { none, when_due, now };
  Outcome work(BackupSettings settings, Instant now, Make make) const;
  void begin(bool by_hand);
  void take(const Outcome& outcome, bool by_hand);

  const std::string store_;
  const Zone zone_;
  const std::function<Instant()> real_now_;
  const QString key_;
  BackupSettings settings_;
  std::vector<db::BackupFile> files_;
  std::optional<Problem> problem_;
  bool started_ = false, looking_ = false, making_ = false, looked_ = false, readable_ = false;
  QTimer again_;
  QThreadPool behind_;  // one thread: what is asked for first is done first
};

}  // namespace wm::app
