// Machines, assessors' hours and bookings: small files with one kind of row each.
#include <array>

#include "core/time/text.h"
#include "db/import/rows.h"

namespace wm::db::import {
namespace {

/// Nothing where it is here already.
std::vector<Command> enter_once(RowReader& row, const std::string& content, std::optional<Instant> at,
                                ShopFact fact) {
  const RecordId id = content_id(content);
  if (row.ground().records.contains(id)) return {};
  return {command(row, id, at, EnterShopFact{std::move(fact)})};
}

std::vector<Command> plan_machine(RowReader& row) {
  const MachineAdded machine{row.needed("machine"), row.needed("class"), row.text("label")};
  if (!machine.machine_class.empty() && !row.ground().is_class(machine.machine_class))
    row.wrong("class", "no rulebook has the class \"" + machine.machine_class + "\"",
              "Write a class of the rulebook");
  const auto day = row.day("since");
  const auto since = day ? std::optional(row.ground().zone.start(*day)) : std::nullopt;
  if (since && *since > row.ground().now) row.wrong("since", "lies in the future", "Write the day it came");
  if (const auto here = row.ground().machines.find(machine.machine); here != row.ground().machines.end()) {
    if (here->second.machine_class != machine.machine_class)
      row.wrong("machine", "is a unit of the class \"" + here->second.machine_class + "\" here",
                "Name it differently");
    return {};
  }
  return enter_once(row, "machine\x1f" + machine.machine, since, machine);
}

int weekday_of(RowReader& row) {
  static constexpr std::array<std::string_view, 7> names = {"monday", "tuesday",  "wednesday", "thursday",
                                                            "friday", "saturday", "sunday"};
  std::string word = row.needed("weekday");
  for (char& c : word) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  for (std::size_t i = 0; i < names.size(); ++i)
    if (word.size() >= 3 && names[i].starts_with(word)) return static_cast<int>(i);
  if (!word.empty())
    row.wrong("weekday", "\"" + word + "\" is no day of the week", "Write Monday, Tuesday …");
  return 0;
}

std::vector<Command> plan_hour(RowReader& row) {
  const Hours hours{row.person("number"), weekday_of(row), row.clock("from"), row.clock("to")};
  if (hours.to_minute <= hours.from_minute)
    row.wrong("to", "is not after \"from\"", "Write the later time in \"to\"");
  return enter_once(row,
                    "hours\x1f" + hours.person + "\x1f" + std::to_string(hours.weekday) + "\x1f" +
                        std::to_string(hours.from_minute) + "\x1f" + std::to_string(hours.to_minute),
                    row.instant("since"), hours);
}

Purpose purpose_of(RowReader& row) {
  const std::string word = row.text("purpose");
  if (word == "teach") return Purpose::teach;
  if (word == "practise" || word == "practice") return Purpose::practise;
  if (!word.empty() && word != "check-out" && word != "checkout")
    row.wrong("purpose", "\"" + word + "\" is no purpose", "Write teach, practise or check-out");
  return Purpose::check_out;
}

std::vector<Command> plan_booking(RowReader& row) {
  const auto day = row.day("date");
  if (!day && row.problems().empty()) row.wrong("date", "is empty", "Write the day");
  const int from = row.clock("from"), to = row.clock("to");
  if (to <= from) row.wrong("to", "is not after \"from\"", "Write the later time in \"to\"");
  Booking booking{row.person("number"), row.person("by"), row.machine("machine"), row.target("what"), {}, {},
                  purpose_of(row)};
  if (!booking.person.empty() && booking.person == booking.assessor)
    row.wrong("by", "is the member's own number", "Write the assessor's number");
  if (row.has("second")) booking.second = row.person("second");
  if (!booking.second.empty() && (booking.second == booking.person || booking.second == booking.assessor))
    row.wrong("second", "is the member's own number, or the assessor's", "Write who else assesses it");
  const auto machine = row.ground().machines.find(booking.machine);
  if (machine != row.ground().machines.end() && machine->second.machine_class != class_of(booking.target))
    row.wrong("machine", "is not a unit of \"" + booking.target + "\"", "Choose a unit of that class");
  const auto booked = row.instant("booked");
  if (booked && *booked > row.ground().now)
    row.wrong("booked", "lies in the future", "Write when it was booked");
  if (!day) return {};
  const Zone& zone = row.ground().zone;
  booking.from = zone.instant({*day, from / 60, from % 60, 0});
  booking.to = zone.instant({*day, to / 60, to % 60, 0});
  return enter_once(row,
                    "booking\x1f" + booking.person + "\x1f" + booking.assessor + "\x1f" + booking.machine +
                        "\x1f" + booking.target + "\x1f" + to_text(booking.from) + "\x1f" +
                        to_text(booking.to) + (booking.second.empty() ? "" : "\x1f" + booking.second),
                    booked, booking);
}

}  // namespace

ImportPlan plan_machines(const Table& table, const Mapping& mapping, const PlanOptions& options,
                         const Ground& ground) {
  return plan_rows(Source(FileKind::machines, table, mapping, options), mapping, ground, {}, plan_machine);
}

ImportPlan plan_hours(const Table& table, const Mapping& mapping, const PlanOptions& options,
                      const Ground& ground) {
  return plan_rows(Source(FileKind::hours, table, mapping, options), mapping, ground, {}, plan_hour);
}

ImportPlan plan_bookings(const Table& table, const Mapping& mapping, const PlanOptions& options,
                         const Ground& ground) {
  return plan_rows(Source(FileKind::bookings, table, mapping, options), mapping, ground, {}, plan_booking);
}

}  // namespace wm::db::import
