#include "core/calendar/values.h"

#include "core/calendar/ical.h"
#include "core/time/period.h"

namespace wm::calendar {
namespace {

constexpr std::int64_t longest_days = 400;

bool exists(const icaltimetype& t, int first_year) {
  const bool date = t.year >= first_year && t.year <= 2999 && t.month >= 1 && t.month <= 12 && t.day >= 1 &&
                    t.day <= icaltime_days_in_month(t.month, t.year);
  return date && t.hour >= 0 && t.hour <= 23 && t.minute >= 0 && t.minute <= 59 && t.second >= 0 &&
         t.second <= 60;
}

/// Reads the values of one line, all of them in one zone.
class Reading {
 public:
  Reading(const ContentLine& line, Zones& zones, Mistakes& mistakes)
      : line_(line),
        mistakes_(mistakes),
        first_year_(zones.first_year()),
        zone_(zones.unnamed()),
        parsed_(line, mistakes) {
    if (parsed_.properties().empty()) return;
    icalparameter* named =
        icalproperty_get_first_parameter(parsed_.properties().front(), ICAL_TZID_PARAMETER);
    if (named == nullptr) return;
    const char* name = icalparameter_get_tzid(named);
    if (const auto zone = zones.named(name != nullptr ? name : "", line, mistakes)) {
      zone_ = *zone;
    } else {
      wrong_ = true;
    }
  }

  std::vector<Stay> stays() {
    std::vector<Stay> out;
    for (icalproperty* each : parsed_.properties()) {
      if (auto stay = one(each)) out.push_back(*stay);
      if (wrong_) return {};
    }
    return out;
  }

 private:
  std::optional<Stay> one(icalproperty* property) {
    switch (icalproperty_isa(property)) {
      case ICAL_DTSTART_PROPERTY:
      case ICAL_DTEND_PROPERTY:
      case ICAL_RECURRENCEID_PROPERTY:
      case ICAL_EXDATE_PROPERTY: {
        const auto from = moment(icalvalue_get_datetimedate(icalproperty_get_value(property)));
        return from ? std::optional(Stay{*from, {}}) : std::nullopt;
      }
      case ICAL_RDATE_PROPERTY: {
        const icaldatetimeperiodtype value = icalproperty_get_rdate(property);
        return icalperiodtype_is_null_period(value.period) ? at(value.time) : period(value.period);
      }
      case ICAL_FREEBUSY_PROPERTY:
        return period(icalproperty_get_freebusy(property));
      default:
        wrong("This can't be read here.", "Save the calendar anew from the program it comes from.");
        return std::nullopt;
    }
  }

  std::optional<Stay> at(const icaltimetype& t) {
    const auto from = moment(t);
    return from ? std::optional(Stay{*from, {}}) : std::nullopt;
  }

  std::optional<Stay> period(const icalperiodtype& value) {
    const auto from = moment(value.start);
    if (!from) return std::nullopt;
    if (!icaltime_is_null_time(value.end)) {
      const auto to = moment(value.end);
      return to ? std::optional(Stay{*from, *to}) : std::nullopt;
    }
    const auto& d = value.duration;
    return Stay{*from, Length{static_cast<int>(d.weeks * 7 + d.days),
                              std::int64_t{3600} * d.hours + std::int64_t{60} * d.minutes + d.seconds}};
  }

  std::optional<Moment> moment(const icaltimetype& t) {
    if (!exists(t, first_year_)) {
      wrong(quoted(line_.text) + " is no time of the years " + std::to_string(first_year_) + " to 2999.",
            "Write a day that there is, and 0 to 23 h.");
      return std::nullopt;
    }
    Moment out{
        {day_of({t.year, t.month, t.day}), t.hour, t.minute, std::min(t.second, 59)}, t.is_date != 0, zone_};
    if (icaltime_is_utc(t)) out.zone = Zone::utc();
    return out;
  }

  void wrong(std::string what, std::string remedy) {
    if (!wrong_) mistakes_.add(line_.number, std::move(what), std::move(remedy));
    wrong_ = true;
  }

  const ContentLine& line_;
  Mistakes& mistakes_;
  int first_year_;
  CalendarZone zone_;
  Parsed parsed_;
  bool wrong_ = false;
};

}  // namespace

Instant after(const Moment& moment, const Length& length) {
  LocalTime local = moment.local;
  local.day = local.day + length.days;
  return Moment{local, moment.is_date, moment.zone}.instant() + length.seconds;
}

std::vector<Stay> read_stays(const ContentLine& line, Zones& zones, Mistakes& mistakes) {
  return Reading(line, zones, mistakes).stays();
}

std::optional<Length> read_length(const ContentLine& line, Mistakes& mistakes) {
  const Parsed parsed(line, mistakes);
  if (parsed.properties().empty()) return std::nullopt;
  const icaldurationtype d = icalproperty_get_duration(parsed.properties().front());
  const std::int64_t days = std::int64_t{7} * d.weeks + d.days;
  const std::int64_t seconds = std::int64_t{3600} * d.hours + std::int64_t{60} * d.minutes + d.seconds;
  if (d.is_neg != 0 || days > longest_days || seconds > longest_days * 86400) {
    mistakes.add(line.number, quoted(line.text) + " is no length from nothing to 400 days.",
                 "Write one of those, as PT1H30M.");
    return std::nullopt;
  }
  return Length{static_cast<int>(days), seconds};
}

}  // namespace wm::calendar
