#include "app/diary/bookings.h"

#include <algorithm>
#include <map>
#include <unordered_map>
#include <unordered_set>

#include "app/words/words.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

/// Everything of a kind that counts, as known, in order.
template <class T, class Take>
void each_of(const Session& session, std::string_view kind, const Take& take) {
  for (const db::Entry* entry : session.store().of_kind(kind))
    if (session.counts(*entry)) take(*entry, *db::as<T>(entry->fact));
}

/// What other entries say of bookings and check-outs.
struct Said {
  std::unordered_set<RecordId> over, confirmed;  // cancelled or moved; for certain
  std::unordered_map<RecordId, db::Turnout> turnout;
  std::unordered_map<RecordId, const db::SheetMarks*> sheet_of_checkout;
};

Said said(const Session& session) {
  Said out;
  each_of<db::Cancel>(session, "cancel", [&](const auto&, const auto& f) { out.over.insert(f.booking); });
  each_of<db::Booking>(session, "booking",
                       [&](const auto&, const auto& f) { out.over.insert(f.instead_of); });
  each_of<db::Confirmed>(session, "confirmed",
                         [&](const auto&, const auto& f) { out.confirmed.insert(f.booking); });
  each_of<db::Attendance>(session, "attendance",
                          [&](const auto&, const auto& f) { out.turnout[f.booking] = f.turnout; });
  each_of<db::SheetMarks>(session, "marks",
                          [&](const auto&, const auto& f) { out.sheet_of_checkout[f.checkout] = &f; });
  return out;
}

/// Whether a check-out signed on `machine` at `at` is what the booking was for.
bool signed_for(const BookingLine& line, const Checkout& checkout, const std::string& machine_class,
                Instant at, const Zone& zone) {
  return line.booking.purpose == db::Purpose::check_out && checkout.person == line.booking.person &&
         class_of(line.booking.target) == machine_class && at >= line.booking.from - 3600 &&
         zone.day(at) <= zone.day(line.booking.to);
}

void add_signatures(std::vector<BookingLine>& lines, const Session& session, const Said& said) {
  std::unordered_map<MachineId, std::string> classes;
  for (const Unit& unit : units(session)) classes[unit.id] = unit.machine_class;
  each_of<Checkout>(session, "checkout", [&](const db::Entry& entry, const Checkout& checkout) {
    const auto sheet = said.sheet_of_checkout.find(entry.id);
    if (sheet == said.sheet_of_checkout.end()) return;
    for (BookingLine& line : lines)
      if (signed_for(line, checkout, classes[sheet->second->machine], entry.at, session.zone())) {
        line.signed_as = checkout;
        line.signed_sheet = *sheet->second;
      }
  });
}

}  // namespace

std::vector<BookingLine> bookings(const Session& session, const Interval& within) {
  const Said by_id = said(session);
  std::vector<BookingLine> lines;
  each_of<db::Booking>(session, "booking", [&](const db::Entry& entry, const db::Booking& booking) {
    if (by_id.over.contains(entry.id) || !overlap({booking.from, booking.to}, within)) return;
    const bool confirmed = by_id.confirmed.contains(entry.id);
    if (db::given_up(booking, confirmed, session.present())) return;
    BookingLine line{entry.id, booking, {}, {}, {}, booking.held_through && !confirmed};
    if (const auto turnout = by_id.turnout.find(entry.id); turnout != by_id.turnout.end())
      line.turnout = turnout->second;
    lines.push_back(std::move(line));
  });
  std::stable_sort(lines.begin(), lines.end(), [](const BookingLine& a, const BookingLine& b) {
    return std::tie(a.booking.from, a.booking.machine) < std::tie(b.booking.from, b.booking.machine);
  });
  if (!lines.empty()) add_signatures(lines, session, by_id);
  return lines;
}

std::vector<WaitingLine> waiting(const Session& session) {
  std::unordered_set<RecordId> over;
  each_of<db::WaitingEnd>(session, "waiting_end",
                          [&](const auto&, const auto& f) { over.insert(f.waiting); });
  std::vector<WaitingLine> lines;
  each_of<db::Waiting>(session, "waiting", [&](const db::Entry& entry, const db::Waiting& place) {
    if (!over.contains(entry.id)) lines.push_back({entry.id, place, entry.at});
  });
  std::stable_sort(lines.begin(), lines.end(),
                   [](const WaitingLine& a, const WaitingLine& b) { return a.since < b.since; });
  return lines;
}

std::optional<WaitingLine> waiting_of(const Session& session, const PersonId& person,
                                      const TargetName& target) {
  const PersonId them = session.joined(person);
  for (const WaitingLine& line : waiting(session))
    if (session.joined(line.waiting.person) == them && class_of(line.waiting.target) == class_of(target))
      return line;
  return std::nullopt;
}

std::vector<Unit> units(const Session& session) {
  std::map<MachineId, Unit> by_id;  // the latest that was said of each
  each_of<db::MachineAdded>(session, "machine_added", [&](const auto&, const auto& f) {
    by_id[f.machine] = {f.machine, f.machine_class, f.label};
  });
  std::vector<Unit> out;
  for (auto& [id, unit] : by_id) out.push_back(std::move(unit));
  std::stable_sort(out.begin(), out.end(), [](const Unit& a, const Unit& b) {
    return std::tie(a.machine_class, a.label) < std::tie(b.machine_class, b.label);
  });
  return out;
}

std::string class_of_unit(const Session& session, const MachineId& id) {
  for (const Unit& unit : units(session))
    if (unit.id == id) return unit.machine_class;
  return {};
}

QString unit_label(const std::vector<Unit>& units, const MachineId& id) {
  for (const Unit& unit : units) {
    if (unit.id != id) continue;
    const QString machine = class_label(unit.machine_class);
    const QString label = QString::fromStdString(unit.label);
    // A label that names the machine already stands by itself.
    if (label.isEmpty() || label.startsWith(machine, Qt::CaseInsensitive))
      return label.isEmpty() ? machine : label;
    return QObject::tr("%1, %2", "a machine and its unit").arg(machine, label);
  }
  return QString::fromStdString(id);
}

QString name_of(const Session& session, const PersonId& id) { return person_name(session.person(id)); }

QString names_of(const Session& session, const PersonId& assessor, const PersonId& second) {
  const QString first = name_of(session, assessor);
  return second.empty() ? first
                        : QObject::tr("%1 and %2", "two assessors").arg(first, name_of(session, second));
}

QString assessors_of(const Session& session, const db::Booking& booking) {
  return names_of(session, booking.assessor, booking.second);
}

QString called(const Session& session, const PersonId& id) {
  const auto person = session.person(id);
  if (person && !person->nickname.empty()) return QString::fromStdString(person->nickname);
  if (person && !person->given.empty()) return QString::fromStdString(person->given);
  return person_name(person);
}

QString time_span(const Interval& when, const Zone& zone) {
  return QObject::tr("%1–%2", "from a time to a time")
      .arg(clock_time(when.from, zone), clock_time(when.to, zone));
}

}  // namespace wm::app
