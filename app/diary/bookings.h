#pragma once
// The diary as the journal has it: one-on-ones, how they turned out, who waits, and the shop's units.
#include <QString>
#include <algorithm>
#include <optional>
#include <vector>

#include "app/session.h"
#include "core/diary/slots.h"

namespace wm::app {

/// A booking that stands, as known: neither cancelled, moved nor struck out, nor held and given up.
struct BookingLine {
  RecordId id;
  db::Booking booking;
  std::optional<db::Turnout> turnout;  // the latest
  /// The check-out signed for it, where it was booked for one: of the same person on the same class, from an
  /// hour before it begins to the end of the day on which it ends.
  std::optional<Checkout> signed_as;
  std::optional<db::SheetMarks> signed_sheet;  // the sheet of that
  bool held = false;                           // and not yet for certain

  /// How long it would be held if it were moved to begin at `from`; nothing where it is for certain.
  std::optional<Instant> held_to(Instant from) const {
    return held ? std::optional(std::min(*booking.held_through, from)) : std::nullopt;
  }
};

/// Those that overlap [from, to), in order of time.
std::vector<BookingLine> bookings(const Session& session, const Interval& within);

struct WaitingLine {
  RecordId id;
  db::Waiting waiting;
  Instant since;
};
/// The longest wait first.
std::vector<WaitingLine> waiting(const Session& session);
/// Somebody's place for that machine, in whatever mode.
std::optional<WaitingLine> waiting_of(const Session& session, const PersonId& person,
                                      const TargetName& target);

struct Unit {
  MachineId id;
  std::string machine_class;
  std::string label;  // "unit 2"; may be empty
};
/// In order of class, then label.
std::vector<Unit> units(const Session& session);
/// Empty where the shop has no such unit.
std::string class_of_unit(const Session& session, const MachineId& id);
/// "Jointer/planer, unit 2"
QString unit_label(const std::vector<Unit>& units, const MachineId& id);

/// "Jonas Lindqvist", by id.
QString name_of(const Session& session, const PersonId& id);
/// What somebody is called: a nickname, or the given name.
QString called(const Session& session, const PersonId& id);
/// Who assesses: "Mara Devlin", "Mara Devlin and Ivo Reyes".
QString names_of(const Session& session, const PersonId& assessor, const PersonId& second);
QString assessors_of(const Session& session, const db::Booking& booking);
/// "17:30–18:30"
QString time_span(const Interval& when, const Zone& zone);

}  // namespace wm::app
