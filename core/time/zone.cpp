#include "core/time/zone.h"

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <bitset>

// Abseil and not <chrono> or the packaged date library: its zones follow the rule at the end of a zone file
// without limit, so that summers after 2037 are summers.

namespace wm {

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

Instant start_in(const absl::TimeZone& zone, Day d) {
  const auto midnight = zone.At(absl::CivilSecond(to_civil(d)));
  // Where midnight is skipped the date starts at the jump; where it comes twice, the first time counts.
  const bool skipped = midnight.kind == absl::TimeZone::TimeInfo::SKIPPED;
  return to_instant(skipped ? midnight.trans : midnight.pre);
}

constexpr std::int64_t day_seconds = 86400;
constexpr std::int32_t days_a_stretch = 512;
/// Stretches begin here and go on for as long as the program's years and the longest period after them.
constexpr Day first_stretch = first_day + -days_a_stretch;
constexpr std::size_t stretches =
    (static_cast<std::size_t>(last_day.number - first_stretch.number) + 40'000) / days_a_stretch + 1;

/// When each of a stretch of days starts: asked for again and again, and slow to find out.
struct Stretch {
  std::array<Instant, days_a_stretch + 1> starts;
  std::bitset<days_a_stretch> plain;  // days of 24 hours without a change of the clocks

  Stretch(const absl::TimeZone& zone, Day first) {
    for (std::int32_t i = 0; i <= days_a_stretch; ++i)
      starts[static_cast<std::size_t>(i)] = start_in(zone, first + i);
    for (std::size_t i = 0; i < days_a_stretch; ++i) plain[i] = starts[i + 1] == starts[i] + day_seconds;
    // And two changes that cancel out, should a zone ever have them on one day. Past the years that the
    // zone's file spells out Abseil tells of none, but there a day that is changed is longer or shorter.
    absl::Time t = absl::FromUnixSeconds(starts[0].seconds - 2 * day_seconds);
    absl::TimeZone::CivilTransition change;
    while (to_instant(t) < starts.back() + 2 * day_seconds && zone.NextTransition(t, &change)) {
      for (const auto civil : {change.from, change.to}) {
        const std::int32_t i = to_day(absl::CivilDay(civil)).number - first.number;
        for (std::int32_t near = i - 1; near <= i + 1; ++near)
          if (near >= 0 && near < days_a_stretch) plain[static_cast<std::size_t>(near)] = false;
      }
      t = std::max(t, absl::FromCivil(change.to, zone)) + absl::Hours(24);
    }
  }
};

}  // namespace

struct Zone::Data {
  std::string name;
  absl::TimeZone zone;
  /// Made when first asked for; whoever comes second throws theirs away.
  mutable std::array<std::atomic<const Stretch*>, stretches> made{};

  Data(std::string name_, absl::TimeZone zone_) : name(std::move(name_)), zone(zone_) {}
  Data(const Data&) = delete;
  Data& operator=(const Data&) = delete;
  ~Data() {
    for (const auto& each : made) delete each.load();
  }

  /// The stretch that the day lies in, or null where it lies in none.
  const Stretch* stretch(Day d) const {
    if (d < first_stretch) return nullptr;
    const auto n = static_cast<std::size_t>((d.number - first_stretch.number) / days_a_stretch);
    if (n >= stretches) return nullptr;
    const Stretch* there = made[n].load(std::memory_order_acquire);
    if (there != nullptr) return there;
    auto fresh =
        std::make_unique<Stretch>(zone, first_stretch + static_cast<std::int32_t>(n) * days_a_stretch);
    if (made[n].compare_exchange_strong(there, fresh.get(), std::memory_order_acq_rel))
      return fresh.release();
    return there;
  }
};

namespace {

std::size_t in_stretch(Day d) {
  return static_cast<std::size_t>((d.number - first_stretch.number) % days_a_stretch);
}

}  // namespace

Zone::Zone(std::shared_ptr<const Data> data) : data_(std::move(data)) {}

Expected<Zone> Zone::named(std::string_view iana_name) {
  const std::string name(iana_name);
  absl::TimeZone zone;
  if (!is_iana_name(iana_name) || !absl::LoadTimeZone(name, &zone)) {
    return tl::unexpected(
        Problem{"zone", "“" + name + "” is not a time zone of this system's list",
                "use an IANA name such as America/Chicago, and see that the package tzdata is there"});
  }
  return Zone(std::make_shared<const Data>(name, zone));
}

Zone Zone::utc() {
  static const auto data = std::make_shared<const Data>("UTC", absl::UTCTimeZone());
  return Zone(data);
}

const std::string& Zone::name() const { return data_->name; }

Day Zone::day(Instant t) const {
  // No zone's clock is a day off UTC, so it is this day, the one before or the one after.
  const auto utc =
      static_cast<std::int32_t>((t.seconds - (t.seconds < 0 ? day_seconds - 1 : 0)) / day_seconds);
  for (const Day d : {Day{utc}, Day{utc - 1}, Day{utc + 1}}) {
    const Stretch* stretch = t.seconds < last_instant.seconds * 2 ? data_->stretch(d) : nullptr;
    if (stretch == nullptr) break;
    const std::size_t i = in_stretch(d);
    if (stretch->starts[i] <= t && t < stretch->starts[i + 1] && stretch->plain[i]) return d;
  }
  return local(t).day;
}

Instant Zone::start(Day d) const {
  const Stretch* stretch = data_->stretch(d);
  return stretch != nullptr ? stretch->starts[in_stretch(d)] : start_in(data_->zone, d);
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
