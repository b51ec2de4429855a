// What the integer program adds up, against what is counted.
#include "core/match/model.h"

#include <catch2/catch.hpp>

#include "small_question.h"

TEST_CASE("At every proposal the program's sums are what is counted") {
  using namespace wm;
  for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
    std::mt19937_64 random(seed);
    const FitQuestion question = small_match::question(random);
    const match::Indexed indexed(question);
    match::Model model(indexed);
    model.add_days();
    const std::vector<Placed> placed = model.rounded({});
    const match::Values values = model.values(placed);
    for (const Aim aim : all_aims) {
      double sum = 0;
      for (const match::Term& term : model.sum(aim))
        sum += term.weight * values[static_cast<std::size_t>(term.column)];
      const bool fewer = aim == Aim::trips || aim == Aim::gaps;
      const double counted =
          static_cast<double>(of(small_match::counted(question, placed), aim)) * (fewer ? -1 : 1);
      INFO("seed " << seed << ", aim " << static_cast<int>(aim));
      REQUIRE(sum + static_cast<double>(model.beside(aim)) == Approx(counted));
    }
  }
}
