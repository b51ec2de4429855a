#pragma once
// The diary as the journal has it: hours, how the shop books, and which bookings stand.
#include "core/diary/hours.h"
#include "core/diary/not_come.h"
#include "db/journal/memory.h"

namespace wm::db {

/// Every day from its beginning to its end.
Schedule always();
/// As all that counts now says, or said as known then; people joined to another by whom they count for.
ShopHours shop_hours(const Memory& memory, std::optional<Instant> known = {});
DiaryRules diary_rules(const Memory& memory);
/// The part of the rules about whoever does not come; nothing where the shop has none.
std::optional<NotComeRule> not_come_rule(const DiaryRules& rules);

/// Whether an id is one of somebody's.
bool has(const std::vector<PersonId>& ids, const PersonId& id);

/// Not struck out, not cancelled, not moved to another time, and not given up: held through a moment that
/// has passed, without being confirmed; as known then.
bool stands(const Memory& memory, const Entry& booking, Instant now, std::optional<Instant> known = {});
/// That, and the member has not stayed away: the time is taken.
bool takes_time(const Memory& memory, const Entry& booking, Instant now, std::optional<Instant> known = {});
/// Everything that takes time from `from` to `to`, but for one booking.
std::vector<Booked> booked(const Memory& memory, const Interval& within, Instant now,
                           const RecordId& but_for = {});

/// The days of those bookings to which somebody did not come, by the shop's zone.
std::vector<Day> days_not_come(const Memory& memory, const Zone& zone, const PersonId& person);
/// From when somebody is 18, by the latest birth date entered of theirs; nothing where there is none.
std::optional<Instant> turns_18(const Memory& memory, const Zone& zone, const PersonId& person);
/// Whether in the target's tier who taught somebody does not check them out.
bool another_checks_out(const Rulebook* rulebook, const TargetName& target);
/// Whether in the target's tier two assessors witness a check-out.
bool two_check_out(const Rulebook* rulebook, const TargetName& target);
/// When the first one-on-one begins, past or to come, in which an assessor teaches somebody on the target's
/// machine class; nothing where there is none.
std::optional<Instant> first_taught(const Memory& memory, const PersonId& assessor, const PersonId& person,
                                    const TargetName& target, Instant now);
/// Whether that lies before `at`.
bool taught(const Memory& memory, const PersonId& assessor, const PersonId& person, const TargetName& target,
            Instant at, Instant now);

}  // namespace wm::db
