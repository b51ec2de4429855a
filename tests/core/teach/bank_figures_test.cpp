// What the answers to several banks say, put together from the texts alone.
#include "core/teach/bank_figures.h"

#include <catch2/catch.hpp>
#include <set>

#include "banks.h"
#include "core/teach/bank_text.h"

namespace {

using namespace wm;
using namespace wm::teach;

/// An attempt at a random paper of the bank.
Attempt sat_at_random(made::Dice& dice, const Bank& bank) {
  Attempt attempt{bank.name, bank.revision, dice(), bank.languages.front(), {}};
  const auto paper = draw_paper(bank, attempt.seed);
  REQUIRE(paper);
  for (const Asked& asked : *paper) {
    const Question& question = bank.questions[asked.question];
    attempt.answers.push_back({question.id, made::given(dice, question), 5});
  }
  return attempt;
}

Bank some_bank(made::Dice& dice, const std::string& name, int revision) {
  Bank bank = made::bank(dice);
  bank.name = name;
  bank.revision = revision;
  return bank;
}

/// Two questions; of the first, `second` marks the second choice as right instead of the first.
std::string two_questions(int revision, bool second) {
  return "bank: saws\nrevision: " + std::to_string(revision) +
         "\nlanguages: en\npass: 50 %\ntime: none\ndraw: 2 of cuts\n\nquestion: q\nrevision: " +
         std::to_string(revision) + "\nkind: one\ntopic: cuts\n[en]\nWhich, of " + std::to_string(revision) +
         "?\n" + (second ? "- first\n* second\n" : "* first\n- second\n") +
         "> Because.\n\nquestion: r\nkind: one\ntopic: cuts\n[en]\nAnd?\n* this\n- that\n> So.\n";
}

std::string first_chosen(int revision) { return to_json({"saws", revision, 7, "en", {{"q", Chosen{0}, 3}}}); }

}  // namespace

TEST_CASE("Every bank's figures are those of its own attempts, by its own revisions", "[teach]") {
  made::Dice dice(11);
  std::vector<std::string> texts, attempts;
  std::map<std::string, std::map<int, std::vector<SeenAttempt>>> expected;
  std::map<std::string, std::vector<SeenAttempt>> in_order;
  for (const auto& [name, revision] : {std::pair("lathe", 2), {"bandsaw", 1}, {"lathe", 1}}) {
    const Bank bank = some_bank(dice, name, revision);
    texts.push_back(to_text(bank));
    for (int i = 0; i < 40; ++i) {
      const Attempt attempt = sat_at_random(dice, bank);
      attempts.push_back(to_json(attempt));
      in_order[name].push_back(seen(bank, attempt, *mark_attempt(bank, attempt)));
      expected[name][revision].push_back(in_order[name].back());
    }
  }
  const auto figures = bank_figures(texts, attempts);
  REQUIRE(figures.size() == 2);
  for (const BankFigures& each : figures) {
    const std::vector<SeenAttempt>& all = in_order.at(each.bank);
    for (const auto& [revision, some] : expected.at(each.bank))
      CHECK(each.by_revision.at(revision) == paper_figures(some));
    CHECK(each.unread == 0);
    CHECK(each.all.people == all.size());
    CHECK(each.questions == question_figures(all));
    for (const auto& [topic, some] : grouped(all, By::topic))
      CHECK(each.by_topic.at(topic) == paper_figures(some));
    if (each.spread.empty()) continue;
    std::size_t people = 0, right = 0;
    for (std::size_t i = 0; i < each.spread.size(); ++i) {
      people += each.spread[i];
      right += i * each.spread[i];
    }
    CHECK(people == each.all.people);
    CHECK(static_cast<double>(right) / static_cast<double>(people) == Approx(*each.all.mean));
  }
}

TEST_CASE("An attempt is marked by the revision that it was sat with, and shown with that wording",
          "[teach]") {
  const std::vector<std::string> texts{two_questions(2, true), two_questions(1, false), "no bank at all"};
  const std::vector<std::string> attempts{first_chosen(1), first_chosen(1), first_chosen(2)};
  const auto figures = bank_figures(texts, attempts);
  REQUIRE(figures.size() == 1);
  CHECK(figures[0].by_revision.at(1).passed == 2);
  CHECK(figures[0].by_revision.at(2).passed == 0);
  REQUIRE(figures[0].questions.size() == 3);
  CHECK(figures[0].questions[0].right == 2);
  CHECK(figures[0].questions[1].right == 0);
  CHECK(question_of(figures[0], "q", 1)->wordings[0].text == "Which, of 1?");
  CHECK(question_of(figures[0], "q", 2)->wordings[0].text == "Which, of 2?");
  CHECK(question_of(figures[0], "q", 3) == nullptr);
}

TEST_CASE(
    "An attempt at a revision that was not issued is counted as unread, and a bank that nobody sat has none",
    "[teach]") {
  const std::vector<std::string> texts{two_questions(1, false)};
  const auto none = bank_figures(texts, {});
  REQUIRE(none.size() == 1);
  CHECK(none[0].all.people == 0);
  CHECK(none[0].all.mean.error() == NoFigure::nobody);
  CHECK(none[0].spread.empty());
  const std::vector<std::string> attempts{first_chosen(5), first_chosen(1)};
  const auto some = bank_figures(texts, attempts);
  CHECK(some[0].unread == 1);
  CHECK(some[0].all.people == 1);
}

TEST_CASE("Of several banks the worst questions come first, whichever they stand in", "[teach]") {
  const auto look = [](Doubt doubt, double figure) {
    LookAt at;
    at.figures.asked = 50;
    at.reasons.push_back({doubt, {}, figure});
    return at;
  };
  std::vector<BankFigures> banks(2);
  banks[0].look_first = {look(Doubt::below_guessing, 0.1), look(Doubt::tells_nothing, 0.02)};
  banks[1].look_first = {look(Doubt::strong_miss_it, -0.5), look(Doubt::below_guessing, 0.05)};
  const auto first = look_first(banks);
  REQUIRE(first.size() == 4);
  CHECK(first[0].look == &banks[1].look_first[0]);
  CHECK(first[1].look == &banks[1].look_first[1]);
  CHECK(first[2].look == &banks[0].look_first[0]);
  CHECK(first[3].bank == &banks[0]);
}
