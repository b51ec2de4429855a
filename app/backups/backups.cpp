#include "app/backups/backups.h"

#include "app/backups/backup_head.h"

namespace wm::app {
namespace {

constexpr int again_ms = 10 * 60 * 1000;
constexpr std::int64_t day_seconds = 86400;

/// Days, not hours: the shop opens at about the same hour, a little earlier or later.
bool is_due(const std::vector<db::BackupFile>& files, int every_days, Instant now, const Zone& zone) {
  if (every_days <= 0) return false;
  return files.empty() || zone.day(now).number - zone.day(files.front().made).number >= every_days;
}

}  // namespace

Backups::Backups(std::string store, Zone zone, std::function<Instant()> real_now, QObject* parent)
    : QObject(parent),
      store_(std::move(store)),
      zone_(std::move(zone)),
      real_now_(std::move(real_now)),
      key_(shop_key(store_)),
      settings_(backup_settings(key_)) {
  behind_.setMaxThreadCount(1);
  again_.setInterval(again_ms);
  connect(&again_, &QTimer::timeout, this, [this] { begin(false); });
}

Backups::~Backups() {
  behind_.clear();
  behind_.waitForDone();
}

void Backups::start() {
  started_ = true;
  again_.start();
  begin(false);
}

void Backups::set(const BackupSettings& settings) {
  set_backup_settings(key_, settings);
  settings_ = settings;
  files_.clear();
  problem_.reset();
  looked_ = false;
  emit changed();
  begin(false);
}

void Backups::look() { begin(false); }
void Backups::back_up_now() { begin(true); }

/// Runs behind the window: it must touch nothing that changes.
Backups::Outcome Backups::work(BackupSettings settings, Instant now, Make make) const {
  Outcome outcome{std::move(settings), {}, {}};
  const std::string folder = outcome.settings.folder.toStdString();
  auto files = db::backups_in(store_, folder);
  if (!files) {
    outcome.problem = files.error();
    return outcome;
  }
  outcome.files = *files;
  const bool due = is_due(*files, outcome.settings.every_days, now, zone_);
  if (make == Make::none || (make == Make::when_due && !due)) return outcome;
  const auto made = db::back_up(store_, folder, now);
  if (!made) {
    outcome.problem = made.error();
    return outcome;
  }
  if (const auto kept = keep_backup_head(made->path, folder); !kept) outcome.problem = kept.error();
  if (auto after = db::backups_in(store_, folder)) outcome.files = *after;
  return outcome;
}

void Backups::begin(bool by_hand) {
  if (settings_.folder.isEmpty()) {
    looked_ = started_;
    emit changed();
    if (by_hand)
      emit failed({tr("folder").toStdString(), tr("No folder for backups has been chosen yet").toStdString(),
                   tr("Set the backups up first").toStdString()});
    return;
  }
  if (!by_hand && looking_) return;
  if (by_hand && making_) return;
  (by_hand ? making_ : looking_) = true;
  if (by_hand) emit changed();
  behind_.start([this, settings = settings_, by_hand, itself = started_, now = real_now_()] {
    const Outcome outcome = work(settings, now, by_hand ? Make::now : itself ? Make::when_due : Make::none);
    QMetaObject::invokeMethod(
        this, [this, outcome, by_hand] { take(outcome, by_hand); }, Qt::QueuedConnection);
  });
}

void Backups::take(const Outcome& outcome, bool by_hand) {
  (by_hand ? making_ : looking_) = false;
  if (outcome.settings != settings_) {
    begin(false);  // that was the folder before
  } else {
    looked_ = true;
    readable_ = outcome.files.has_value();
    files_ = outcome.files.value_or(std::vector<db::BackupFile>());
    problem_ = outcome.problem;
    emit changed();
  }
  if (!by_hand) return;
  if (outcome.problem)
    emit failed(*outcome.problem);
  else if (!outcome.files->empty())
    emit made(outcome.files->front());
}

void Backups::plan(const std::string& backup) {
  behind_.start([this, backup] {
    const auto plan = db::plan_restore(backup, store_);
    QMetaObject::invokeMethod(
        this, [this, backup, plan] { emit planned(backup, plan); }, Qt::QueuedConnection);
  });
}

int Backups::days_old() const {
  if (files_.empty()) return 0;
  return static_cast<int>((real_now_().seconds - files_.front().made.seconds) / day_seconds);
}

BackupCare Backups::care() const {
  if (!looked_) return BackupCare::fine;
  if (settings_.folder.isEmpty()) return BackupCare::not_set_up;
  if (!readable_) return BackupCare::no_folder;
  if (files_.empty()) return BackupCare::none_yet;
  return days_old() >= settings_.remind_days ? BackupCare::too_old : BackupCare::fine;
}

}  // namespace wm::app
