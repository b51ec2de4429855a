// How long it takes to fit everyone on a long waiting list: so many seconds are given, and what came of them
// is shown.
//   match_bench [SECONDS [SHOPS]]
#include <chrono>
#include <cstdio>
#include <cstdlib>

#include "core/match/fit.h"
#include "waiting_shop.h"

namespace {

using namespace wm;
using Clock = std::chrono::steady_clock;

const char* const aim_names[] = {"first", "served", "waited", "trips", "gaps"};

double seconds_since(Clock::time_point then) {
  return std::chrono::duration<double>(Clock::now() - then).count();
}

void row(const WaitingShop& shop, double seconds) {
  const FitQuestion question = waiting_shop(shop);
  std::size_t ways = 0;
  for (const Waiter& each : question.waiters) ways += each.fits.size();
  double reached[5] = {};
  const auto began = Clock::now();
  const Proposal proposal = fit_everyone(question, [&](Aim aim, const Measures&) {
    reached[static_cast<int>(aim)] = seconds_since(began);
    return seconds_since(began) < seconds * done_by(aim);
  });
  const Measures& m = proposal.measures;
  std::printf("%4llu %-6s %7zu %8zu %6.2f | %3lld %4lld %6lld %4lld %5lld | ",
              static_cast<unsigned long long>(shop.seed),
              shop.by_two           ? "by two"
              : shop.uneven_lengths ? "uneven"
                                    : "hours",
              question.openings.size(), ways, seconds_since(began), static_cast<long long>(m.first),
              static_cast<long long>(m.served), static_cast<long long>(m.waited),
              static_cast<long long>(m.trips), static_cast<long long>(m.gaps));
  if (!proposal.open) {
    std::printf("best in all");
  } else {
    std::printf("open from %s", aim_names[static_cast<int>(proposal.open->aim)]);
    if (proposal.open->bound) std::printf(", bound %lld", static_cast<long long>(*proposal.open->bound));
  }
  std::printf(" |");
  for (const double each : reached) std::printf(" %.2f", each);
  std::printf("\n");
  std::fflush(stdout);
}

}  // namespace

int main(int count, char** arguments) {
  const double seconds = count > 1 ? std::atof(arguments[1]) : 10;
  const int shops = count > 2 ? std::atoi(arguments[2]) : 5;
  std::printf(
      "200 wait, 12 assessors, 4 weeks; %g s given. Last columns: seconds at which each aim was last worked "
      "on\n",
      seconds);
  std::printf("seed lengths openings     ways   s    | first served waited trips gaps | settled\n");
  for (const auto& [uneven, by_two] : {std::pair{false, false}, {true, false}, {false, true}})
    for (int seed = 1; seed <= shops; ++seed)
      row({static_cast<std::uint64_t>(seed), 200, 12, 15, 4, uneven, by_two}, seconds);
}
