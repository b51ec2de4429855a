// What people read about requirements, rungs and states; and every string of the program against the word
// list.
#include "app/words/words.h"

#include <QtTest>
#include <memory>

#include "app/words/change_words.h"
#include "app/words/grace_words.h"
#include "app/words/needs.h"
#include "app/words/route_words.h"
#include "app/words/start_words.h"
#include "app/words/why_words.h"
#include "program_strings.h"
#include "word_list.h"
#include "words_reader.h"

using namespace wm;
using namespace wm::app;

namespace {

const WordsShop shop;
const Instant now = shop.now;

Instant start(int year, int month, int day) { return shop.start(year, month, day); }

AnswerReader reader(std::vector<db::Entry> entries = {}) {
  AnswerReader reader = shop.reader();
  reader.record_of = [kept = std::make_shared<std::vector<db::Entry>>(std::move(entries))](
                         const RecordId& id) -> const db::Entry* {
    for (const db::Entry& entry : *kept)
      if (entry.id == id) return &entry;
    return nullptr;
  };
  return reader;
}

std::vector<NeedLine> lines(Reason reason, GateState state, const std::vector<db::Entry>& entries = {}) {
  GateAnswer gate;
  gate.state = state;
  gate.reason = std::move(reason);
  return need_lines(gate, reader(entries));
}

Reason reason(Requirement need, bool holds, std::optional<Instant> until = std::nullopt) {
  Reason r;
  r.need = std::move(need);
  r.holds = holds;
  r.until = until;
  return r;
}

db::Entry entry(const char* id, Instant at, Fact fact) {
  db::Entry e;
  e.id = id;
  e.at = at;
  e.fact = std::move(fact);
  return e;
}

QString one(const NeedLine& line) { return line.what + " | " + line.detail; }

StandingAnswer standing(Rung rung, std::optional<Instant> until = std::nullopt) {
  StandingAnswer answer;
  answer.standing = rung;
  answer.until = until;
  answer.rulebook = 1;
  return answer;
}

QString sentence(const TargetName& target, const StandingAnswer& answer,
                 const std::vector<Condition>& conditions = {}, const QStringList& restrictions = {}) {
  return standing_sentence(target, answer, conditions, restrictions, reader());
}

/// One of each kind, whose parts are of the first two.
std::vector<Requirement> every_kind() {
  const Requirement paper{NeedDocument{"waiver", {}, {}}}, age{NeedAge{18}};
  NeedCheckout checkout{"bandsaw", RevisionRule::current, {}, {}, {}, {}, {}, false};
  return {paper,
          age,
          {NeedLesson{"guards", RevisionRule::current, {}, {}, {}}},
          {NeedQuiz{"tier-3", 80, RevisionRule::current, {}, {}, {}, {}}},
          {checkout},
          {NeedPractice{std::nullopt, 90, 2, Period{PeriodUnit::months, 12}}},
          {NeedRecentUse{"bandsaw", 3, Period{PeriodUnit::days, 90}}},
          {NeedStanding{"bandsaw", Rung::independent}},
          {NeedTierStanding{2, Rung::supervised, std::nullopt}},
          {NeedAllOf{{paper, age}}},
          {NeedAnyOf{{paper, age}}},
          {NeedSomeOf{2, {paper, age}}}};
}

std::vector<db::Entry> every_record() {
  return {entry("d", start(2025, 10, 2), Document{"kim", "waiver", {}}),
          entry("q", start(2026, 10, 25), Quiz{"kim", "tier-3", 3, 12, 20, 1}),
          entry("f", start(2026, 3, 3), Checkout{"kim", "bandsaw", 1, Outcome::failed, "mara"}),
          entry("l", start(2026, 10, 2), Lesson{"kim", "guards", 2}),
          entry("s", start(2026, 10, 2), Suspend{"kim", Everything{}, {}})};
}

const RecordId* carrying(const Requirement& need) {
  static const RecordId d = "d", q = "q", f = "f", l = "l";
  if (std::holds_alternative<NeedDocument>(need.need)) return &d;
  if (std::holds_alternative<NeedQuiz>(need.need)) return &q;
  if (std::holds_alternative<NeedCheckout>(need.need)) return &f;
  if (std::holds_alternative<NeedLesson>(need.need)) return &l;
  return nullptr;
}

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
    QCOMPARE(sentence("jointer-planer/jointing", standing(Rung::supervised)),
             QString("Kim may use the jointer/planer for jointing only with a supervisor."));
    QCOMPARE(sentence("forge", standing(Rung::barred)), QString("Kim may not yet use the forge."));
    QCOMPARE(sentence("table-saw", standing(Rung::independent), {}, {"no dado", "one jig"}),
             QString("Kim may use the table saw without a supervisor. Restricted: no dado; one jig."));
  }

  void what_ends_within_today_says_when() {
    const auto words = sentence("forge", standing(Rung::supervised, now + 3600));
    QVERIFY2(words.contains("through today, 6:20"), qPrintable(words));
  }

  void a_suspension_reads_as_paused_and_sends_to_the_manager() {
    StandingAnswer answer = standing(Rung::barred);
    answer.suspensions.push_back({"s1", now - 100, start(2026, 12, 4)});
    QCOMPARE(sentence("forge", answer),
             QString("Kim is paused on the forge through 3 December: please speak to the manager."));
    answer.suspensions.push_back({"s2", now - 50, std::nullopt});
    QCOMPARE(sentence("forge", answer), QString("Kim is paused on the forge: please speak to the manager."));
  }

  void a_day_that_is_a_birthday_is_never_shown() {
    StandingAnswer answer = standing(Rung::supervised, start(2027, 2, 3));
    GateAnswer gate;
    gate.guards = Rung::independent;
    gate.reason = reason({NeedAge{18}}, false, start(2027, 2, 3));
    gate.reason.rests_on = {"b"};
    answer.gates.push_back(gate);
    answer.next = Rung::independent;
    QVERIFY(!shown_end(answer, reader()));
    QVERIFY(!sentence("forge", answer).contains("through"));
    QVERIFY(next_sentence(answer, reader()).isEmpty());
    answer.next = Rung::barred;  // what ends on a birthday tells nothing: nobody gets younger
    QVERIFY(sentence("forge", answer).contains("through 2 February 2027"));
    const auto line =
        lines(gate.reason, GateState::unmet, {entry("b", start(2009, 2, 3), Birth{"p", {}})}).front();
    QCOMPARE(one(line), QString("Not for people under 18 | under 18"));
  }

  void every_kind_of_requirement_that_holds() {
    const std::vector<db::Entry> entries = {
        entry("d", start(2026, 10, 2), Document{"p", "waiver", {}}),
        entry("q", start(2026, 10, 25), Quiz{"p", "tier-3", 1, 18, 20, 0}),
        entry("c", start(2026, 3, 3), Checkout{"p", "bandsaw", 1, Outcome::passed, "a"}),
        entry("l", start(2026, 10, 2), Lesson{"p", "guards", 3}),
    };
    const auto held = [&](Requirement need, const char* record, std::optional<Instant> until = std::nullopt) {
      Reason r = reason(std::move(need), true, until);
      r.rests_on = {record};
      r.revision_needed = 3;
      return one(lines(r, GateState::met, entries).front());
    };
    QCOMPARE(held({NeedDocument{"liability-waiver", {}, {}}}, "d"),
             QString("Paper: Liability waiver | taken on 2 October, counts with no end"));
    QCOMPARE(held({NeedLesson{"guards", RevisionRule::current, {}, {}, {}}}, "l", start(2027, 1, 24)),
             QString("Lesson: Guards, revision 3 | on 2 October, counts through 23 January 2027"));
    QCOMPARE(held({NeedQuiz{"tier-3", 80, RevisionRule::any, {}, {}, {}, {}}}, "q", start(2027, 1, 24)),
             QString("Quiz: Tier 3, 80 % needed | 90 % on 25 October, counts through 23 January 2027"));
    QCOMPARE(held({NeedCheckout{"bandsaw", RevisionRule::any, {}, {}, {}, {}, {}, false}}, "c"),
             QString("Check-out: Bandsaw | passed on 3 March with Mara Devlin, counts with no end"));
    QCOMPARE(held({NeedAge{16}}, "d"), QString("Not for people under 16 | "));
    QCOMPARE(held({NeedStanding{"bandsaw", Rung::independent}}, "d"),
             QString("Bandsaw: without a supervisor | "));
    QCOMPARE(held({NeedTierStanding{2, Rung::supervised, std::nullopt}}, "d"),
             QString("Every machine of tier 2: at least with a supervisor | "));
    QCOMPARE(held({NeedTierStanding{2, Rung::independent, 1}}, "d"),
             QString("One machine of tier 2: without a supervisor | "));
  }

  void every_kind_of_requirement_that_does_not_hold() {
    const std::vector<db::Entry> entries = {
        entry("d", start(2025, 10, 2), Document{"p", "waiver", {}}),
        entry("q", start(2026, 10, 25), Quiz{"p", "tier-3", 3, 12, 20, 0}),
        entry("k", start(2026, 10, 25), Quiz{"p", "tier-3", 3, 19, 20, 1}),
        entry("f", start(2026, 3, 3), Checkout{"p", "bandsaw", 1, Outcome::failed, "a"}),
        entry("i", start(2026, 5, 1), Incident{"p", "bandsaw", 2, Part::operating}),
        entry("h", start(2026, 5, 1), Change{"bandsaw"}),
        entry("l", start(2026, 10, 2), Lesson{"p", "guards", 2}),
    };
    const auto missed = [&](Requirement need, const char* record) {
      Reason r = reason(std::move(need), false);
      if (record) r.rests_on = {record};
      r.revision_needed = 3;
      return one(lines(r, GateState::unmet, entries).front());
    };
    const Requirement checkout{NeedCheckout{"bandsaw", RevisionRule::any, {}, {}, {}, {}, {}, false}};
    const Requirement quiz{NeedQuiz{"tier-3", 80, RevisionRule::any, {}, {}, {}, {}}};
    QCOMPARE(missed({NeedDocument{"waiver", {}, {}}}, nullptr),
             QString("Paper: Waiver | nothing on file yet"));
    QCOMPARE(missed({NeedDocument{"waiver", {}, {}}}, "d"),
             QString("Paper: Waiver | last on 2 October 2025, does not count"));
    QCOMPARE(missed({NeedLesson{"guards", RevisionRule::current, {}, {}, {}}}, "l"),
             QString("Lesson: Guards, revision 3 | last on 2 October, revision 2"));
    QCOMPARE(missed(quiz, "q"), QString("Quiz: Tier 3, 80 % needed | 60 % on 25 October"));
    QCOMPARE(missed(quiz, "k"),
             QString("Quiz: Tier 3, 80 % needed | 95 % on 25 October, a critical question missed"));
    QCOMPARE(missed(checkout, "f"), QString("Check-out: Bandsaw | not passed on 3 March"));
    QCOMPARE(missed(checkout, "i"), QString("Check-out: Bandsaw | asked for again by an incident on 1 May"));
    QCOMPARE(missed(checkout, "h"),
             QString("Check-out: Bandsaw | asked for again by a change of the machine on 1 May"));
    QCOMPARE(missed({NeedAge{18}}, nullptr),
             QString("Not for people under 18 | nothing on file that shows it"));
    QCOMPARE(missed({NeedStanding{"bandsaw", Rung::independent}}, nullptr),
             QString("Bandsaw: without a supervisor | not yet"));
  }

  void practice_and_use_say_how_far_it_has_come() {
    Reason r = reason({NeedPractice{std::nullopt, 90, 2, Period{PeriodUnit::months, 12}}}, false);
    r.minutes = 60;
    r.sessions = 1;
    QCOMPARE(one(lines(r, GateState::unmet).front()),
             QString("Supervised practice: 90 minutes in 2 sessions within 12 months | 60 minutes in 1 "
                     "session so far"));
    Reason use = reason({NeedRecentUse{"bandsaw", 3, Period{PeriodUnit::days, 90}}}, false);
    use.sessions = 2;
    QCOMPARE(one(lines(use, GateState::unmet).front()),
             QString("Used on the bandsaw 3 times within 90 days | 2 times so far"));
  }

  void lists_of_requirements_stand_below_their_heading() {
    Reason any = reason({NeedAnyOf{}}, false);
    any.of = {reason({NeedAge{18}}, false), reason({NeedDocument{"consent", {}, {}}}, false)};
    const auto told = lines(any, GateState::unmet);
    QCOMPARE(told.size(), std::size_t(3));
    QCOMPARE(told[0].what, QString("One of these"));
    QCOMPARE(told[1].depth, 1);
    QCOMPARE(lines(reason({NeedAllOf{}}, true), GateState::met).front().what, QString("All of these"));
    QCOMPARE(lines(reason({NeedSomeOf{2, {}}}, true), GateState::met).front().what,
             QString("At least 2 of these"));
  }

  void grace_says_how_long_it_still_counts() {
    GateAnswer gate;
    gate.state = GateState::in_grace;
    gate.reason = reason({NeedDocument{"induction", {}, {}}}, true);
    gate.due = start(2026, 10, 12);
    gate.lapses = start(2026, 12, 10);
    QCOMPARE(need_lines(gate, reader()).front().detail,
             QString("due since 12 October, still counts through 9 December"));
    gate.spared = true;
    QCOMPARE(need_lines(gate, reader()).front().detail,
             QString("counts through 9 December for people who were here before"));
  }

  void hindrances_say_what_would_lift_them_and_who_can() {
    MayStart may;
    may.because = {Hindrance::barred, Hindrance::buddy, Hindrance::locked_out, Hindrance::no_supervisor,
                   Hindrance::staffed};
    may.conditions = {Staffed{}, Buddy{1, Rung::independent}};
    may.lockouts = {"k"};
    db::Entry lock = entry("k", start(2026, 11, 21), Lockout{"unit"});
    lock.entered_by = "tom";
    const db::Tag tag{"k", "T-31", "padlock 1", "blade guard broken", "tom"};
    const AnswerReader known = reader({lock});
    const QStringList told =
        hindrance_sentences(may, {known, [&](const RecordId& id) { return id == "k" ? &tag : nullptr; },
                                  [] { return QStringList{"Mara Devlin"}; }});
    QCOMPARE(told,
             QStringList({"Kim may not use it yet.",
                          "Too few others are present: it may be used while one other qualified person is "
                          "present.",
                          "The machine is out of service since 21 November, put by Tom Ryde. Tag T-31, key "
                          "with Tom Ryde. Tom Ryde can take the padlock off; a manager can once it was "
                          "tried to reach Tom Ryde.",
                          "Nobody is here and free who can supervise. Mara Devlin could.",
                          "No staff are in: somebody on duty has to come in first."}));
    MayStart free;
    free.may = true;
    free.can_supervise = {"mara", "tom"};
    QCOMPARE(may_start_sentence(free, Rung::supervised, known),
             QString("Here now who can supervise: Mara Devlin and Tom Ryde."));
    QCOMPARE(may_start_sentence(free, Rung::independent, known), QString("Kim may start it now."));
    QVERIFY(may_start_sentence(may, Rung::independent, known).isEmpty());
  }

  void problems_are_sentences() {
    QCOMPARE(problem_sentence({"pin", "that is not the PIN", "Try again in a minute."}),
             QString("That is not the PIN. Try again in a minute."));
    QVERIFY(caution().contains("does not make a machine safe"));
  }

  void a_route_is_told_day_by_day() {
    Route route;
    const auto step = [&](Instant at, Fact fact) {
      route.steps.push_back({"step", at, at, {}, std::move(fact)});
    };
    step(now, Document{"kim", "waiver", {}});
    step(now, Lesson{"kim", "guards", 3});
    step(start(2026, 12, 3), Supervised{"kim", "bandsaw", 60, "tom"});
    step(start(2026, 12, 3), Supervised{"kim", "bandsaw", 60, "tom"});
    step(start(2027, 2, 3), Checkout{"kim", "bandsaw", 1, Outcome::passed, "mara"});
    route.reaches = start(2027, 2, 3);
    const RouteWords told = route_words(route, "bandsaw", Rung::independent, reader());
    QCOMPARE(
        told.sentences(),
        QStringList({"Today: the paper “Waiver”; then the lesson “Guards”, revision 3.",
                     "From 3 December: 60 minutes of practice on the bandsaw, for instance with Tom Ryde, 2 "
                     "times.",
                     // Kim's birthday: shown to nobody.
                     "Later: the check-out “Bandsaw”, revision 1, for instance with Mara Devlin.",
                     "With that, Kim may use the bandsaw without a supervisor, though not before a day still "
                     "to come."}));
    route.shortest = false;
    QVERIFY(route_words(route, "bandsaw", Rung::independent, reader()).doubt.contains("fewer steps"));
    QVERIFY(
        route_words(Route{}, "bandsaw", Rung::independent, reader()).outcome.startsWith("There is no way"));
  }

  void what_differs_is_told_in_sentences() {
    QCOMPARE(
        drop_sentence({start(2026, 12, 3), "tom", "planer", Rung::independent, Rung::supervised}, reader()),
        QString("Tom Ryde's standing on the planer falls from “without a supervisor” to “only with a "
                "supervisor” on 3 December."));
    const StandingChange change{"tom", "planer", Rung::independent, Rung::barred};
    for (const Were were : {Were::struck_out, Were::in_force}) {
      const QStringList told = standing_change_sentences({change}, were, reader());
      QCOMPARE(told.size(), 1);
      QVERIFY2(told[0].contains("Tom Ryde") && told[0].contains("planer"), qPrintable(told[0]));
      QVERIFY2(fault_of_sentence(told[0]).isEmpty(), qPrintable(told[0]));
      QVERIFY(fault_of_sentence(standing_change_sentences({}, were, reader()).join(' ')).isEmpty());
    }
    const Shift on_a_birthday{"kim", "planer", start(2027, 2, 3), {}};
    QVERIFY(!shift_sentence(on_a_birthday, reader()).contains("February"));
    QVERIFY(shift_sentence({"tom", "planer", start(2027, 2, 3), {}}, reader()).contains("3 February 2027"));
    QVERIFY(fault_of_sentence(
                timeline_sentence({{start(2024, 1, 2), Rung::barred}, {start(2024, 3, 2), Rung::supervised}},
                                  reader()))
                .isEmpty());
  }

  /// Every kind of requirement, there or missing, in every state, on every rung, in zones whose days begin
  /// late, twice or not at all: each sentence is whole, and none tells the birthday.
  void every_kind_in_every_state_is_told_in_whole_sentences() {
    int told = 0;
    for (const char* zone :
         {"America/Chicago", "America/Havana", "Asia/Kathmandu", "Pacific/Apia", "Asia/Beirut"}) {
      AnswerReader known = reader(every_record());
      known.zone = Zone::named(zone).value();
      const Instant birthday = known.zone.start(day_of({2027, 2, 3}));
      for (const Requirement& need : every_kind())
        for (const bool holds : {true, false})
          for (const GateState state : {GateState::met, GateState::in_grace, GateState::unmet})
            for (const Rung rung : {Rung::barred, Rung::supervised, Rung::independent})
              for (const bool spared : {true, false}) {
                if (holds == (state == GateState::unmet)) continue;
                GateAnswer gate;
                gate.id = "gate";
                gate.guards = rung;
                gate.state = state;
                gate.spared = spared && state == GateState::in_grace;
                gate.reason = reason(need, holds, birthday);
                gate.reason.revision_needed = 3;
                if (const RecordId* id = carrying(need)) gate.reason.rests_on = {*id};
                if (std::holds_alternative<NeedAllOf>(need.need) ||
                    std::holds_alternative<NeedAnyOf>(need.need) ||
                    std::holds_alternative<NeedSomeOf>(need.need))
                  gate.reason.of = {reason(every_kind()[0], holds), reason(every_kind()[1], holds, birthday)};
                if (state == GateState::in_grace) gate.due = now - 86400;
                if (holds) gate.lapses = now + 40 * 86400;
                StandingAnswer answer = standing(rung, birthday);
                answer.next = Rung::independent;
                answer.gates = {gate};
                QStringList all = why_sentences("bandsaw", answer, true, known);
                all << gate_sentence(gate, known) << due_sentences(answer, known)
                    << standing_sentence("bandsaw", answer, {Staffed{}}, {}, known);
                for (const QString& each : {next_due_sentence(answer, known), since_sentence(answer, known)})
                  if (!each.isEmpty()) all << each;
                for (const QString& each : all) {
                  QVERIFY2(fault_of_sentence(each).isEmpty(),
                           qPrintable(fault_of_sentence(each) + ": " + each));
                  const bool rises = rung != Rung::independent;
                  const bool of_age = std::holds_alternative<NeedAge>(need.need);
                  if (rises && of_age) QVERIFY2(!each.contains("February 2027"), qPrintable(each));
                  ++told;
                }
                for (const NeedLine& line : need_lines(gate, known)) {
                  QVERIFY2(fault_of_words(line.what).isEmpty(), qPrintable(line.what));
                  QVERIFY2(fault_of_words(line.detail).isEmpty(), qPrintable(line.detail));
                }
              }
      StandingAnswer paused = standing(Rung::barred);
      paused.suspensions = {{"s", now - 86400, std::nullopt}};
      for (const QString& each : why_sentences("bandsaw", paused, false, known))
        QVERIFY2(fault_of_sentence(each).isEmpty(), qPrintable(each));
    }
    QVERIFY2(told > 1000, qPrintable(QString::number(told)));
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

QTEST_MAIN(WordsTest)
#include "words_test.moc"
