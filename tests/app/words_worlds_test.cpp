// No sentence tells a birthday: in random shops every birthday is moved by some days, and nothing that is
// said may change.
#include <QtTest>
#include <random>

#include "app/words/change_words.h"
#include "app/words/grace_words.h"
#include "app/words/needs.h"
#include "app/words/route_words.h"
#include "app/words/shown_timeline.h"
#include "app/words/why_words.h"
#include "app/words/words.h"
#include "core/decide/changes.h"
#include "core/decide/decider.h"
#include "page_test.h"
#include "words_reader.h"

namespace words_worlds_test {

using namespace wm;
using namespace wm::app;

namespace {

const WordsShop known;
const std::vector<PersonId> people = {"kim", "mara", "tom"};
const std::vector<TargetName> targets = {"bandsaw", "planer"};
// Whatever else happens or ends does so between the 28th and the 1st, and birthdays are from the 2nd to the
// 26th: moving one there brings it past nothing, so that what is so differs by the birthday alone.
constexpr int first_birthday = 2, last_birthday = 26, other_day = 28;
constexpr int age_of_majority = 18;

class Dice {
 public:
  explicit Dice(unsigned seed) : engine_(seed) {}
  /// 0 to n - 1.
  int roll(int n) { return std::uniform_int_distribution<int>(0, n - 1)(engine_); }
  bool toss() { return roll(2) == 0; }

 private:
  std::mt19937 engine_;
};

std::optional<Period> months(Dice& dice) {
  if (dice.toss()) return std::nullopt;
  return Period{PeriodUnit::months, 1 + dice.roll(24)};
}

Requirement simple(Dice& dice) {
  switch (dice.roll(6)) {
    case 0:
      return {NeedDocument{"waiver", months(dice), {}}};
    case 1:
      return {NeedLesson{"guards", RevisionRule::any, {}, months(dice), months(dice)}};
    case 2: {
      NeedCheckout checkout{"bandsaw", RevisionRule::any, {}, months(dice), {}, {}, {}, false};
      if (dice.toss()) checkout.given = {{NeedAge{age_of_majority - dice.roll(3)}}};
      return {checkout};
    }
    default:
      return {NeedAge{age_of_majority - 2 + dice.roll(4)}};
  }
}

Requirement any_need(Dice& dice) {
  switch (dice.roll(5)) {
    case 0:
      return {NeedAnyOf{{simple(dice), simple(dice)}}};
    case 1:
      return {NeedAllOf{{simple(dice), simple(dice)}}};
    case 2:
      return {NeedSomeOf{2, {simple(dice), simple(dice), simple(dice)}}};
    default:
      return simple(dice);
  }
}

Rulebook rulebook(Dice& dice) {
  Rulebook book;
  book.effective_from = book.recorded = known.start(2020, 1, 1);
  const auto gates = [&](const std::string& name) {
    std::vector<Gate> made;
    for (int i = 0; i <= dice.roll(3); ++i)
      made.push_back({name + std::to_string(i), dice.toss() ? Rung::supervised : Rung::independent,
                      any_need(dice), std::nullopt});
    return made;
  };
  book.tiers = {{1, gates("tier"), {}, Supervision::independent}};
  for (const TargetName& target : targets)
    book.classes.push_back({target, 1, {}, gates(target), {}, {}, Supervision::independent});
  if (dice.toss())
    book.classes[1].gates.push_back(
        {"bandsaw-first", Rung::supervised, {NeedStanding{"bandsaw", Rung::supervised}}, std::nullopt});
  return book;
}

Fact happened(Dice& dice) {
  const PersonId& person = people[dice.roll(3)];
  switch (dice.roll(5)) {
    case 0:
      return Document{person, "waiver", std::nullopt};
    case 1:
      return Lesson{person, "guards", 1};
    case 2:
      return Use{person, targets[dice.roll(2)]};
    case 3:
      return Suspend{person, TargetScope{targets[dice.roll(2)]}, std::nullopt};
    default:
      return Checkout{person, "bandsaw", 1, dice.roll(4) > 0 ? Outcome::passed : Outcome::failed,
                      people[dice.roll(3)]};
  }
}

/// The same shop for the same seed, but for the days of its birthdays within their months.
Shop shop_of(unsigned seed, Dice& days) {
  Dice dice(seed);
  Shop shop;
  shop.zone = known.zone;
  shop.people = people;
  shop.rulebooks = {rulebook(dice)};
  int number = 0;
  const auto add = [&](Instant at, Fact fact) {
    shop.records.push_back({"r" + std::to_string(++number), at, at, std::nullopt, std::move(fact)});
  };
  for (const PersonId& person : people) {
    const int year = 2026 - age_of_majority - 3 + dice.roll(6), month = 1 + dice.roll(12);
    const int day = first_birthday + days.roll(last_birthday - first_birthday + 1);
    add(known.start(2020, 1, 1), Birth{person, day_of({year, month, day})});
  }
  add(known.start(2020, 1, 1), Appoint{people[dice.roll(3)], Everything{}, false, std::nullopt});
  for (int i = 0; i < 12; ++i)
    add(known.start(2022 + dice.roll(5), 1 + dice.roll(11), other_day) + i, happened(dice));
  return shop;
}

AnswerReader reader_of(const Shop& shop, const PersonId& person, const std::vector<db::Entry>& entries) {
  AnswerReader reader = known.reader();
  reader.person = person;
  reader.now = known.start(2026, 11, other_day) + 60'000;
  reader.birthdays = {};
  for (const Record& record : shop.records)
    if (const auto* birth = std::get_if<Birth>(&record.fact))
      reader.birthdays.add(birth->person, birth->born);
  reader.record_of = [&entries](const RecordId& id) -> const db::Entry* {
    for (const db::Entry& entry : entries)
      if (entry.id == id) return &entry;
    return nullptr;
  };
  return reader;
}

QStringList said_about(Decider& decider, const TargetName& target, const AnswerReader& reader, Dice dice) {
  const StandingAnswer answer = decider.standing(reader.person, target, reader.now);
  QStringList said{standing_sentence(target, answer, {}, {}, reader), since_sentence(answer, reader),
                   next_sentence(answer, reader), next_due_sentence(answer, reader)};
  for (const bool reasons : {true, false}) said << why_sentences(target, answer, reasons, reader);
  said << due_sentences(answer, reader);
  for (const GateAnswer& gate : answer.gates) {
    said << gate_sentence(gate, reader);
    for (const NeedLine& line : need_lines(gate, reader)) said << line.what << line.detail;
  }
  // From any day of a month on, whichever side of a birthday it is.
  const Instant from = known.start(2020 + dice.roll(8), 1 + dice.roll(12), 1 + dice.roll(28));
  const Instant to = known.start(2029, 1, 1);
  const auto steps = decider.timeline(reader.person, target, before_month_of(from, reader.zone), to);
  said << timeline_sentence(shown_timeline(steps, from, reader), reader);
  for (const Rung rung : {Rung::supervised, Rung::independent})
    said << route_words(decider.route(reader.person, target, rung, reader.now), target, rung, reader)
                .sentences();
  return said;
}

QStringList said_in(const Shop& shop, unsigned seed) {
  std::vector<db::Entry> entries;
  for (const Record& record : shop.records) {
    db::Entry entry;
    entry.id = record.id;
    entry.at = record.at;
    entry.fact = record.fact;
    entries.push_back(std::move(entry));
  }
  Decider decider(shop);
  QStringList said;
  for (const PersonId& person : people)
    for (const TargetName& target : targets)
      said << said_about(decider, target, reader_of(shop, person, entries), Dice(seed));
  for (const Drop& drop : drops(decider, known.start(2026, 11, other_day), known.start(2028, 1, 1)))
    said << drop_sentence(drop, reader_of(shop, drop.person, entries));
  return said;
}

}  // namespace

class WordsWorldsTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates)); }

  void birthdays_may_be_moved_and_nothing_that_is_said_changes() {
    const unsigned worlds = qEnvironmentVariableIntValue("WM_WORLDS") > 0
                                ? static_cast<unsigned>(qEnvironmentVariableIntValue("WM_WORLDS"))
                                : 300;
    int said = 0;
    for (unsigned seed = 1; seed <= worlds; ++seed) {
      Dice days(seed);
      const QStringList one = said_in(shop_of(seed, days), seed), other = said_in(shop_of(seed, days), seed);
      for (int i = 0; i < std::min(one.size(), other.size()); ++i)
        QVERIFY2(one[i] == other[i],
                 qPrintable(QString("world %1:\n%2\n%3").arg(seed).arg(one[i], other[i])));
      QCOMPARE(one.size(), other.size());
      said += static_cast<int>(one.size());
    }
    QVERIFY2(said > 30 * static_cast<int>(worlds), qPrintable(QString::number(said)));
  }
};

}  // namespace words_worlds_test

WM_PAGE_TEST(words_worlds_test, WordsWorldsTest)
#include "words_worlds_test.moc"
