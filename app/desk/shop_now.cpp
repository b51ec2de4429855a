#include "app/desk/shop_now.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>

#include "app/diary/bookings.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

class Reader {
 public:
  explicit Reader(const Session& session)
      : session_(session), now_(session.present()), today_(session.zone().day(now_)) {}

  ShopNow read() {
    for (const db::Entry& entry : session_.store().entries()) {
      if (!session_.counts(entry)) continue;
      if (const auto* fact = std::get_if<db::ShopFact>(&entry.fact))
        std::visit([&](const auto& f) { take(entry, f); }, *fact);
      else
        std::visit([&](const auto& f) { take(entry, f); }, std::get<Fact>(entry.fact));
    }
    static_cast<db::Floor&>(shop_) = session_.store().floor(now_, session_.known());
    shop_.out = session_.store().locks_on(now_, session_.known());
    finish();
    return std::move(shop_);
  }

 private:
  template <class T>
  void take(const db::Entry&, const T&) {}

  bool today(Instant t) const { return session_.zone().day(t) == today_; }

  void take(const db::Entry& entry, const db::Booking& booking) {
    if (today(booking.from)) shop_.due.push_back({entry.id, booking, std::nullopt, {}});
    over_.insert(booking.instead_of);
  }
  void take(const db::Entry&, const db::Cancel& cancel) { over_.insert(cancel.booking); }
  void take(const db::Entry&, const db::Confirmed& confirmed) { confirmed_.insert(confirmed.booking); }
  void take(const db::Entry& entry, const db::Attendance& attendance) {
    turnout_[attendance.booking] = {attendance.turnout, entry.id};
  }
  void take(const db::Entry&, const db::MachineAdded& unit) { shop_.units[unit.machine] = unit; }

  void finish() {
    std::erase_if(shop_.due, [&](const Due& due) {
      return over_.contains(due.id) ||
             (given_up(due) && !db::may_still_come(due.booking, confirmed_.contains(due.id), now_));
    });
    std::set<RecordId> lost;
    for (const Due& due : shop_.due)
      if (given_up(due) && given_to_another(due)) lost.insert(due.id);
    std::erase_if(shop_.due, [&](const Due& due) { return lost.contains(due.id); });
    std::sort(shop_.due.begin(), shop_.due.end(), [](const Due& a, const Due& b) {
      return std::tie(a.booking.from, a.id) < std::tie(b.booking.from, b.id);
    });
    for (const BookingLine& line :
         bookings(session_, {session_.zone().start(today_), session_.zone().start(today_ + 2)}))
      if (line.signed_as) signed_.insert(line.id);
    for (Due& due : shop_.due) finish(due);
  }

  bool given_up(const Due& due) const { return db::given_up(due.booking, confirmed_.contains(due.id), now_); }

  /// Whether the time of what was held until it began has gone to somebody else since.
  bool given_to_another(const Due& due) const {
    std::set<PersonId> theirs;
    for (const PersonId& each : db::everybody_in(due.booking)) theirs.insert(session_.joined(each));
    return std::ranges::any_of(shop_.due, [&](const Due& other) {
      const auto turnout = turnout_.find(other.id);
      const bool stayed_away = turnout != turnout_.end() && turnout->second.first == db::Turnout::not_come;
      if (given_up(other) || stayed_away ||
          !overlap({other.booking.from, other.booking.to}, {due.booking.from, due.booking.to}))
        return false;
      return other.booking.machine == due.booking.machine ||
             std::ranges::any_of(db::everybody_in(other.booking), [&](const PersonId& each) {
               return theirs.contains(session_.joined(each));
             });
    });
  }

  void finish(Due& due) {
    due.held = due.booking.held_through && !confirmed_.contains(due.id);
    if (const auto found = turnout_.find(due.id); found != turnout_.end())
      std::tie(due.turnout, due.marked) = found->second;
    due.check_out_signed = due.booking.purpose != db::Purpose::check_out || signed_.contains(due.id);
  }

  const Session& session_;
  const Instant now_;
  const Day today_;
  ShopNow shop_;
  std::set<RecordId> over_, confirmed_;  // cancelled or moved; for certain
  std::map<RecordId, std::pair<db::Turnout, RecordId>> turnout_;
  std::set<RecordId> signed_;  // whose check-out is
};

}  // namespace

bool ShopNow::is_present(const PersonId& person) const {
  return std::binary_search(present.begin(), present.end(), person);
}

const db::AtMachine* ShopNow::machine_of(const PersonId& person) const {
  const auto found = std::find_if(at_machines.begin(), at_machines.end(), [&](const db::AtMachine& at) {
    return at.person == person || at.supervisor == person;
  });
  return found == at_machines.end() ? nullptr : &*found;
}

std::vector<db::AtMachine> ShopNow::machines_of(const PersonId& person) const {
  std::vector<db::AtMachine> found;
  std::ranges::copy_if(at_machines, std::back_inserter(found), [&](const db::AtMachine& at) {
    return at.person == person || at.supervisor == person;
  });
  return found;
}

const db::AtMachine* ShopNow::in_use(const MachineId& machine) const {
  const auto found = std::find_if(at_machines.begin(), at_machines.end(),
                                  [&](const db::AtMachine& at) { return at.machine == machine; });
  return found == at_machines.end() ? nullptr : &*found;
}

QString ShopNow::unit_label(const MachineId& machine) const {
  const auto unit = units.find(machine);
  if (unit == units.end() || unit->second.label.empty()) return QString::fromStdString(machine);
  return QString::fromStdString(unit->second.label);
}

ShopNow shop_now(const Session& session) { return Reader(session).read(); }

}  // namespace wm::app
