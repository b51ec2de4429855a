#pragma once
// When somebody is busy, by a calendar that they save and bring (iCalendar, RFC 5545). What they are busy
// with is not kept.
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "core/diary/slots.h"
#include "core/problem.h"

namespace wm::calendar {

/// The stretches that overlap `within` (400 days at most), in order, those that touch made one. Events that
/// say they are transparent, cancelled or free are none; times without a zone, and whole days, are `shop`'s.
/// Or everything that is wrong, each with its line: at most 8,000,000 bytes, 6 levels, 20,000 events and
/// 200,000 repetitions are looked at.
tl::expected<std::vector<Interval>, std::vector<Problem>> read_busy(std::string_view text, const Zone& shop,
                                                                    const Interval& within);

}  // namespace wm::calendar
