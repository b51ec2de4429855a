#pragma once
// What every page stands on: the shop as it is known, who sits here, and the way in.
#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>
#include <unordered_map>

#include "app/backups/backups.h"
#include "core/decide/decider.h"
#include "db/floor.h"
#include "db/group_plan.h"
#include "db/import/plan.h"
#include "db/retention.h"
#include "db/store.h"

namespace wm::app {

/// One store, one station. Pages read answers from here and send commands here; they listen to `changed`.
class Session : public QObject {
  Q_OBJECT
 public:
  /// `station`: a folder of this computer's own, for what is begun and not entered yet; empty: nothing of
  /// that outlives the program.
  explicit Session(db::Store store, QString station = {}, QObject* parent = nullptr);

  const db::Store& store() const { return store_; }
  /// The shop as all that is known now says; as Store::current.
  Current& current() { return store_.current(); }
  const Zone& zone() const { return zone_; }
  const QString& station() const { return station_; }
  /// The shop's clock.
  Instant now() const { return store_.now(); }
  Backups& backups() { return backups_; }

  /// Who sits here, and as what; nobody at first.
  const std::optional<db::Person>& seated() const { return seated_; }
  std::optional<db::Role> role() const { return role_; }
  Expected<db::Role> sit_down(const PersonId& person, const std::string& pin);
  void hand_over();
  /// Whether that is their PIN, and their role; who sits here stays as it is.
  Expected<db::Role> check_pin(const PersonId& person, const std::string& pin) {
    return store_.sit_down(person, pin);
  }

  /// The day asked about, and what was known when: set once, followed by every page that shows a date.
  /// Nothing: now.
  std::optional<Instant> asked_at() const { return asked_at_; }
  std::optional<Instant> known() const { return known_; }
  void set_asked_at(std::optional<Instant> at);
  void set_known(std::optional<Instant> known);
  /// The instant that answers are about: asked_at, or now.
  Instant at() const { return asked_at_.value_or(now()); }
  /// What "now" is to a page that shows the present: as known then, the instant asked about.
  Instant present() const { return known_ ? at() : now(); }

  /// Somebody's details, and everybody's, as they were at `known()`.
  std::optional<db::Person> person(const PersonId& id) const { return store_.person(id, known_); }
  std::vector<db::Person> people() const { return known_ ? store_.people_known(*known_) : store_.people(); }

  /// As Store::joined and Store::role_of, at `known()`.
  PersonId joined(const PersonId& id) const { return store_.joined(id, known_); }
  std::optional<db::Role> role_of(const PersonId& id) const { return store_.role_of(id, known_); }
  /// Whether a record counted at `known()`: entered by then, and not struck out by then.
  bool counts(const db::Entry& entry) const;
  /// Whether it had been struck out by then.
  bool struck(const db::Entry& entry) const { return entry.voided && (!known_ || *entry.voided <= *known_); }

  /// As db::visits_that_may_go, db::plan_group and db::details_that_may_go.
  std::vector<db::VisitMayGo> visits_may_go() { return db::visits_that_may_go(store_); }
  db::GroupPlan plan_group(const db::GroupForm& form) { return db::plan_group(store_, form); }
  std::vector<db::MayGo> may_go() { return db::details_that_may_go(store_); }

  /// As Store::entry.
  const db::Entry* entry(const RecordId& id) const { return store_.entry(id); }

  /// As Store::start_now.
  db::StartNow start_now(const PersonId& person, const MachineId& machine, const TargetName& target) {
    return store_.start_now(person, machine, target);
  }
  /// As Store::permitted, for whoever sits here.
  Expected<void> permitted(const db::Action& action) const {
    return store_.permitted(seated_ ? seated_->id : PersonId(), action);
  }
  /// As Store's.
  Expected<void> still_stands(const RecordId& booking) { return store_.still_stands(booking); }
  bool two_check_out(const TargetName& target, Instant at) { return store_.two_check_out(target, at); }
  bool another_checks_out(const TargetName& target, Instant at) {
    return store_.another_checks_out(target, at);
  }

  /// The engine for `known()`, or for another. Its references are good until the next commit.
  Decider& decider() { return decider(known_); }
  Decider& decider(std::optional<Instant> known);

  /// Fills in id and `by`, commits, and says `changed` where something came of it. What a failing disk may
  /// have kept and comes again keeps its id, so that it is not entered a second time.
  Expected<db::Committed> commit(db::Action action, std::optional<Instant> at = std::nullopt,
                                 std::string note = {}, bool from_paper = false,
                                 std::optional<db::Second> second = std::nullopt);
  /// Several at once: all of them or none.
  Expected<db::Committed> commit_all(std::vector<db::Action> actions);
  /// The same, each with its own moment (nothing: now) and note.
  struct Dated {
    db::Action action;
    std::optional<Instant> at;
    std::string note;
  };
  Expected<db::Committed> commit_dated(std::vector<Dated> entries);
  /// As commit, for somebody at the quiz station, who enters it themselves, whoever sits at the desk.
  Expected<db::Committed> commit_at_station(const PersonId& member, db::Action action);
  /// Enters what files of the past hold: all of the plans, or nothing.
  Expected<db::Committed> take_in(const std::vector<db::import::ImportPlan>& plans);

 signals:
  /// A record was added, or a date set: ask again.
  void changed();
  /// As Store::clock_jump, whenever it has become another.
  void clock_jumped(qint64 seconds);
  /// Somebody sat down or left.
  void seated_changed();

 private:
  db::Store store_;
  QString station_;
  Zone zone_;
  Backups backups_;
  std::optional<db::Person> seated_;
  std::optional<db::Role> role_;
  std::optional<Instant> asked_at_, known_;
  std::vector<db::Command> unsure_;  // as Store::unsure; since one went well, or another sits here
  QTimer others_;
  void look_for_others();
  void look_at_clock();
  std::int64_t jump_ = 0;
  std::string id_for(const db::Command& command) const;
  Expected<db::Committed> enter(std::vector<db::Command> commands);
  db::Command here(db::Action action) const;

  std::unordered_map<std::int64_t, std::unique_ptr<Decider>> deciders_;  // of the past, by `known`
  std::int64_t decided_on_ = -1;                                         // the commit that they know of
};

}  // namespace wm::app
