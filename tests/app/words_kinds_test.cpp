// Every kind of requirement in every state, in zones whose days begin late, twice or not at all.
#include <QtTest>

#include "app/words/grace_words.h"
#include "app/words/needs.h"
#include "app/words/why_words.h"
#include "app/words/words.h"
#include "page_test.h"
#include "word_list.h"
#include "words_reader.h"

namespace words_kinds_test {

using namespace wm;
using namespace wm::app;

namespace {

const WordsShop shop;
const Instant now = shop.now;

Instant start(int year, int month, int day) { return shop.start(year, month, day); }

StandingAnswer standing(Rung rung, std::optional<Instant> until = std::nullopt) {
  StandingAnswer answer;
  answer.standing = rung;
  answer.until = until;
  answer.rulebook = 1;
  return answer;
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

WordsShop with_every_record() {
  WordsShop shop;
  shop.add("d", start(2025, 10, 2), Document{"kim", "waiver", {}});
  shop.add("q", start(2026, 10, 25), Quiz{"kim", "tier-3", 3, 12, 20, 1});
  shop.add("f", start(2026, 3, 3), Checkout{"kim", "bandsaw", 1, Outcome::failed, "mara"});
  shop.add("l", start(2026, 10, 2), Lesson{"kim", "guards", 2});
  shop.add("s", start(2026, 10, 2), Suspend{"kim", Everything{}, {}});
  return shop;
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

class WordsKindsTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates)); }

  /// Every kind of requirement, there or missing, in every state, on every rung, in zones whose days begin
  /// late, twice or not at all: each sentence is whole, and none tells the birthday.
  void every_kind_in_every_state_is_told_in_whole_sentences() {
    const WordsShop records = with_every_record();
    int told = 0;
    for (const char* zone :
         {"America/Chicago", "America/Havana", "Asia/Kathmandu", "Pacific/Apia", "Asia/Beirut"}) {
      AnswerReader known = records.reader();
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
};

}  // namespace words_kinds_test

WM_PAGE_TEST(words_kinds_test, WordsKindsTest)
#include "words_kinds_test.moc"
