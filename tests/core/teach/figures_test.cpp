// Figures of papers and questions against published examples, and where there are none, why.
#include <rapidcheck.h>
#include <catch2/catch.hpp>
#include <cmath>

#include "banks.h"
#include "core/teach/look_first.h"
#include "core/teach/paper_figures.h"
#include "core/teach/question_figures.h"
#include "sittings.h"

namespace {

using namespace wm;
using namespace wm::teach;

bool shows(const Figure& figure, double printed, int digits) {
  INFO(printed);
  const double scale = std::pow(10, digits);
  return figure && std::llround(*figure * scale) == std::llround(printed * scale);
}

bool lacks(const Figure& figure, NoFigure why) { return !figure && figure.error() == why; }

std::vector<SeenAttempt> without(std::vector<SeenAttempt> all, std::size_t question) {
  for (SeenAttempt& attempt : all)
    attempt.answers.erase(attempt.answers.begin() + static_cast<long>(question));
  return all;
}

}  // namespace

TEST_CASE("Reliability and difficulty of the LSAT's section 6 are those that are published", "[teach]") {
  // Data: Bock and Lieberman (1970). Four digits as the R package ltm's descript(LSAT) prints them; eight by
  // R 4.2.2 and psych 2.2.9 (alpha, its raw_alpha and r.drop).
  const auto all = made::lsat_6();
  REQUIRE(all.size() == 1000);
  const PaperFigures figures = paper_figures(all);
  CHECK(shows(figures.mean, 3.819, 3));
  CHECK(shows(figures.kr20, 0.2950, 4));
  CHECK(shows(figures.kr20, 0.29499719, 8));
  CHECK(figures.alpha == figures.kr20);
  CHECK(shows(figures.kr21, 0.19644117, 8));
  CHECK(shows(figures.deviation, std::sqrt(1.0713103), 7));
  CHECK(shows(figures.standard_error, std::sqrt(1.0713103 * (1 - 0.29499719)), 7));
  const double dropped[] = {.27535621, .23758390, .21679946, .24593271, .26629441};
  const double dropped_published[] = {.2754, .2376, .2168, .2459, .2663};
  for (std::size_t i = 0; i < 5; ++i) {
    CHECK(shows(paper_figures(without(all, i)).kr20, dropped[i], 8));
    CHECK(shows(paper_figures(without(all, i)).kr20, dropped_published[i], 4));
  }
}

TEST_CASE("Point-biserial correlations of the LSAT's section 6 are those that are published", "[teach]") {
  const auto questions = question_figures(made::lsat_6());
  REQUIRE(questions.size() == 5);
  const double difficulty[] = {.924, .709, .553, .763, .870};
  const double total[] = {.36201044, .56677210, .61843975, .53441833, .43536643};
  const double rest[] = {.11283269, .15317812, .17277894, .14442810, .12159640};
  for (std::size_t i = 0; i < 5; ++i) {
    CHECK(questions[i].question == "q" + std::to_string(i));
    CHECK(questions[i].asked == 1000);
    CHECK(shows(questions[i].difficulty, difficulty[i], 3));
    CHECK(shows(questions[i].with_total, total[i], 8));
    CHECK(shows(questions[i].with_rest, rest[i], 8));
  }
}

TEST_CASE("What can't be worked out says why", "[teach]") {
  using made::sitting;
  const auto figures = [](const std::vector<SeenAttempt>& attempts) { return paper_figures(attempts); };
  const auto every = [](const PaperFigures& f, NoFigure why) {
    return lacks(f.kr20, why) && lacks(f.kr21, why) && lacks(f.alpha, why) && lacks(f.standard_error, why);
  };
  CHECK(every(figures({}), NoFigure::nobody));
  CHECK(lacks(figures({}).mean, NoFigure::nobody));
  CHECK(lacks(figures({}).deviation, NoFigure::nobody));
  CHECK_FALSE(figures({}).passing);
  const auto one = figures({sitting({true, false}, true)});
  CHECK(every(one, NoFigure::one_person));
  CHECK(lacks(one.deviation, NoFigure::one_person));
  CHECK(one.mean == 1.0);
  CHECK(one.passed == 1);
  CHECK(every(figures({sitting({true}), sitting({false})}), NoFigure::one_question));
  CHECK(every(figures({sitting({true, false}), sitting({false, true})}), NoFigure::all_alike));
  CHECK(figures({sitting({true, false}), sitting({false, true})}).deviation == 0.0);
  CHECK(every(figures({sitting({true, false}), sitting({false, true, true})}), NoFigure::other_lengths));

  SeenAttempt other = sitting({true, true});
  other.answers[0].question = "x";
  const auto drawn = figures({other, sitting({false, false}), sitting({true, false})});
  CHECK(lacks(drawn.kr20, NoFigure::other_questions));
  CHECK(lacks(drawn.alpha, NoFigure::other_questions));
  REQUIRE(drawn.kr21);
  CHECK(*drawn.standard_error == Approx(*drawn.deviation * std::sqrt(1 - *drawn.kr21)));
  // The same question in another revision is another question.
  SeenAttempt revised = sitting({true, true});
  revised.answers[0].revision = 2;
  CHECK(lacks(figures({revised, sitting({false, false})}).kr20, NoFigure::other_questions));

  CHECK(question_figures(std::vector<SeenAttempt>{}).empty());
  const auto single = question_figures(std::vector{sitting({true, false})});
  CHECK(single[0].difficulty == 1.0);
  CHECK(lacks(single[0].with_total, NoFigure::one_person));
  const auto alike = question_figures(std::vector{sitting({true, false}), sitting({true, true})});
  CHECK(lacks(alike[0].with_rest, NoFigure::all_alike));
  CHECK(lacks(question_figures(std::vector{sitting({true}), sitting({false})})[0].with_rest,
              NoFigure::one_question));
}

TEST_CASE("Equal thirds have no variance, whatever binary numbers would make of them", "[teach]") {
  std::vector<SeenAttempt> all;
  for (int i = 0; i < 7; ++i) {
    SeenAttempt attempt = made::sitting({false, false, false});
    for (SeenAnswer& answer : attempt.answers) answer.mark.score = fraction(1, 3);
    all.push_back(attempt);
  }
  CHECK(lacks(paper_figures(all).alpha, NoFigure::all_alike));
}

TEST_CASE("No figure is ever something other than a number or a reason", "[teach]") {
  CHECK(rc::check([](std::uint64_t seed) {
    made::Dice dice(seed);
    std::vector<SeenAttempt> all;
    for (int people = made::whole(dice, 0, 6); people > 0; --people) {
      std::vector<bool> right;
      for (int i = made::chance(dice, 80) ? 3 : made::whole(dice, 0, 4); i > 0; --i)
        right.push_back(made::chance(dice, 60));
      all.push_back(made::sitting(right, made::chance(dice, 50)));
      for (SeenAnswer& answer : all.back().answers) {
        answer.right = {true, false, false};
        if (made::chance(dice, 90)) answer.chosen = {static_cast<std::size_t>(made::whole(dice, 0, 3))};
      }
    }
    const auto good = [](const Figure& f) { return !f || std::isfinite(*f); };
    const PaperFigures p = paper_figures(all);
    for (const Figure& f : {p.mean, p.deviation, p.kr20, p.kr21, p.alpha, p.standard_error})
      RC_ASSERT(good(f));
    for (const QuestionFigures& q : question_figures(all)) {
      for (const Figure& f : {q.difficulty, q.with_total, q.with_rest}) RC_ASSERT(good(f));
      for (const Figure& f : {q.with_total, q.with_rest}) RC_ASSERT(!f || std::abs(*f) < 1 + 1e-12);
      for (const ChoiceFigures& c : q.choices) RC_ASSERT(good(c.pull));
    }
  }));
}

TEST_CASE("What a choice pulls is Pearson's coefficient with the rest of the paper, by the long way",
          "[teach]") {
  made::Dice dice(8);
  std::vector<SeenAttempt> all;
  for (int people = 0; people < 40; ++people) {
    all.push_back(made::sitting({made::chance(dice, 50), made::chance(dice, 60), made::chance(dice, 70)}));
    all.back().answers[1].right = {false, true, false};
    all.back().answers[1].chosen = {all.back().answers[1].mark.right ? 1u : dice() % 2 * 2};
  }
  const QuestionFigures figures = question_figures(all)[1];
  for (std::size_t choice = 0; choice < 3; ++choice) {
    double n = 0, x = 0, y = 0, xx = 0, yy = 0, xy = 0;
    for (const SeenAttempt& attempt : all) {
      const double chose = attempt.answers[1].chosen[0] == choice ? 1 : 0;
      const double rest = (attempt.answers[0].mark.right ? 1 : 0) + (attempt.answers[2].mark.right ? 1 : 0);
      n += 1, x += chose, y += rest, xx += chose * chose, yy += rest * rest, xy += chose * rest;
    }
    CHECK(figures.choices[choice].chosen == static_cast<std::size_t>(x));
    CHECK(*figures.choices[choice].pull ==
          Approx((n * xy - x * y) / std::sqrt((n * xx - x * x) * (n * yy - y * y))));
  }
}

TEST_CASE("Groups part the attempts, and by topic their answers", "[teach]") {
  std::vector<SeenAttempt> all = made::lsat_6();
  for (std::size_t i = 0; i < all.size(); ++i) {
    all[i].language = i % 3 == 0 ? "es" : "en";
    all[i].revision = static_cast<int>(i % 2) + 1;
    all[i].passed = i % 5 == 0;
  }
  CHECK(grouped(all, By::everything).at("") == all);
  const auto languages = grouped(all, By::language);
  CHECK(languages.at("es").size() == 334);
  CHECK(languages.at("en").size() == 666);
  CHECK(grouped(all, By::revision).at("2").size() == 500);
  const auto topics = grouped(all, By::topic);
  REQUIRE(topics.size() == 2);
  CHECK(topics.at("t0").size() == 1000);
  CHECK(topics.at("t0").front().answers.size() == 3);
  CHECK(topics.at("t1").front().answers.size() == 2);
  CHECK(paper_figures(topics.at("t1")).passed == 200);
  // The first three questions of odd places, by themselves.
  const auto third = question_figures(topics.at("t0"));
  CHECK(shows(third[0].difficulty, .924, 3));
}

TEST_CASE("An attempt is seen with what was chosen and which choices were right", "[teach]") {
  made::Dice dice(11);
  const Bank bank = made::bank(dice);
  Attempt attempt{bank.name, bank.revision, 4, bank.languages[0], {}};
  const auto paper = draw_paper(bank, 4);
  REQUIRE(paper);
  for (const Asked& asked : *paper)
    attempt.answers.push_back(
        {bank.questions[asked.question].id, made::given(dice, bank.questions[asked.question]), 1});
  const auto marking = mark_attempt(bank, attempt);
  REQUIRE(marking);
  const SeenAttempt as_seen = seen(bank, attempt, *marking);
  CHECK(as_seen.passed == passes(bank, *marking));
  CHECK(as_seen.language == bank.languages[0]);
  REQUIRE(as_seen.answers.size() == marking->answers.size());
  for (std::size_t i = 0; i < as_seen.answers.size(); ++i) {
    const Question& question = bank.questions[marking->answers[i].question];
    CHECK(as_seen.answers[i].question == question.id);
    CHECK(as_seen.answers[i].topic == question.topic);
    CHECK(as_seen.answers[i].revision == question.revision);
    CHECK(as_seen.answers[i].mark == marking->answers[i].mark);
    std::vector<bool> right;
    if (const auto* several = std::get_if<SeveralRight>(&question.kind)) right = several->right;
    if (const auto* one = std::get_if<OneRight>(&question.kind))
      for (std::size_t choice = 0; choice < choice_count(question); ++choice)
        right.push_back(choice == one->right);
    CHECK(as_seen.answers[i].right == right);
    if (const auto* chosen = std::get_if<Chosen>(&marking->answers[i].answer.given))
      CHECK(as_seen.answers[i].chosen == std::vector{chosen->choice});
  }
}
