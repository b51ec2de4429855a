// What people read about requirements, rungs and states; and every string of the program against the word
// list.
#include "app/words/words.h"

#include <QtTest>

#include "app/words/grace_words.h"
#include "app/words/needs.h"
#include "app/words/pause_words.h"
#include "app/words/why_words.h"
#include "page_test.h"
#include "program_strings.h"
#include "word_list.h"
#include "words_reader.h"

namespace words_test {

using namespace wm;
using namespace wm::app;

namespace {

const WordsShop shop;

Instant start(int year, int month, int day) { return shop.start(year, month, day); }

GateAnswer gate(Reason reason, GateState state, std::optional<Instant> due = {},
                std::optional<Instant> lapses = {}) {
  GateAnswer gate;
  gate.state = state;
  gate.due = due;
  gate.lapses = lapses;
  gate.spared = state == GateState::in_grace && !reason.holds;
  gate.reason = std::move(reason);
  return gate;
}

QString one(const NeedLine& line) { return line.what + " | " + line.detail; }

StandingAnswer standing(Rung rung, std::optional<Instant> until = std::nullopt,
                        std::optional<Rung> next = std::nullopt) {
  StandingAnswer answer;
  answer.standing = rung;
  answer.until = until;
  answer.next = next;
  answer.rulebook = 1;
  answer.stands_for = {"forge"};
  return answer;
}

QString sentence(const char* target, const StandingAnswer& answer, const std::vector<Condition>& while_ = {},
                 const QStringList& restrictions = {}) {
  return standing_sentence(target, answer, while_, restrictions, shop.reader());
}

const Requirement waiver{NeedDocument{"liability-waiver", {}, {}}};
const Requirement guards{NeedLesson{"guards", RevisionRule::current, {}, {}, {}}};
const Requirement tier3{NeedQuiz{"tier-3", 80, RevisionRule::any, {}, {}, {}, {}}};
const Requirement bandsaw{NeedCheckout{"bandsaw", RevisionRule::any, {}, {}, {}, {}, {}, false}};
const Requirement practice{NeedPractice{std::nullopt, 90, 2, Period{PeriodUnit::months, 12}}};
const Requirement use{NeedRecentUse{"bandsaw", 3, Period{PeriodUnit::days, 90}}};

/// A kind of requirement in one state, as the Desk lists it and as a sentence.
struct Case {
  GateAnswer gate;
  QString line, sentence;
};

}  // namespace

class WordsTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates)); }

  void rungs_have_their_words() {
    QCOMPARE(standing_words(Rung::independent), QString("without a supervisor"));
    QCOMPARE(standing_words(Rung::supervised), QString("only with a supervisor"));
    QCOMPARE(standing_words(Rung::barred), QString("not yet"));
    QCOMPARE(standing_cell(Rung::independent), QString("unsupervised"));
    QCOMPARE(standing_cell(Rung::supervised), QString("supervised"));
    QCOMPARE(standing_cell(Rung::barred), QString("no"));
  }

  void the_answer_is_a_sentence_with_its_last_day_and_its_conditions() {
    QCOMPARE(
        sentence("planer", standing(Rung::independent, start(2027, 8, 29)),
                 {Staffed{}, Buddy{1, Rung::independent}}),
        QString("Kim may use the planer without a supervisor, through 28 August 2027, while staff are in and "
                "one other qualified person is present."));
    QCOMPARE(
        sentence("planer", standing(Rung::supervised), {Buddy{2, Rung::barred}, Buddy{1, Rung::supervised}}),
        QString("Kim may use the planer only with a supervisor, while 2 other people are present and one "
                "other person who may use it is present."));
    QCOMPARE(sentence("jointer-planer/jointing", standing(Rung::supervised)),
             QString("Kim may use the jointer/planer for jointing only with a supervisor."));
    QCOMPARE(sentence("forge", standing(Rung::barred)), QString("Kim may not yet use the forge."));
    QCOMPARE(sentence("table-saw", standing(Rung::independent), {}, {"no dado", "one jig"}),
             QString("Kim may use the table saw without a supervisor. Restricted: no dado; one jig."));
  }

  void since_when_and_what_then() {
    StandingAnswer answer = standing(Rung::independent, start(2027, 8, 29), Rung::supervised);
    QCOMPARE(since_sentence(answer, shop.reader()), QString());
    answer.since = start(2026, 3, 2) + 40000;
    QCOMPARE(since_sentence(answer, shop.reader()), QString("That has been so since 2 March."));
    QCOMPARE(next_sentence(answer, shop.reader()), QString("From 29 August 2027 on only with a supervisor."));
    answer.next = Rung::barred;
    QCOMPARE(next_sentence(answer, shop.reader()), QString("From 29 August 2027 on not at all."));
    QCOMPARE(next_sentence(standing(Rung::barred), shop.reader()), QString());
    QCOMPARE(next_sentence(standing(Rung::barred, shop.now + 3600, Rung::independent), shop.reader()),
             QString("From today, 6:20 PM on without a supervisor."));
  }

  void a_suspension_reads_as_paused_and_sends_to_the_manager() {
    StandingAnswer answer = standing(Rung::barred);
    answer.suspensions.push_back({"s1", start(2026, 11, 20) + 60, start(2026, 12, 4)});
    QCOMPARE(sentence("forge", answer),
             QString("Kim is paused on the forge through 3 December: please speak to the manager."));
    answer.suspensions.push_back({"s2", start(2026, 11, 21), std::nullopt});
    QCOMPARE(sentence("forge", answer), QString("Kim is paused on the forge: please speak to the manager."));
  }

  void a_pauses_reason_is_for_instructors_and_managers() {
    WordsShop told = shop;
    told.add("s1", start(2026, 11, 20), Suspend{"kim", Everything{}, {}}, "worked without goggles");
    StandingAnswer answer = standing(Rung::barred);
    answer.suspensions = {{"s1", start(2026, 11, 20), start(2026, 12, 4)},
                          {"s2", start(2025, 11, 20), std::nullopt}};
    QCOMPARE(pause_sentences(answer, false, told.reader()),
             QStringList({"Paused since 20 November, through 3 December.",
                          "Paused since 20 November 2025, with no end set.", "A manager can end a pause."}));
    QCOMPARE(pause_sentences(answer, true, told.reader()).front(),
             QString("Paused since 20 November, through 3 December. Reason: worked without goggles."));
    QVERIFY(pause_sentences(standing(Rung::barred), true, told.reader()).isEmpty());
  }

  void a_birthday_is_never_shown() {
    const Instant birthday = start(2027, 2, 3);
    const StandingAnswer rises = standing(Rung::supervised, birthday, Rung::independent);
    QCOMPARE(sentence("forge", rises), QString("Kim may use the forge only with a supervisor."));
    QCOMPARE(next_sentence(rises, shop.reader()), QString());
    QVERIFY(!shown_end(rises, shop.reader()));
    // What ends on that day tells nothing: nobody gets younger.
    const StandingAnswer falls = standing(Rung::supervised, birthday, Rung::barred);
    QVERIFY(sentence("forge", falls).contains("through 2 February 2027"));
    StandingAnswer since = standing(Rung::independent);
    since.since = birthday;
    QCOMPARE(since_sentence(since, shop.reader()), QString());
    QCOMPARE(one(need_lines(gate(reason({NeedAge{18}}, false, birthday), GateState::unmet), shop.reader())
                     .front()),
             QString("Not for people under 18 | under 18"));
    // Nor through what asks for a standing that waits for it, or became due when it came.
    const Reason other = reason({NeedStanding{"bandsaw", Rung::independent}}, false, birthday);
    QCOMPARE(one(need_lines(gate(other, GateState::unmet), shop.reader()).front()),
             QString("Bandsaw: without a supervisor | not yet"));
    QCOMPARE(grace_words(gate(reason(waiver, true), GateState::in_grace, birthday, start(2027, 3, 1)),
                         shop.reader()),
             QString("due now, still counts through 28 February 2027"));
  }

  void born_on_29_february_means_1_march_in_common_years() {
    Birthdays born;
    born.add("kim", day_of({2008, 2, 29}));
    QVERIFY(born.on("kim", day_of({2026, 3, 1})) && !born.on("kim", day_of({2026, 2, 28})));
    QVERIFY(born.on("kim", day_of({2028, 2, 29})) && !born.on("kim", day_of({2028, 3, 1})));
    QVERIFY(!born.on("tom", day_of({2026, 3, 1})));
  }

  void every_kind_of_requirement_in_every_state() {
    WordsShop s = shop;
    s.add("d", start(2026, 10, 2), Document{"kim", "liability-waiver", {}});
    s.add("q", start(2026, 10, 25), Quiz{"kim", "tier-3", 3, 18, 20, 0});
    s.add("q-low", start(2026, 10, 25), Quiz{"kim", "tier-3", 3, 12, 20, 0});
    s.add("q-critical", start(2026, 10, 25), Quiz{"kim", "tier-3", 3, 19, 20, 1});
    s.add("q-old", start(2026, 10, 25), Quiz{"kim", "tier-3", 2, 20, 20, 0});
    s.add("c", start(2026, 3, 3), Checkout{"kim", "bandsaw", 1, Outcome::passed, "mara"});
    s.add("c-failed", start(2026, 3, 3), Checkout{"kim", "bandsaw", 1, Outcome::failed, "mara"});
    s.add("c-stopped", start(2026, 3, 3), Checkout{"kim", "bandsaw", 1, Outcome::stopped, "mara"});
    s.add("i", start(2026, 5, 1), Incident{"kim", "bandsaw", 2, Part::operating});
    s.add("h", start(2026, 5, 1), Change{"bandsaw"});
    s.add("l", start(2026, 10, 2), Lesson{"kim", "guards", 3});
    s.add("l-old", start(2026, 10, 2), Lesson{"kim", "guards", 2});

    const Instant jan24 = start(2027, 1, 24), feb7 = start(2027, 2, 7);
    const auto told = [&](Reason r, const char* record, std::optional<Instant> since = {}) {
      if (record) r.rests_on = {record};
      r.since = since;
      if (std::holds_alternative<NeedLesson>(r.need.need)) r.revision_needed = 3;
      return r;
    };
    const auto holds = [&](const Requirement& need, const char* record, std::optional<Instant> until = {}) {
      return gate(told(reason(need, true, until), record), GateState::met, until, until);
    };
    const auto missing = [&](const Requirement& need, const char* record, std::optional<Instant> since = {}) {
      return gate(told(reason(need, false), record, since), GateState::unmet);
    };
    const auto due = [&](const Requirement& need, const char* record) {
      return gate(told(reason(need, true, feb7), record), GateState::in_grace, start(2026, 11, 1), feb7);
    };
    const auto due_later = [&](const Requirement& need, const char* record) {
      return gate(told(reason(need, true, feb7), record), GateState::met, jan24, feb7);
    };
    const auto spared = [&](const Requirement& need) {
      return gate(told(reason(need, false), nullptr), GateState::in_grace, start(2026, 11, 1), feb7);
    };
    Requirement current_quiz = tier3;
    std::get<NeedQuiz>(current_quiz.need).revision = RevisionRule::current;
    GateAnswer old_quiz = missing(current_quiz, "q-old");
    old_quiz.reason.revision_needed = 3;

    const std::vector<Case> cases = {
        {holds(waiver, "d"), "Paper: Liability waiver | taken on 2 October, counts with no end",
         "There: the paper “Liability waiver” (taken on 2 October, counts with no end)."},
        {missing(waiver, nullptr), "Paper: Liability waiver | nothing on file yet",
         "Still needed: the paper “Liability waiver” (nothing on file yet)."},
        {missing(waiver, "d", start(2026, 11, 3)),
         "Paper: Liability waiver | last on 2 October, missing since 3 November",
         "Still needed: the paper “Liability waiver” (last on 2 October, missing since 3 November)."},
        {due(waiver, "d"),
         "Paper: Liability waiver | taken on 2 October; due since 1 November, still counts through 6 "
         "February 2027",
         "To be renewed: the paper “Liability waiver” (taken on 2 October; due since 1 November, still "
         "counts "
         "through 6 February 2027)."},
        {due_later(waiver, "d"),
         "Paper: Liability waiver | taken on 2 October; due by 23 January 2027, counts through 6 February "
         "2027",
         "There: the paper “Liability waiver” (taken on 2 October; due by 23 January 2027, counts through "
         "6 February 2027)."},
        {spared(waiver),
         "Paper: Liability waiver | nothing on file yet; counts through 6 February 2027 for people who were "
         "here "
         "before",
         "To be renewed: the paper “Liability waiver” (nothing on file yet; counts through 6 February 2027 "
         "for "
         "people who were here before)."},
        {holds(guards, "l", jan24),
         "Lesson: Guards, revision 3 | on 2 October, counts through 23 January 2027",
         "There: the lesson “Guards”, revision 3 (on 2 October, counts through 23 January 2027)."},
        {missing(guards, "l-old"), "Lesson: Guards, revision 3 | last on 2 October, revision 2",
         "Still needed: the lesson “Guards”, revision 3 (last on 2 October, revision 2)."},
        {missing(guards, "l", start(2026, 10, 2)),
         "Lesson: Guards, revision 3 | last on 2 October, does not count",
         "Still needed: the lesson “Guards”, revision 3 (last on 2 October, does not count)."},
        {due(guards, "l"),
         "Lesson: Guards, revision 3 | on 2 October; due since 1 November, still counts through 6 February "
         "2027",
         "To be renewed: the lesson “Guards”, revision 3 (on 2 October; due since 1 November, still counts "
         "through 6 February 2027)."},
        {holds(tier3, "q", jan24),
         "Quiz: Tier 3, 80 % needed | 90 % on 25 October, counts through 23 January 2027",
         "There: the quiz “Tier 3”, with 80 % or more (90 % on 25 October, counts through 23 January 2027)."},
        {missing(tier3, "q-low"), "Quiz: Tier 3, 80 % needed | 60 % on 25 October",
         "Still needed: the quiz “Tier 3”, with 80 % or more (60 % on 25 October)."},
        {missing(tier3, "q", start(2026, 11, 2)),
         "Quiz: Tier 3, 80 % needed | 90 % on 25 October, missing since 2 November",
         "Still needed: the quiz “Tier 3”, with 80 % or more (90 % on 25 October, missing since 2 "
         "November)."},
        {missing(tier3, "q-critical"),
         "Quiz: Tier 3, 80 % needed | 95 % on 25 October, a critical question missed",
         "Still needed: the quiz “Tier 3”, with 80 % or more (95 % on 25 October, a critical question "
         "missed)."},
        {old_quiz, "Quiz: Tier 3, revision 3, 80 % needed | last tried on 25 October, revision 2",
         "Still needed: the quiz “Tier 3”, revision 3, with 80 % or more (last tried on 25 October, revision "
         "2)."},
        {holds(bandsaw, "c"), "Check-out: Bandsaw | passed on 3 March with Mara Devlin, counts with no end",
         "There: the check-out “Bandsaw” (passed on 3 March with Mara Devlin, counts with no end)."},
        {missing(bandsaw, "c", start(2026, 9, 4)),
         "Check-out: Bandsaw | last passed on 3 March, missing since 4 September",
         "Still needed: the check-out “Bandsaw” (last passed on 3 March, missing since 4 September)."},
        {missing(bandsaw, "c-failed"), "Check-out: Bandsaw | not passed on 3 March",
         "Still needed: the check-out “Bandsaw” (not passed on 3 March)."},
        {missing(bandsaw, "c-stopped"), "Check-out: Bandsaw | stopped on 3 March",
         "Still needed: the check-out “Bandsaw” (stopped on 3 March)."},
        {missing(bandsaw, "i"), "Check-out: Bandsaw | asked for again by an incident on 1 May",
         "Still needed: the check-out “Bandsaw” (asked for again by an incident on 1 May)."},
        {missing(bandsaw, "h"), "Check-out: Bandsaw | asked for again by a change of the machine on 1 May",
         "Still needed: the check-out “Bandsaw” (asked for again by a change of the machine on 1 May)."},
        {due(bandsaw, "c"),
         "Check-out: Bandsaw | passed on 3 March with Mara Devlin; due since 1 November, still counts "
         "through "
         "6 February 2027",
         "To be renewed: the check-out “Bandsaw” (passed on 3 March with Mara Devlin; due since 1 November, "
         "still counts through 6 February 2027)."},
        {holds({NeedAge{16}}, nullptr), "Not for people under 16 | ", "There: an age of 16 or more."},
        {missing({NeedAge{18}}, nullptr), "Not for people under 18 | nothing on file that shows it",
         "Still needed: an age of 18 or more (nothing on file that shows it)."},
        {spared({NeedAge{18}}),
         "Not for people under 18 | nothing on file that shows it; counts through 6 February 2027 for people "
         "who "
         "were here before",
         "To be renewed: an age of 18 or more (nothing on file that shows it; counts through 6 February 2027 "
         "for "
         "people who were here before)."},
        {holds({NeedStanding{"bandsaw", Rung::independent}}, nullptr, jan24),
         "Bandsaw: without a supervisor | counts through 23 January 2027",
         "There: leave to use the bandsaw without a supervisor (counts through 23 January 2027)."},
        {missing({NeedStanding{"bandsaw", Rung::supervised}}, nullptr),
         "Bandsaw: at least with a supervisor | not yet",
         "Still needed: leave to use the bandsaw at least with a supervisor (not yet)."},
        {holds({NeedTierStanding{2, Rung::supervised, std::nullopt}}, nullptr),
         "Every machine of tier 2: at least with a supervisor | ",
         "There: leave to use every machine of tier 2 at least with a supervisor."},
        {missing({NeedTierStanding{2, Rung::independent, 1}}, nullptr),
         "One machine of tier 2: without a supervisor | not yet",
         "Still needed: leave to use one machine of tier 2 without a supervisor (not yet)."},
        {missing({NeedTierStanding{2, Rung::independent, 3}}, nullptr),
         "3 machines of tier 2: without a supervisor | not yet",
         "Still needed: leave to use 3 machines of tier 2 without a supervisor (not yet)."},
    };
    for (const Case& each : cases) {
      QCOMPARE(one(need_lines(each.gate, s.reader()).front()), each.line);
      QCOMPARE(need_lines(each.gate, s.reader()).front().holds, each.gate.state != GateState::unmet);
      QCOMPARE(gate_sentence(each.gate, s.reader()), each.sentence);
    }
  }

  void practice_and_use_say_how_far_it_has_come() {
    Reason r = reason(practice, false);
    r.minutes = 60;
    r.sessions = 1;
    const QString asked = "Supervised practice: 90 minutes in 2 sessions within 12 months | ";
    QCOMPARE(one(need_lines(gate(r, GateState::unmet), shop.reader()).front()),
             asked + "60 minutes in 1 session so far");
    QCOMPARE(
        gate_sentence(gate(r, GateState::unmet), shop.reader()),
        QString("Still needed: supervised practice, 90 minutes in 2 sessions within 12 months (60 minutes "
                "in 1 session so far)."));
    r.holds = true;
    r.until = start(2027, 1, 24);
    QCOMPARE(one(need_lines(gate(r, GateState::met, r.until, r.until), shop.reader()).front()),
             asked + "60 minutes in 1 session so far, counts through 23 January 2027");
    Reason used = reason(use, false);
    used.sessions = 2;
    QCOMPARE(one(need_lines(gate(used, GateState::unmet), shop.reader()).front()),
             QString("Used on the bandsaw 3 times within 90 days | 2 times so far"));
    used.holds = true;
    used.sessions = 3;
    QCOMPARE(gate_sentence(gate(used, GateState::met), shop.reader()),
             QString("There: use on the bandsaw 3 times within 90 days (3 times so far)."));
  }

  void lists_of_requirements_stand_below_their_heading() {
    Reason any = reason({NeedAnyOf{}}, false);
    any.of = {reason({NeedAge{18}}, false), reason(waiver, false)};
    const auto lines = need_lines(gate(any, GateState::unmet), shop.reader());
    QCOMPARE(lines.size(), std::size_t(3));
    QCOMPARE(lines[0].what, QString("One of these"));
    QCOMPARE(lines[1].depth, 1);
    QCOMPARE(gate_sentence(gate(any, GateState::unmet), shop.reader()),
             QString("Still needed: one of these: an age of 18 or more (nothing on file that shows it); the "
                     "paper “Liability waiver” (nothing on file yet)."));
    Reason some = reason({NeedSomeOf{2, {}}}, true, start(2027, 1, 24));
    some.of = {reason({NeedAge{16}}, true), reason(waiver, false)};
    QCOMPARE(
        gate_sentence(gate(some, GateState::in_grace, start(2026, 11, 1), some.until), shop.reader()),
        QString("To be renewed: at least 2 of these (due since 1 November, still counts through 23 January "
                "2027): an age of 16 or more, which holds; the paper “Liability waiver” (nothing on file "
                "yet)."));
    QCOMPARE(need_lines(gate(reason({NeedAllOf{}}, true), GateState::met), shop.reader()).front().what,
             QString("All of these"));
    QCOMPARE(need_lines(gate(reason({NeedSomeOf{1, {}}}, true), GateState::met), shop.reader()).front().what,
             QString("At least one of these"));
  }

  void under_a_checkout_only_what_is_still_to_be_given() {
    Reason checkout = reason(bandsaw, false);
    checkout.of = {reason({NeedAge{16}}, true), reason(waiver, false)};
    QCOMPARE(need_lines(gate(checkout, GateState::unmet), shop.reader()).size(), std::size_t(2));
    QCOMPARE(gate_sentence(gate(checkout, GateState::unmet), shop.reader()),
             QString("Still needed: the check-out “Bandsaw” (nothing on file yet), for which are needed: the "
                     "paper “Liability waiver” (nothing on file yet)."));
  }

  void what_keeps_the_standing_and_is_to_be_renewed() {
    StandingAnswer answer = standing(Rung::independent);
    answer.gates = {gate(reason(waiver, true), GateState::in_grace, start(2026, 11, 1), start(2026, 12, 1)),
                    gate(reason(guards, true), GateState::met, start(2027, 6, 1), start(2027, 7, 1)),
                    gate(reason(tier3, true), GateState::met, start(2027, 5, 1), start(2027, 5, 1)),
                    gate(reason(bandsaw, true), GateState::met)};
    QCOMPARE(due_sentences(answer, shop.reader()),
             QStringList("To be renewed: the paper “Liability waiver”, due since 1 November, still counts "
                         "through 30 November."));
    QCOMPARE(next_due_sentence(answer, shop.reader()),
             QString("Next to be renewed: the quiz “Tier 3”, with 80 % or more, due by 30 April 2027."));
    // What guards a rung above keeps nothing.
    for (GateAnswer& each : answer.gates) each.guards = Rung::independent;
    answer.standing = Rung::supervised;
    QVERIFY(due_sentences(answer, shop.reader()).isEmpty());
    QCOMPARE(next_due_sentence(answer, shop.reader()), QString());
  }

  void why_says_what_is_missing_first_and_what_no_gate_says() {
    StandingAnswer answer = standing(Rung::supervised);
    answer.gates = {gate(reason(waiver, true), GateState::met),
                    gate(reason(bandsaw, false), GateState::unmet)};
    answer.gates[1].guards = Rung::independent;
    QCOMPARE(why_sentences("forge", answer, false, shop.reader()),
             QStringList({"Still needed: the check-out “Bandsaw” (nothing on file yet).",
                          "There: the paper “Liability waiver” (counts with no end)."}));
    answer.standing = Rung::barred;
    answer.gates[0] = gate(reason(waiver, false), GateState::unmet);
    QCOMPARE(why_sentences("forge", answer, false, shop.reader()),
             QStringList("Still needed: the paper “Liability waiver” (nothing on file yet)."));
    answer.gates.clear();
    QCOMPARE(why_sentences("forge", answer, false, shop.reader()), QStringList("Nothing is asked for it."));
    answer.stands_for = {"combi/jointing", "combi/planing"};
    QCOMPARE(why_sentences("combi", answer, false, shop.reader()),
             QStringList("The lowest of these counts: the combi for jointing and the combi for planing."));
    answer.stands_for.clear();
    QCOMPARE(why_sentences("forge", answer, false, shop.reader()),
             QStringList("The rulebook in force does not have the forge."));
    answer.rulebook.reset();
    QCOMPARE(why_sentences("forge", answer, false, shop.reader()),
             QStringList("No rulebook is in force, so nobody may use a machine."));
  }

  void problems_are_sentences() {
    QCOMPARE(problem_sentence({"pin", "that is not the PIN", "Try again in a minute."}),
             QString("That is not the PIN. Try again in a minute."));
    QVERIFY(caution().contains("does not make a machine safe"));
  }

  // The strings are those that Qt's own extraction finds, not a list of ours.
  void no_string_of_the_program_uses_a_word_that_nobody_reads() {
    const auto strings = strings_of_the_program();
    for (const ProgramString& string : strings) {
      const QString where = string.context + ": " + string.source;
      QVERIFY2(!never_words.match(string.source).hasMatch(), qPrintable(where));
      QVERIFY2(!guessing_words.match(string.source).hasMatch(), qPrintable(where));
    }
    QVERIFY2(strings.size() > 150, qPrintable(QString("only %1 strings found").arg(strings.size())));
  }
};

}  // namespace words_test

WM_PAGE_TEST(words_test, WordsTest)
#include "words_test.moc"
