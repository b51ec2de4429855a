#include "app/desk/shop_now.h"

#include <algorithm>
#include <set>

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
    finish();
    return std::move(shop_);
  }

 private:
  template <class T>
  void take(const db::Entry&, const T&) {}

  bool today(Instant t) const { return session_.zone().day(t) == today_; }

  void take(const db::Entry& entry, const db::Booking& booking) {
    if (today(booking.from)) shop_.due.push_back({entry.id, booking, std::nullopt, false});
    over_.insert(booking.instead_of);
  }
  void take(const db::Entry&, const db::Cancel& cancel) { over_.insert(cancel.booking); }
  void take(const db::Entry&, const db::Confirmed& confirmed) { confirmed_.insert(confirmed.booking); }
  void take(const db::Entry&, const db::Attendance& attendance) {
    turnout_[attendance.booking] = attendance.turnout;
  }
  void take(const db::Entry& entry, const db::Presence& presence) {
    if (today(entry.at) && entry.at <= now_) presence_[presence.person] = presence;
  }
  void take(const db::Entry&, const db::MachineAdded& unit) { shop_.units[unit.machine] = unit; }
  void take(const db::Entry&, const db::Tag& tag) { tags_[tag.lockout] = tag; }
  void take(const db::Entry& entry, const Lockout& lockout) {
    if (entry.at <= now_)
      lockouts_.push_back({entry.id, {lockout.machine, entry.at, entry.entered_by, std::nullopt}});
  }
  void take(const db::Entry& entry, const db::Started& started) {
    if (entry.at <= now_) shop_.at_machines.push_back({entry.id, started, entry.at});
  }
  void take(const db::Entry& entry, const db::Left& left) {
    if (entry.at <= now_) over_.insert(left.started);
  }
  void take(const db::Entry&, const Release& release) { released_.insert(release.lockout); }
  void take(const db::Entry& entry, const Checkout& checkout) {
    if (today(entry.at)) signed_today_.insert(checkout.person);
  }

  void finish() {
    std::erase_if(shop_.due, [&](const Due& due) {
      return over_.contains(due.id) || db::given_up(due.booking, confirmed_.contains(due.id), now_);
    });
    std::sort(shop_.due.begin(), shop_.due.end(), [](const Due& a, const Due& b) {
      return std::tie(a.booking.from, a.id) < std::tie(b.booking.from, b.id);
    });
    for (Due& due : shop_.due) finish(due);
    for (const auto& [person, presence] : presence_) {
      if (!presence.in) continue;
      shop_.present.push_back(person);
      if (presence.staff) shop_.staff.push_back(person);
    }
    for (auto& [id, out] : lockouts_) {
      if (released_.contains(id)) continue;
      if (const auto tag = tags_.find(id); tag != tags_.end()) out.tag = tag->second;
      shop_.out.push_back(out);
    }
    std::erase_if(shop_.at_machines, [&](const AtMachine& at) { return over_.contains(at.id); });
  }

  void finish(Due& due) {
    if (const auto found = turnout_.find(due.id); found != turnout_.end()) due.turnout = found->second;
    due.check_out_signed =
        due.booking.purpose != db::Purpose::check_out || signed_today_.contains(due.booking.person);
    const bool under_way = due.booking.from <= now_ && now_ < due.booking.to;
    if (!under_way || !due.turnout || *due.turnout == db::Turnout::not_come) return;
    shop_.together.emplace_back(due.booking.person, due.booking.assessor);
  }

  const Session& session_;
  const Instant now_;
  const Day today_;
  ShopNow shop_;
  // Cancelled, moved or left; for certain; taken off.
  std::set<RecordId> over_, confirmed_, released_;
  std::map<RecordId, db::Turnout> turnout_;
  std::map<PersonId, db::Presence> presence_;
  std::map<RecordId, db::Tag> tags_;
  std::vector<std::pair<RecordId, OutOfService>> lockouts_;
  std::set<PersonId> signed_today_;
};

}  // namespace

bool ShopNow::is_present(const PersonId& person) const {
  return std::binary_search(present.begin(), present.end(), person);
}

std::vector<PersonId> ShopNow::busy_for(const PersonId& person) const {
  std::vector<PersonId> busy;
  for (const auto& [member, assessor] : together)
    if (member != person) busy.insert(busy.end(), {member, assessor});
  for (const AtMachine& at : at_machines) busy.insert(busy.end(), {at.started.person, at.started.supervisor});
  return busy;
}

const AtMachine* ShopNow::machine_of(const PersonId& person) const {
  const auto found = std::find_if(at_machines.begin(), at_machines.end(), [&](const AtMachine& at) {
    return at.started.person == person || at.started.supervisor == person;
  });
  return found == at_machines.end() ? nullptr : &*found;
}

const AtMachine* ShopNow::in_use(const MachineId& machine) const {
  const auto found = std::find_if(at_machines.begin(), at_machines.end(),
                                  [&](const AtMachine& at) { return at.started.machine == machine; });
  return found == at_machines.end() ? nullptr : &*found;
}

QString ShopNow::unit_label(const MachineId& machine) const {
  const auto unit = units.find(machine);
  if (unit == units.end() || unit->second.label.empty()) return QString::fromStdString(machine);
  return QString::fromStdString(unit->second.label);
}

ShopNow shop_now(const Session& session) { return Reader(session).read(); }

}  // namespace wm::app
