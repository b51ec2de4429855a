#include "core/time/zone.h"

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <algorithm>

// Abseil and not <chrono> or the packaged date library: its zones follow the rule at the end of a zone file
// without limit, so that summers after 2037 are summers.

namespace wm {

struct Zone::Data {
  std::string name;
  absl::TimeZone zone;
};

namespace {

Day to_day(absl::CivilDay d) { return {static_cast<std::int32_t>(d - absl::CivilDay(1970, 1, 1))}; }
absl::CivilDay to_civil(Day d) { return absl::CivilDay(1970, 1, 1) + d.number; }
Instant to_instant(absl::Time t) { return {absl::ToUnixSeconds(t)}; }

/// Names that the zone folder holds and that are no IANA zones: the machine's own, and copies of the list.
bool is_iana_name(std::string_view name) {
  const auto fits = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' ||
           c == '-' || c == '+' || c == '/';
  };
  return !name.empty() && name.front() != '/' && std::all_of(name.begin(), name.end(), fits) &&
         name != "localtime" && name != "posixrules" && !name.starts_with("right/") &&
         !name.starts_with("posix/") && !name.starts_with("Fixed/");
}

}  // namespace

Zone::Zone(std::shared_ptr<const Data> data) : data_(std::move(data)) {}

Expected<Zone> Zone::named(std::string_view iana_name) {
  Data data{std::string(iana_name), {}};
  if (!is_iana_name(iana_name) || !absl::LoadTimeZone(data.name, &data.zone)) {
    return tl::unexpected(
        Problem{"zone", "“" + data.name + "” is not a time zone of this system's list",
                "use an IANA name such as America/Chicago, and see that the package tzdata is there"});
  }
  return Zone(std::make_shared<const Data>(std::move(data)));
}

Zone Zone::utc() {
  static const auto data = std::make_shared<const Data>(Data{"UTC", absl::UTCTimeZone()});
  return Zone(data);
}

const std::string& Zone::name() const { return data_->name; }

Day Zone::day(Instant t) const {
  return to_day(absl::CivilDay(data_->zone.At(absl::FromUnixSeconds(t.seconds)).cs));
}

Instant Zone::start(Day d) const {
  const auto midnight = data_->zone.At(absl::CivilSecond(to_civil(d)));
  // Where midnight is skipped the date starts at the jump; where it comes twice, the first time counts.
  const bool skipped = midnight.kind == absl::TimeZone::TimeInfo::SKIPPED;
  return to_instant(skipped ? midnight.trans : midnight.pre);
}

LocalTime Zone::local(Instant t) const {
  const absl::CivilSecond shown = data_->zone.At(absl::FromUnixSeconds(t.seconds)).cs;
  return {to_day(absl::CivilDay(shown)), shown.hour(), shown.minute(), shown.second()};
}

Instant Zone::instant(LocalTime local) const {
  const absl::CivilDay day = to_civil(local.day);
  const auto found = data_->zone.At(
      absl::CivilSecond(day.year(), day.month(), day.day(), local.hour, local.minute, local.second));
  const bool skipped = found.kind == absl::TimeZone::TimeInfo::SKIPPED;
  return to_instant(skipped ? found.trans : found.pre);
}

Instant cover_end(const Zone& zone, Instant at, Period period) {
  return zone.start(end(zone.day(at), period) + 1);
}

}  // namespace wm
