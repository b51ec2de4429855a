#include "db/clock_watch.h"

#include <cstdlib>

#include "db/check/case.h"

namespace wm::db {
namespace {

constexpr std::int64_t hour = 3600, tolerated = hour;

std::string long_time(std::int64_t seconds) {
  const std::int64_t hours = seconds / hour;
  if (hours < 48) return std::to_string(hours) + (hours == 1 ? " hour" : " hours");
  return std::to_string(hours / 24) + " days";
}

}  // namespace

void ClockWatch::believe(Instant now) {
  believed_ = now;
  if (passed_) passed_then_ = passed_();
}

std::int64_t ClockWatch::jump(Instant now, Instant last_recorded, std::optional<Instant> confirmed) const {
  const std::int64_t behind = last_recorded.seconds - now.seconds;
  if (behind > tolerated && !(confirmed && now >= *confirmed - tolerated)) return -behind;
  if (!passed_) return 0;
  const std::int64_t drift = (now.seconds - believed_.seconds) - (passed_() - passed_then_);
  return std::abs(drift) > tolerated ? drift : 0;
}

Problem clock_problem(const Zone& zone, Instant now, std::int64_t jump) {
  const std::string shows = "This computer's clock shows " + said(zone, now) + ": ";
  return {"clock",
          jump < 0 ? shows + "it was set back by " + long_time(-jump) +
                         ", or was ahead when something was entered."
                   : shows + "it was set ahead by " + long_time(jump) + " while the shop was open.",
          "Set the clock right. Where it is right as it is, a manager can confirm that; until then nothing "
          "is entered."};
}

}  // namespace wm::db
