#include "core/calendar/busy.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/calendar/repeats.h"

namespace wm::calendar {
namespace {

constexpr std::size_t most_events = 20'000;

/// An event as it stands, before anything repeats.
struct Event {
  std::size_t line = 0;
  std::string uid;
  std::optional<Stay> start;
  std::optional<Moment> end;
  std::optional<Length> length;
  const ContentLine* rule = nullptr;
  std::vector<Stay> more;            // RDATE
  std::vector<Moment> except;        // EXDATE
  std::optional<Moment> stands_for;  // RECURRENCE-ID
  bool free = false;
};

class Reader {
 public:
  Reader(const Zone& shop, const Interval& within) : shop_(shop), within_(within) {}

  tl::expected<std::vector<Interval>, std::vector<Problem>> read(std::string_view text) {
    const std::vector<Component> top = components(text, mistakes_);
    for (const Component& each : top) read_calendar(each);
    if (events_.size() > most_events)
      mistakes_.add(1, "This calendar has more than 20,000 events.", "Save fewer months of it.");
    if (mistakes_.none())
      for (const Event& each : events_) add(each);
    if (!mistakes_.none()) return tl::unexpected(std::move(mistakes_).in_order());
    return joined(std::move(busy_));
  }

 private:
  void read_calendar(const Component& calendar) {
    if (calendar.name != "VCALENDAR") {
      mistakes_.add(calendar.number, quoted(calendar.name) + " is no calendar.",
                    "Choose a file that begins with \"BEGIN:VCALENDAR\".");
      return;
    }
    Zones zones(shop_, calendar, years_left_);
    for (const Component& each : calendar.components) {
      if (each.name == "VEVENT") read_event(each, zones);
      if (each.name == "VFREEBUSY") read_free_busy(each, zones);
    }
  }

  /// The one moment of a line.
  std::optional<Stay> one(const ContentLine& line, Zones& zones) {
    const std::vector<Stay> stays = read_stays(line, zones, mistakes_);
    if (stays.size() > 1)
      mistakes_.add(line.number, quoted(line.text) + " has several times.",
                    "One stands here: leave out the others.");
    return stays.size() == 1 ? std::optional(stays.front()) : std::nullopt;
  }
  std::optional<Moment> one_moment(const ContentLine& line, Zones& zones) {
    const auto stay = one(line, zones);
    return stay ? std::optional(stay->from) : std::nullopt;
  }

  void read_event(const Component& component, Zones& zones) {
    Event event;
    event.line = component.number;
    std::set<std::string> seen;
    for (const ContentLine& line : component.lines) {
      const bool once = line.name == "DTSTART" || line.name == "DTEND" || line.name == "DURATION" ||
                        line.name == "RRULE" || line.name == "RECURRENCE-ID" || line.name == "UID";
      if (once && !seen.insert(line.name).second) {
        mistakes_.add(line.number, "This event has a second " + quoted(line.name) + ".",
                      "Leave one of them out.");
        continue;
      }
      read_line(line, event, zones);
    }
    if (!event.start) {
      if (!seen.contains("DTSTART"))
        mistakes_.add(component.number, "This event does not say when it begins.", "Give it a \"DTSTART\".");
      return;
    }
    events_.push_back(std::move(event));
  }

  void read_line(const ContentLine& line, Event& event, Zones& zones) {
    if (line.name == "UID") event.uid = line.value();
    if (line.name == "DTSTART") event.start = one(line, zones);
    if (line.name == "DTEND") event.end = one_moment(line, zones);
    if (line.name == "DURATION") event.length = read_length(line, mistakes_);
    if (line.name == "RRULE") event.rule = &line;
    if (line.name == "RDATE")
      for (const Stay& each : read_stays(line, zones, mistakes_)) event.more.push_back(each);
    if (line.name == "EXDATE")
      for (const Stay& each : read_stays(line, zones, mistakes_)) event.except.push_back(each.from);
    if (line.name == "RECURRENCE-ID") read_stands_for(line, event, zones);
    if (line.name == "STATUS" && line.value() == "CANCELLED") event.free = true;
    if (line.name == "TRANSP" && line.value() == "TRANSPARENT") event.free = true;
    if (line.name == "EXRULE")
      mistakes_.add(line.number, "Rules of what is left out (EXRULE) are not known here.",
                    "Name the days as EXDATE.");
  }

  void read_stands_for(const ContentLine& line, Event& event, Zones& zones) {
    if (line.text.find("RANGE=") < line.text.find(':'))
      mistakes_.add(line.number, "A change of this and all that follow (RANGE) is not known here.",
                    "End the first event before it, and make what follows an event of its own.");
    event.stands_for = one_moment(line, zones);
    if (event.stands_for) replaced_.insert({event.uid, event.stands_for->instant()});
  }

  void read_free_busy(const Component& component, Zones& zones) {
    for (const ContentLine& line : component.lines) {
      if (line.name != "FREEBUSY" || line.text.find("FBTYPE=FREE") < line.text.find(':')) continue;
      for (const Stay& each : read_stays(line, zones, mistakes_)) {
        Event event;
        event.line = line.number;
        event.start = each;
        events_.push_back(event);
      }
    }
  }

  /// Every time of an event that is not left out.
  void add(const Event& event) {
    if (event.free) return;
    std::vector<Moment> times{event.start->from};
    if (event.rule) {
      const auto found = repeats(*event.rule, event.start->from, within_.to, left_, mistakes_);
      if (!found) return;
      times = *found;
    }
    for (const Moment& each : times) add_unless_left_out(event, {each, event.start->to});
    for (const Stay& each : event.more) add_unless_left_out(event, each);
  }

  void add_unless_left_out(const Event& event, const Stay& stay) {
    const Instant from = stay.from.instant();
    const bool left_out = std::any_of(event.except.begin(), event.except.end(), [&](const Moment& each) {
      return each.is_date && !stay.from.is_date ? each.local.day == stay.from.local.day
                                                : each.instant() == from;
    });
    const bool replaced = !event.stands_for && replaced_.contains({event.uid, from});
    if (left_out || replaced) return;
    const Interval when{from, end_of(event, stay)};
    if (when.to < when.from)
      mistakes_.add(event.line, "This event ends before it begins.", "Let it end (DTEND) later.");
    if (when.from < when.to && overlap(when, within_)) busy_.push_back(when);
  }

  Instant end_of(const Event& event, const Stay& stay) const {
    if (const auto* to = std::get_if<Moment>(&stay.to)) return to->instant();
    if (const auto* length = std::get_if<Length>(&stay.to)) return after(stay.from, *length);
    if (event.length) return after(stay.from, *event.length);
    if (event.end) return as_long_as_first(event, stay.from);
    return stay.from.is_date ? after(stay.from, {1, 0}) : stay.from.instant();
  }

  /// What an end means for a later time: as many days for whole days, as many seconds for times (RFC
  /// 5545, 3.8.5.3).
  Instant as_long_as_first(const Event& event, const Moment& from) const {
    const Moment& first = event.start->from;
    if (first.is_date) return after(from, {event.end->local.day.number - first.local.day.number, 0});
    return from.instant() + (event.end->instant().seconds - first.instant().seconds);
  }

  const Zone& shop_;
  const Interval& within_;
  Mistakes mistakes_;
  std::vector<Event> events_;
  std::set<std::pair<std::string, Instant>> replaced_;
  std::vector<Interval> busy_;
  std::size_t left_ = most_times, years_left_ = most_zone_years;
};

}  // namespace

tl::expected<std::vector<Interval>, std::vector<Problem>> read_busy(std::string_view text, const Zone& shop,
                                                                    const Interval& within) {
  return Reader(shop, within).read(text);
}

}  // namespace wm::calendar
