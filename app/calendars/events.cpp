#include "app/calendars/events.h"

#include <algorithm>
#include <map>
#include <set>

#include "app/calendars/tr.h"
#include "app/diary/bookings.h"
#include "app/diary/diary_rows.h"
#include "app/lists/answer_reader.h"
#include "app/words/standing_words.h"
#include "app/words/words.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

using calendar::CalendarEvent;

/// A booking with all that it was moved to, under the id of the first.
struct Chain {
  RecordId first;
  std::vector<const db::Entry*> bookings;
  int entered = -1;  // how much was entered about it since the first booking, strike-outs too
};

/// Chains of all bookings, and who of them stands.
class Chains {
 public:
  explicit Chains(const Session& session) : session_(session) {
    for (const char* kind : {"booking", "confirmed", "cancel"})
      for (const db::Entry* entry : session.store().of_kind(kind)) add(*entry);
  }

  const std::map<RecordId, Chain>& all() const { return all_; }
  /// The latest that was not struck out is what holds; if it was called off or moved, nothing does.
  const db::Entry* standing(const Chain& chain) const {
    const db::Entry* latest = nullptr;
    for (const db::Entry* entry : chain.bookings)
      if (!entry->voided) latest = entry;
    return latest && !over_.contains(latest->id) && !is_given_up(*latest) ? latest : nullptr;
  }
  /// How often it has changed: by what was entered, and by every hold that ran out unconfirmed.
  int changes(const Chain& chain) const {
    return chain.entered + static_cast<int>(std::ranges::count_if(
                               chain.bookings, [&](const db::Entry* each) { return is_given_up(*each); }));
  }
  bool is_held(const db::Entry& entry) const {
    return db::as<db::Booking>(entry.fact)->held_through && !confirmed_.contains(entry.id);
  }

 private:
  bool is_given_up(const db::Entry& booking) const {
    return db::given_up(*db::as<db::Booking>(booking.fact), confirmed_.contains(booking.id), session_.now());
  }
  void add(const db::Entry& entry) {
    const auto* booking = db::as<db::Booking>(entry.fact);
    const auto* cancel = db::as<db::Cancel>(entry.fact);
    const auto* confirmed = db::as<db::Confirmed>(entry.fact);
    const RecordId about = booking ? booking->instead_of : cancel ? cancel->booking : confirmed->booking;
    const RecordId first = about.empty() ? entry.id : first_of_.at(about);
    Chain& chain = all_[first];
    chain.first = first;
    chain.entered += entry.voided ? 2 : 1;
    if (booking) {
      first_of_[entry.id] = first;
      chain.bookings.push_back(&entry);
    }
    if (!entry.voided && cancel) over_.insert(cancel->booking);
    if (!entry.voided && confirmed) confirmed_.insert(confirmed->booking);
  }

  const Session& session_;
  std::map<RecordId, Chain> all_;
  std::map<RecordId, RecordId> first_of_;
  std::set<RecordId> over_, confirmed_;
};

bool is_theirs(const Session& session, const db::Booking& b, const Whose& whose) {
  if (const auto* unit = std::get_if<OfUnit>(&whose)) return b.machine == unit->unit;
  const PersonId& person = std::get<OfPerson>(whose).person;
  const auto is_them = [&](const PersonId& each) {
    return !each.empty() && session.store().joined(each) == person;
  };
  return is_them(b.person) || is_them(b.assessor) || is_them(b.second);
}

/// Letters and figures alone, so that it can stand behind the "@" of a UID.
std::string plain(const std::string& name) {
  std::string out;
  for (const char c : name)
    if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9')) out += c;
  return out;
}

CalendarEvent event(Session& session, const Chain& chain, const db::Entry& shown, int sequence,
                    bool cancelled, bool held) {
  const db::Booking& b = *db::as<db::Booking>(shown.fact);
  CalendarEvent out;
  out.uid = chain.first + "@" + plain(session.store().details().name) + ".witnessmark.invalid";
  out.sequence = sequence;
  out.cancelled = cancelled;
  out.tentative = held && !cancelled;
  out.when = {b.from, b.to};
  out.summary = CalendarWords::tr("%1: %2 with %3", "what for, member, assessor")
                    .arg(target_label(b.target), name_of(session, b.person), assessors_of(session, b))
                    .toStdString();
  QStringList said{CalendarWords::tr("One-on-one, %1.", "purpose").arg(purpose_words(b.purpose))};
  if (!b.second.empty())
    said << CalendarWords::tr("Witnessed by two assessors: %1.", "their names").arg(assessors_of(session, b));
  if (!cancelled) said << restricted_sentence(restricted_now(session, b.person, b.target));
  said << caution();
  said.removeAll({});
  out.description = said.join(' ').toStdString();
  out.place =
      (unit_label(units(session), b.machine) + ", " + QString::fromStdString(session.store().details().name))
          .toStdString();
  return out;
}

std::string written(const Session& session, const Whose& whose, calendar::Method method,
                    std::vector<CalendarEvent> events) {
  calendar::CalendarFile file;
  file.method = method;
  file.name = whose_words(session, whose).toStdString();
  file.organizer = "mailto:desk@" + plain(session.store().details().name) + ".invalid";
  file.written = session.now();
  file.events = std::move(events);
  return calendar::write_calendar(file);
}

}  // namespace

std::vector<CalendarEvent> events_of(Session& session, const Whose& whose) {
  const Chains chains(session);
  std::vector<CalendarEvent> out;
  for (const auto& [first, chain] : chains.all()) {
    const db::Entry* stands = chains.standing(chain);
    const db::Entry& shown = stands ? *stands : *chain.bookings.back();
    // Who was in it before a move and is no longer has it called off.
    const bool theirs = is_theirs(session, *db::as<db::Booking>(shown.fact), whose);
    const bool once = std::ranges::any_of(chain.bookings, [&](const db::Entry* each) {
      return is_theirs(session, *db::as<db::Booking>(each->fact), whose);
    });
    // One that was moved to a time that is over is still in calendars at the one before.
    const bool to_come = std::ranges::any_of(chain.bookings, [&](const db::Entry* each) {
      return db::as<db::Booking>(each->fact)->to > session.now();
    });
    if (once && to_come)
      out.push_back(event(session, chain, shown, chains.changes(chain), !stands || !theirs,
                          stands && chains.is_held(*stands)));
  }
  std::ranges::stable_sort(out, {}, [](const CalendarEvent& each) { return each.when.from; });
  return out;
}

QString whose_words(const Session& session, const Whose& whose) {
  if (const auto* unit = std::get_if<OfUnit>(&whose)) return unit_label(units(session), unit->unit);
  return name_of(session, std::get<OfPerson>(whose).person);
}

std::string published(Session& session, const Whose& whose) {
  return written(session, whose, calendar::Method::publish, events_of(session, whose));
}

std::string called_off(Session& session, const Whose& whose) {
  std::vector<CalendarEvent> events = events_of(session, whose);
  std::erase_if(events, [](const CalendarEvent& each) { return !each.cancelled; });
  return events.empty() ? std::string()
                        : written(session, whose, calendar::Method::cancel, std::move(events));
}

}  // namespace wm::app
