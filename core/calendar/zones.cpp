#include "core/calendar/zones.h"

#include <unicode/timezone.h>

#include <algorithm>

#include "core/calendar/ical.h"
#include "core/calendar/repeats.h"

namespace wm::calendar {
namespace {

std::int64_t wall_seconds(const LocalTime& local) {
  return std::int64_t{86400} * local.day.number + std::int64_t{3600} * local.hour +
         std::int64_t{60} * local.minute + local.second;
}

/// What a name of CLDR's list of Windows zones stands for.
std::optional<Zone> of_windows(const std::string& name) {
  icu::UnicodeString id;
  UErrorCode status = U_ZERO_ERROR;
  icu::TimeZone::getIDForWindowsID(icu::UnicodeString::fromUTF8(name), nullptr, id, status);
  if (U_FAILURE(status) != 0 || id.isEmpty()) return std::nullopt;
  std::string iana;
  const auto zone = Zone::named(id.toUTF8String(iana));
  return zone ? std::optional(*zone) : std::nullopt;
}

/// A name that begins with a slash is somebody's own list of zones (RFC 5545, 3.2.19), which mostly ends in
/// an IANA name: of three parts at most.
std::optional<Zone> of_tail(std::string_view name) {
  if (!name.starts_with('/')) return std::nullopt;
  std::vector<std::string_view> tails;
  for (std::size_t end = name.size(); tails.size() < 3 && end > 0;) {
    end = name.rfind('/', end - 1);
    tails.push_back(name.substr(end + 1));
  }
  for (auto tail = tails.rbegin(); tail != tails.rend(); ++tail)
    if (const auto zone = Zone::named(*tail)) return *zone;
  return std::nullopt;
}

/// Seconds ahead of UTC: "-0500", "+013020".
std::optional<std::int64_t> offset(std::string_view text) {
  const bool digits = text.size() > 1 &&
                      std::all_of(text.begin() + 1, text.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!digits || (text.size() != 5 && text.size() != 7) || (text.front() != '+' && text.front() != '-'))
    return std::nullopt;
  const auto two = [&](std::size_t at) { return (text[at] - '0') * 10 + (text[at + 1] - '0'); };
  const int hours = two(1), minutes = two(3), seconds = text.size() == 7 ? two(5) : 0;
  if (hours > 23 || minutes > 59 || seconds > 59) return std::nullopt;
  const std::int64_t ahead = std::int64_t{3600} * hours + std::int64_t{60} * minutes + seconds;
  return text.front() == '-' ? -ahead : ahead;
}

/// A change of clocks with what they were before it.
struct Turn {
  CalendarZone::Change change;
  std::int64_t before = 0;
};

/// Follows a VTIMEZONE: what it says of its STANDARD and DAYLIGHT times, and when each of them begins.
class Definition {
 public:
  Definition(const Component& zone, std::size_t& left, Mistakes& mistakes)
      : zone_(zone), file_left_(left), left_(std::min(left, most_years_a_zone)), mistakes_(mistakes) {}

  std::optional<CalendarZone> zone() {
    const std::size_t began = left_;
    if (zone_.components.size() > most_parts_a_zone)
      wrong(zone_.number, "This time zone has more than 1,000 parts.",
            "Save the calendar with times in UTC.");
    for (const Component& each : zone_.components)
      if (!wrong_ && (each.name == "STANDARD" || each.name == "DAYLIGHT")) read(each);
    file_left_ -= began - left_;
    if (!wrong_ && turns_.empty())
      wrong(zone_.number, "This time zone does not say how far its clocks are from UTC.",
            "Give it a \"STANDARD\" with \"DTSTART\", \"TZOFFSETFROM\" and \"TZOFFSETTO\".");
    if (wrong_) return std::nullopt;
    // Of two at once the one that stands later in the file counts.
    std::stable_sort(turns_.begin(), turns_.end(),
                     [](const Turn& a, const Turn& b) { return a.change.at < b.change.at; });
    std::vector<CalendarZone::Change> changes;
    for (const Turn& each : turns_) {
      if (!changes.empty() && changes.back().at == each.change.at) changes.pop_back();
      changes.push_back(each.change);
    }
    return CalendarZone(turns_.front().before, changes);
  }

 private:
  void read(const Component& part) {
    const ContentLine *start = nullptr, *rule = nullptr, *from = nullptr, *to = nullptr;
    std::vector<const ContentLine*> dates;
    for (const ContentLine& line : part.lines) {
      const ContentLine** once = line.name == "DTSTART"        ? &start
                                 : line.name == "RRULE"        ? &rule
                                 : line.name == "TZOFFSETFROM" ? &from
                                 : line.name == "TZOFFSETTO"   ? &to
                                                               : nullptr;
      if (once != nullptr && *once != nullptr)
        return wrong(line.number, "This part of a time zone has a second " + quoted(line.name) + ".",
                     "Leave one of them out.");
      if (once != nullptr) *once = &line;
      if (line.name == "RDATE") dates.push_back(&line);
    }
    if (start == nullptr || from == nullptr || to == nullptr)
      return wrong(part.number,
                   "This part of a time zone has no " +
                       quoted(start == nullptr  ? "DTSTART"
                              : from == nullptr ? "TZOFFSETFROM"
                                                : "TZOFFSETTO") +
                       ".",
                   "Save the calendar anew, or with times in UTC.");
    const auto before = ahead(*from), after = ahead(*to);
    if (before && after) add(*start, rule, dates, *before, *after);
  }

  /// The wall's times of a part are those of the clocks before the change.
  void add(const ContentLine& start, const ContentLine* rule, const std::vector<const ContentLine*>& dates,
           std::int64_t before, std::int64_t after) {
    Zones clocks(CalendarZone(before, {}));
    const std::vector<Moment> first = times(start, clocks);
    if (wrong_) return;
    std::vector<Moment> begins{first.front()};
    if (rule != nullptr) {
      const auto found = changes_by_rule(*rule, first.front(), end_of_years, left_, mistakes_);
      if (!found) return fail();
      begins = *found;
    }
    for (const ContentLine* each : dates) {
      const std::vector<Moment> more = times(*each, clocks);
      begins.insert(begins.end(), more.begin(), more.end());
    }
    for (const Moment& each : begins) turns_.push_back({{each.instant(), after}, before});
    if (turns_.size() > most_changes_a_zone)
      wrong(start.number, "The clocks of this time zone change more than 10,000 times.",
            "Save the calendar with times in UTC.");
  }

  std::vector<Moment> times(const ContentLine& line, Zones& clocks) {
    std::vector<Moment> out;
    for (const Stay& each : read_stays(line, clocks, mistakes_)) {
      if (each.from.is_date) {
        wrong(line.number, quoted(line.text) + " is a day: a time zone needs a time here.",
              "Write it as 20260329T020000.");
        return {};
      }
      out.push_back(each.from);
    }
    if (out.empty()) fail();
    return out;
  }

  std::optional<std::int64_t> ahead(const ContentLine& line) {
    const auto out = offset(line.value());
    if (!out)
      wrong(line.number, quoted(line.text) + " does not say how far clocks are from UTC.",
            "Write hours and minutes with a sign, as +0100.");
    return out;
  }

  void wrong(std::size_t line, std::string what, std::string remedy) {
    if (!wrong_) mistakes_.add(line, std::move(what), std::move(remedy));
    wrong_ = true;
  }
  /// What is wrong is told already.
  void fail() { wrong_ = true; }

  static constexpr Instant end_of_years{std::int64_t{86400} * 376'200};  // 3000

  const Component& zone_;
  std::size_t& file_left_;
  std::size_t left_;
  Mistakes& mistakes_;
  std::vector<Turn> turns_;
  bool wrong_ = false;
};

/// A definition's own name, which is text: what is escaped in it stands plain where a line names it.
std::string name_of(const Component& zone) {
  for (const ContentLine& line : zone.lines) {
    if (line.name != "TZID") continue;
    Mistakes none;
    const Parsed parsed(line, none);
    if (parsed.properties().empty()) continue;
    const char* name = icalproperty_get_tzid(parsed.properties().front());
    if (name != nullptr) return name;
  }
  return {};
}

}  // namespace

CalendarZone::CalendarZone(Zone zone) : by_(std::move(zone)) {}

CalendarZone::CalendarZone(std::int64_t ahead, const std::vector<Change>& changes) {
  std::vector<Stretch> stretches{{first_instant, ahead, 0}};
  for (const Change& each : changes) {
    Stretch& last = stretches.back();
    const std::int64_t before = stretches.size() > 1 ? stretches[stretches.size() - 2].until : INT64_MIN;
    last.until = std::max(before, each.at.seconds + last.ahead);
    stretches.push_back({each.at, each.ahead, 0});
  }
  stretches.back().until = INT64_MAX;
  by_ = std::make_shared<const std::vector<Stretch>>(std::move(stretches));
}

Instant CalendarZone::instant(LocalTime local) const {
  if (const Zone* zone = std::get_if<Zone>(&by_)) return zone->instant(local);
  const auto& stretches = *std::get<0>(by_);
  const std::int64_t wall = wall_seconds(local);
  const auto in = std::partition_point(stretches.begin(), stretches.end(),
                                       [&](const Stretch& each) { return each.until <= wall; });
  const Instant at{wall - in->ahead};
  // Where the stretch begins later than this, clocks have jumped over it.
  return in == stretches.begin() ? at : std::max(at, in->from);
}

Instant CalendarZone::start(Day day) const {
  if (const Zone* zone = std::get_if<Zone>(&by_)) return zone->start(day);
  return instant({day, 0, 0, 0});
}

Zones::Zones(const Zone& shop, const Component& calendar, std::size_t& years_left)
    : unnamed_(shop), years_left_(&years_left) {
  for (const Component& each : calendar.components)
    if (each.name == "VTIMEZONE") defined_.emplace(name_of(each), &each);  // of two alike the first
}

std::optional<CalendarZone> Zones::named(const std::string& name, const ContentLine& line,
                                         Mistakes& mistakes) {
  if (years_left_ == nullptr) {
    mistakes.add(line.number, quoted(line.text) + " names a time zone within a time zone.",
                 "Leave out its \"TZID\".");
    return std::nullopt;
  }
  auto known = found_.find(name);
  if (known == found_.end()) known = found_.emplace(name, find(name, mistakes)).first;
  if (!known->second && !defined_.contains(name))
    mistakes.add(
        line.number, "The time zone " + quoted(name) + " is unknown, and this calendar does not define it.",
        "Save the calendar with its time zones (VTIMEZONE), or with times in UTC; or name one of the "
        "IANA list, as \"Europe/Berlin\".");
  return known->second;
}

std::optional<CalendarZone> Zones::find(const std::string& name, Mistakes& mistakes) {
  if (const auto zone = Zone::named(name)) return *zone;
  if (const auto own = defined_.find(name); own != defined_.end())
    return Definition(*own->second, *years_left_, mistakes).zone();
  if (const auto zone = of_windows(name)) return *zone;
  if (const auto zone = of_tail(name)) return *zone;
  return std::nullopt;
}

}  // namespace wm::calendar
