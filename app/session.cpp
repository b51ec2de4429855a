#include "app/session.h"

#include <QUuid>
#include <algorithm>
#include <iterator>

namespace wm::app {
namespace {

/// How often other windows' entries are looked for: well within the second in which they should be seen.
constexpr int look_ms = 400;
/// The same where a server tells of them by itself: only whether it is still there.
constexpr int look_at_server_ms = 2000;

}  // namespace

Session::Session(db::Store store, QString station, QObject* parent)
    : QObject(parent),
      store_(std::move(store)),
      station_(std::move(station)),
      // The store has checked the zone's name when it was made; a system that lost the zone since is told by
      // UTC.
      zone_(Zone::named(store_.details().zone).value_or(Zone::utc())),
      backups_(store_.path(), zone_, [this] { return now() - store_.details().demo_clock; }) {
  // Not from within what the server's own driver is doing.
  const bool told = store_.listen(
      [this] { QMetaObject::invokeMethod(this, &Session::look_for_others, Qt::QueuedConnection); });
  others_.setInterval(told ? look_at_server_ms : look_ms);
  connect(&others_, &QTimer::timeout, this, &Session::look_for_others);
  connect(&others_, &QTimer::timeout, this, &Session::look_at_clock);
  others_.start();
}

Expected<db::Role> Session::sit_down(const PersonId& person, const std::string& pin) {
  auto role = store_.sit_down(person, pin);
  if (!role) return role;
  seated_ = store_.person(person);
  role_ = *role;
  emit seated_changed();
  return role;
}

void Session::hand_over() {
  seated_.reset();
  role_.reset();
  unsure_.clear();
  emit seated_changed();
}

bool Session::counts(const db::Entry& entry) const { return db::counts(entry, known_); }

void Session::set_asked_at(std::optional<Instant> at) {
  if (at == asked_at_) return;
  asked_at_ = at;
  emit changed();
}

void Session::set_known(std::optional<Instant> known) {
  if (known == known_) return;
  known_ = known;
  emit changed();
}

void Session::look_for_others() {
  if (store_.refresh().value_or(false)) emit changed();
}

void Session::look_at_clock() {
  const std::int64_t jump = store_.clock_jump();
  // A clock that is wrong runs on: only by how much it is wrong is told.
  if (jump == jump_ || (jump != 0 && jump_ != 0 && std::abs(jump - jump_) < 60)) return;
  jump_ = jump;
  emit clock_jumped(jump);
}

Decider& Session::decider(std::optional<Instant> known) {
  if (!known) return store_.current().decider();
  // Another program at the same file may have committed since, too.
  if (const auto last = store_.last_commit(); last != decided_on_) {
    deciders_.clear();
    decided_on_ = last;
  }
  auto& kept = deciders_[known->seconds];
  if (!kept) kept = std::make_unique<Decider>(store_.shop(known), known);
  return *kept;
}

std::string Session::id_for(const db::Command& command) const {
  for (const db::Command& unsure : unsure_) {
    db::Command again = command;
    again.id = unsure.id;
    if (again == unsure) return again.id;
  }
  return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
}

Expected<db::Committed> Session::commit(db::Action action, std::optional<Instant> at, std::string note,
                                        bool from_paper, std::optional<db::Second> second) {
  db::Command command = here(std::move(action));
  command.at = at;
  command.from_paper = from_paper;
  command.note = std::move(note);
  command.second = std::move(second);
  return enter({std::move(command)});
}

Expected<db::Committed> Session::commit_all(std::vector<db::Action> actions) {
  std::vector<db::Command> commands;
  for (db::Action& each : actions) commands.push_back(here(std::move(each)));
  return enter(std::move(commands));
}

Expected<db::Committed> Session::commit_dated(std::vector<Dated> entries) {
  std::vector<db::Command> commands;
  for (Dated& each : entries) {
    commands.push_back(here(std::move(each.action)));
    commands.back().at = each.at;
    commands.back().note = std::move(each.note);
  }
  return enter(std::move(commands));
}

/// Of whoever sits here.
db::Command Session::here(db::Action action) const {
  db::Command command;
  if (seated_) command.by = seated_->id;
  command.quiz_station = role_ == db::Role::quiz_station;
  command.action = std::move(action);
  return command;
}

Expected<db::Committed> Session::commit_at_station(const PersonId& member, db::Action action) {
  db::Command command;
  command.by = member;
  command.quiz_station = true;
  command.action = std::move(action);
  return enter({std::move(command)});
}

Expected<db::Committed> Session::enter(std::vector<db::Command> commands) {
  for (db::Command& each : commands) each.id = id_for(each);
  auto done = commands.size() == 1 ? store_.commit(commands.front()) : store_.commit_all(commands);
  if (!done) {
    if (store_.unsure()) std::ranges::move(commands, std::back_inserter(unsure_));
    return done;
  }
  // Where the same comes once more after this, it is meant a second time.
  unsure_.clear();
  emit changed();
  return done;
}

Expected<db::Committed> Session::take_in(const std::vector<db::import::ImportPlan>& plans) {
  auto done = db::import::run(plans, store_);
  if (done) emit changed();
  return done;
}

}  // namespace wm::app
