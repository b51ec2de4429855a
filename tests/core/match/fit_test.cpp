// Proposals against all that could be proposed.
#include "core/match/fit.h"

#include <catch2/catch.hpp>
#include <cstdlib>
#include <ostream>

#include "small_question.h"

namespace wm {
std::ostream& operator<<(std::ostream& out, const Measures& m) {
  return out << m.first << " first, " << m.served << " served, " << m.waited << " days, " << m.trips
             << " trips, " << m.gaps << " min idle";
}
}  // namespace wm

namespace {

using namespace wm;
using small_match::to_the_end;

std::uint64_t cases(std::uint64_t unless_told) {
  const char* told = std::getenv("WM_MATCHES");
  return told ? std::strtoull(told, nullptr, 10) : unless_told;
}

}  // namespace

TEST_CASE("No proposal is better than the one made, of all that there are") {
  int served = 0;
  for (std::uint64_t seed = 1; seed <= cases(6000); ++seed) {
    std::mt19937_64 random(seed);
    const FitQuestion question = small_match::question(random);
    const Proposal proposal = fit_everyone(question, to_the_end);
    INFO("seed " << seed);
    REQUIRE(small_match::allowed(question, proposal.placed));
    REQUIRE(proposal.measures == small_match::counted(question, proposal.placed));
    REQUIRE(proposal.measures == small_match::best(question));
    REQUIRE_FALSE(proposal.open);
    served += static_cast<int>(proposal.measures.served);
  }
  CHECK(served > 0);
}

TEST_CASE("Stopped at any moment, what is proposed is allowed, and what is said of better ones is true") {
  for (std::uint64_t seed = 1; seed <= cases(6000) / 10; ++seed) {
    std::mt19937_64 random(seed);
    const FitQuestion question = small_match::question(random);
    int asked = 0;
    const int last = static_cast<int>(random() % 12);
    const Proposal proposal = fit_everyone(question, [&](Aim, const Measures&) { return ++asked <= last; });
    INFO("seed " << seed);
    REQUIRE(small_match::allowed(question, proposal.placed));
    REQUIRE(proposal.measures == small_match::counted(question, proposal.placed));
    const Measures best = small_match::best(question);
    if (!proposal.open) REQUIRE(proposal.measures == best);
    if (!proposal.open || !proposal.open->bound) continue;
    for (const Aim aim : all_aims) {
      if (aim == proposal.open->aim) {
        const bool fewer = aim == Aim::trips || aim == Aim::gaps;
        if (fewer) REQUIRE(of(best, aim) >= *proposal.open->bound);
        if (!fewer) REQUIRE(of(best, aim) <= *proposal.open->bound);
        break;
      }
      REQUIRE(of(best, aim) == of(proposal.measures, aim));
    }
  }
}

TEST_CASE(
    "Starts that are left out are not missed: with a limit that binds nobody, for which all are kept, it is "
    "the same") {
  for (std::uint64_t seed = 1; seed <= cases(6000) / 10; ++seed) {
    std::mt19937_64 random(seed);
    FitQuestion question = small_match::long_evening(random);
    const Measures fewer_starts = fit_everyone(question, to_the_end).measures;
    question.limits = {{"ana", {}, Stretch{100'000, 0}}, {"bo", {}, Stretch{100'000, 0}}};
    const Proposal all_starts = fit_everyone(question, to_the_end);
    INFO("seed " << seed);
    REQUIRE_FALSE(all_starts.open);
    REQUIRE(fewer_starts == all_starts.measures);
  }
}

TEST_CASE("Between two that are booked nothing is added that makes one stretch of all three too long") {
  FitQuestion question;
  const Instant noon{1772452800};
  question.openings = {{{noon + 3600, noon + 7200}, "ana", "lathe"}};
  question.booked = {{"zoe", "ana", "saw", {noon, noon + 3600}},
                     {"zoe", "ana", "saw", {noon + 7200, noon + 10800}}};
  question.waiters = {{"wim", "lathe", 1, std::nullopt, {0}}};
  const auto served = [&](int minutes) {
    question.limits = {{"ana", {}, Stretch{minutes, 15}}};
    const Proposal proposal = fit_everyone(question, to_the_end);
    CHECK_FALSE(proposal.open);
    return proposal.placed.size();
  };
  CHECK(served(179) == 0);
  CHECK(served(180) == 1);
}
