// Marks at their edges, and against a plain marker written apart.
#include "core/teach/marking.h"

#include <catch2/catch.hpp>
#include <cstdlib>

#include "banks.h"
#include "plain_marker.h"

namespace {

using namespace wm;
using namespace wm::teach;

Question question(Kind kind, std::size_t choices = 0, bool partial = false) {
  Question q{"q", 1, "t", false, partial, "", std::move(kind), {{"en", "Q", {}, "r"}}};
  for (std::size_t i = 0; i < choices; ++i) q.wordings[0].choices.push_back(std::to_string(i));
  return q;
}

Mark part(long top, long over) { return {false, fraction(top, over)}; }
const Mark right_mark{true, 1}, wrong_mark{false, 0};

int attempts() {
  const char* wanted = std::getenv("WM_ATTEMPTS");
  return wanted ? std::atoi(wanted) : 20'000;
}

Attempt attempt_at(made::Dice& dice, const Bank& bank, std::uint64_t seed) {
  Attempt attempt{bank.name, bank.revision, seed, bank.languages.back(), {}};
  const auto paper = draw_paper(bank, seed);
  REQUIRE(paper);
  for (const Asked& asked : *paper)
    if (made::chance(dice, 95))
      attempt.answers.push_back({bank.questions[asked.question].id,
                                 made::given(dice, bank.questions[asked.question]),
                                 made::whole(dice, 0, 600)});
  return attempt;
}

}  // namespace

TEST_CASE("A number is right on the very edge of its tolerance and wrong beside it", "[teach]") {
  const Question q = question(ANumber{{fraction(1, 8), Unit::inch}, {fraction(1, 64), Unit::inch}});
  for (const char* typed : {"1/8", "0.125", "1/8 in", "3.175 mm", "3,2 mm", "9/64", "7/64", "0.140625",
                            "0.109375 in", "3.571875 mm", "2.778125 mm"})
    CHECK((mark(q, Typed{typed}) == right_mark || (UNSCOPED_INFO(typed), false)));
  for (const char* typed : {"0.140626", "0.109374", "3.571876 mm", "2.778124 mm", "1/8 mm", "", "an eighth",
                            "1/8 %", "-1/8", "1,125"})
    CHECK((mark(q, Typed{typed}) == wrong_mark || (UNSCOPED_INFO(typed), false)));
  const Question exact = question(ANumber{{fraction(3, 10), Unit::none}, {fraction(0, 1), Unit::none}});
  CHECK(mark(exact, Typed{"0.3"}).right);
  CHECK(mark(exact, Typed{"3/10"}).right);
  CHECK_FALSE(mark(exact, Typed{"0.300001"}).right);
  const Question mixed = question(ANumber{{fraction(1, 1), Unit::inch}, {fraction(2, 5), Unit::millimetre}});
  CHECK(mark(mixed, Typed{"25.8 mm"}).right);
  CHECK(mark(mixed, Typed{"25 mm"}).right);
  CHECK_FALSE(mark(mixed, Typed{"25.800001 mm"}).right);
}

TEST_CASE("Of several, a part scores what is ticked right less what is ticked wrong", "[teach]") {
  const Kind kind = SeveralRight{{true, true, true, false, false}};
  const Question q = question(kind, 5, true), strict = question(kind, 5);
  CHECK(mark(q, Ticked{{2, 0, 1}}) == right_mark);
  CHECK(mark(q, Ticked{{0, 1}}) == part(2, 3));
  CHECK(mark(q, Ticked{{0, 1, 3}}) == part(1, 3));
  CHECK(mark(q, Ticked{{0, 1, 2, 3}}) == part(2, 3));
  CHECK(mark(q, Ticked{{0, 3, 4}}) == wrong_mark);
  CHECK(mark(q, Ticked{{0, 1, 2, 3, 4}}) == part(1, 3));
  CHECK(mark(q, Ticked{}) == wrong_mark);
  CHECK(mark(q, Ticked{{0, 5}}) == wrong_mark);
  CHECK(mark(strict, Ticked{{0, 1}}) == wrong_mark);
  CHECK(mark(strict, Ticked{{0, 1, 2}}) == right_mark);
}

TEST_CASE("Of steps, a part scores the share of pairs in order", "[teach]") {
  const Question q = question(InOrder{}, 4, true), strict = question(InOrder{}, 4);
  CHECK(mark(q, Ordered{{0, 1, 2, 3}}) == right_mark);
  CHECK(mark(q, Ordered{{1, 0, 2, 3}}) == part(5, 6));
  CHECK(mark(q, Ordered{{3, 0, 1, 2}}) == part(1, 2));
  CHECK(mark(q, Ordered{{3, 2, 1, 0}}) == wrong_mark);
  for (const auto& steps :
       {std::vector<std::size_t>{0, 1, 2}, {0, 1, 2, 2}, {0, 1, 2, 4}, {0, 1, 2, 3, 4}, {}})
    CHECK(mark(q, Ordered{steps}) == wrong_mark);
  CHECK(mark(strict, Ordered{{1, 0, 2, 3}}) == wrong_mark);
}

TEST_CASE("No answer, or one of another kind, is wrong", "[teach]") {
  const Question questions[] = {question(OneRight{0}, 3), question(SeveralRight{{true, false}}, 2),
                                question(InOrder{}, 3), question(ANumber{}),
                                question(APlace{{Rectangle{0, 0, 9, 9}}})};
  const Given answers[] = {Chosen{0}, Ticked{{0}}, Ordered{{0, 1, 2}}, Typed{"0"}, Pointed{{0, 0}}};
  for (std::size_t q = 0; q < 5; ++q) {
    CHECK(mark(questions[q], Unanswered{}) == wrong_mark);
    for (std::size_t a = 0; a < 5; ++a) CHECK(mark(questions[q], answers[a]).right == (q == a));
  }
}

TEST_CASE("Random attempts are marked as by a plain marker written apart", "[teach]") {
  made::Dice dice(20261126);
  long right = 0, edges = 0, partly = 0, passed = 0;
  for (int i = 0, left = attempts(); i < left; ++i) {
    const Bank bank = made::bank(dice);
    const std::uint64_t seed = dice();
    const auto paper = draw_paper(bank, seed);
    REQUIRE(paper);
    if (const auto why = plain::broken(bank, *paper); !why.empty()) FAIL(why << " in paper " << seed);
    const Attempt attempt = attempt_at(dice, bank, seed);
    const auto marking = mark_attempt(bank, attempt);
    REQUIRE(marking);
    int correct = 0, missed = 0;
    double score = 0;
    for (const Asked& asked : *paper) {
      const Question& q = bank.questions[asked.question];
      Given given;
      for (const Answer& answer : attempt.answers)
        if (answer.question == q.id) given = answer.given;
      const bool so = plain::right(q, given);
      const double part = plain::score(q, given);
      correct += so ? 1 : 0;
      missed += q.critical && !so ? 1 : 0;
      score += part;
      partly += part > 0 && part < 1 ? 1 : 0;
      edges += so && std::holds_alternative<ANumber>(q.kind) ? 1 : 0;
    }
    const bool passes_plainly =
        missed == 0 && correct / double(paper->size()) * 100 >= bank.pass_percent - 1e-9;
    if (marking->correct != correct || marking->critical_missed != missed ||
        marking->total != int(paper->size()) || std::abs(marking->score.get_d() - score) > 1e-9 ||
        passes(bank, *marking) != passes_plainly)
      FAIL("attempt " << i << ": " << marking->correct << ", plainly " << correct << "; "
                      << to_json(attempt));
    right += correct;
    passed += passes_plainly ? 1 : 0;
  }
  // Nothing of what is compared was rare.
  const long least = attempts() / 100;
  CHECK(right > least);
  CHECK(edges > least);
  CHECK(partly > least);
  CHECK(passed > least);
}

TEST_CASE("An attempt at another bank, or at what its paper doesn't ask, is not marked", "[teach]") {
  made::Dice dice(3);
  const Bank bank = made::bank(dice);
  const Attempt good = attempt_at(dice, bank, 5);
  REQUIRE(mark_attempt(bank, good));
  Attempt name = good, revision = good, language = good, more = good;
  name.bank += "s";
  ++revision.revision;
  language.language = "xx";
  more.answers.push_back({"nowhere", Unanswered{}, 0});
  for (const Attempt& bad : {name, revision, language, more}) {
    const auto marking = mark_attempt(bank, bad);
    REQUIRE_FALSE(marking);
    CHECK(marking.error().what.ends_with('.'));
  }
  Attempt none = good;
  none.answers.clear();
  const auto marking = mark_attempt(bank, none);
  REQUIRE(marking);
  CHECK(marking->correct == 0);
  CHECK(marking->total == static_cast<int>(questions_a_paper(bank)));
  CHECK(marking->answers.size() == questions_a_paper(bank));
}

TEST_CASE("A critical question missed is no pass, however many are right", "[teach]") {
  const Bank bank{"b", 1, {"en"}, 80, {}, {}, {}};
  CHECK(passes(bank, {8, 10, 0, {}, {}}));
  CHECK_FALSE(passes(bank, {7, 10, 0, {}, {}}));
  CHECK_FALSE(passes(bank, {9, 10, 1, {}, {}}));
  CHECK(passes(bank, {9'999, 10'000, 0, {}, {}}));
}
