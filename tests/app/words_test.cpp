// What people read about requirements, rungs and states; and every string of the program against the word
// list.
#include "app/words/words.h"

#include <QtTest>

#include "app/words/labels.h"
#include "program_strings.h"

using namespace wm;
using namespace wm::app;

namespace {

const Zone chicago = Zone::named("America/Chicago").value();
// 2026-11-25, 17:20 in Chicago.
const Instant now = chicago.instant({day_of({2026, 11, 25}), 17, 20, 0});

Instant start(int year, int month, int day) { return chicago.start(day_of({year, month, day})); }

std::vector<NeedLine> lines(Reason reason, GateState state, const std::vector<db::Entry>& entries = {}) {
  GateAnswer gate;
  gate.state = state;
  gate.reason = std::move(reason);
  const auto record_of = [&](const RecordId& id) -> const db::Entry* {
    for (const db::Entry& entry : entries)
      if (entry.id == id) return &entry;
    return nullptr;
  };
  return need_lines(
      gate, record_of, [](const PersonId&) { return QString("Mara Devlin"); }, chicago, now);
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
  return answer;
}

/// Words that nobody reads here, as whole words.
const QRegularExpression never(
    R"(\b(alone|certified|certificate|green|trainee|denied|banned|locked|until|sign off|signed off|head)\b)",
    QRegularExpression::CaseInsensitiveOption);
const QRegularExpression guessing(R"(\b(he|she|him|her|his|hers|himself|herself|lad|lady|guys)\b)",
                                  QRegularExpression::CaseInsensitiveOption);

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
        standing_sentence("Kim", "planer", standing(Rung::independent, start(2027, 8, 29)),
                          {Staffed{}, Buddy{1, Rung::independent}}, {}, chicago, now),
        QString("Kim may use the planer without a supervisor, through 28 August 2027, while staff are in and "
                "one other qualified person is present."));
    QCOMPARE(
        standing_sentence("Kim", "jointer-planer/jointing", standing(Rung::supervised), {}, {}, chicago, now),
        QString("Kim may use the jointer/planer for jointing only with a supervisor."));
    QCOMPARE(standing_sentence("Kim", "forge", standing(Rung::barred), {}, {}, chicago, now),
             QString("Kim may not yet use the forge."));
    QCOMPARE(standing_sentence("Kim", "table-saw", standing(Rung::independent), {}, {"no dado", "one jig"},
                               chicago, now),
             QString("Kim may use the table saw without a supervisor. Restricted: no dado; one jig."));
  }

  void what_ends_within_today_says_when() {
    const auto words =
        standing_sentence("Kim", "forge", standing(Rung::supervised, now + 3600), {}, {}, chicago, now);
    QVERIFY2(words.contains("through today, 6:20"), qPrintable(words));
  }

  void a_suspension_reads_as_paused_and_sends_to_the_manager() {
    StandingAnswer answer = standing(Rung::barred);
    answer.suspensions.push_back({"s1", now - 100, start(2026, 12, 4)});
    QCOMPARE(standing_sentence("Kim", "forge", answer, {}, {}, chicago, now),
             QString("Kim is paused on the forge through 3 December: please speak to the manager."));
    answer.suspensions.push_back({"s2", now - 50, std::nullopt});
    QCOMPARE(standing_sentence("Kim", "forge", answer, {}, {}, chicago, now),
             QString("Kim is paused on the forge: please speak to the manager."));
  }

  void a_day_that_is_a_birthday_is_never_shown() {
    StandingAnswer answer = standing(Rung::supervised, start(2027, 2, 3));
    GateAnswer gate;
    gate.guards = Rung::independent;
    gate.reason = reason({NeedAge{18}}, false, start(2027, 2, 3));
    gate.reason.rests_on = {"b"};
    answer.gates.push_back(gate);
    QVERIFY(until_shows_birthday(answer));
    QVERIFY(!standing_sentence("Kim", "forge", answer, {}, {}, chicago, now).contains("through"));
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
             QString("Every machine of tier 2: only with a supervisor | "));
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
             QString("Paper: Waiver | last on 2 October 2025, no longer counts"));
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
    gate.lapses = start(2026, 12, 10);
    const auto said = need_lines(
        gate, [](const RecordId&) { return nullptr; }, [](const PersonId&) { return QString(); }, chicago,
        now);
    QCOMPARE(said.front().detail, QString("due now, still counts through 9 December"));
    gate.spared = true;
    const auto spared = need_lines(
        gate, [](const RecordId&) { return nullptr; }, [](const PersonId&) { return QString(); }, chicago,
        now);
    QCOMPARE(spared.front().detail, QString("counts through 9 December for people who were here before"));
  }

  void hindrances_and_problems_are_sentences() {
    for (const Hindrance h : {Hindrance::barred, Hindrance::buddy, Hindrance::locked_out,
                              Hindrance::no_supervisor, Hindrance::staffed})
      QVERIFY(hindrance_sentence(h, "Kim").endsWith('.'));
    QCOMPARE(hindrance_sentence(Hindrance::locked_out, "Kim"), QString("The machine is out of service."));
    QCOMPARE(problem_sentence({"pin", "that is not the PIN", "Try again in a minute."}),
             QString("That is not the PIN. Try again in a minute."));
    QVERIFY(caution().contains("does not make a machine safe"));
  }

  // The strings are those that Qt's own extraction finds, not a list of ours.
  void no_string_of_the_program_uses_a_word_that_nobody_reads() {
    const auto strings = strings_of_the_program();
    for (const ProgramString& string : strings) {
      const QString where = string.context + ": " + string.source;
      QVERIFY2(!never.match(string.source).hasMatch(), qPrintable(where));
      QVERIFY2(!guessing.match(string.source).hasMatch(), qPrintable(where));
    }
    QVERIFY2(strings.size() > 150, qPrintable(QString("only %1 strings found").arg(strings.size())));
  }
};

QTEST_MAIN(WordsTest)
#include "words_test.moc"
