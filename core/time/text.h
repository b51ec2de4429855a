#pragma once
// Instants and days as text, in the one form that files use (RFC 3339, UTC, whole seconds).
#include <optional>
#include <string>
#include <string_view>

#include "core/time/instant.h"

namespace wm {

/// "2026-03-14T15:20:00Z" exactly: upper-case T and Z, no fraction, no offset, a date that exists, years 1900
/// to 2999. A leap second (":60") is refused on purpose: no record of ours can carry one.
std::optional<Instant> parse_instant(std::string_view text);
/// "2026-03-14" exactly; a date that exists, years 1900 to 2999.
std::optional<Day> parse_day(std::string_view text);
std::string to_text(Instant t);
std::string to_text(Day d);

}  // namespace wm
