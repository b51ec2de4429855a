// One person at one paper, without a screen: moves, answers, the time that is gone, and the file that brings
// all of it back.
#include <signal.h>

#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>
#include <cstdio>

#include "app/quiz/sitting_file.h"
#include "core/teach/bank_text.h"
#include "core/teach/marking.h"

using namespace wm;
using namespace wm::app;

namespace {

const Instant evening{1795735200};

ClockReading reading(std::int64_t seconds, const char* boot = "first", std::int64_t set_by = 0) {
  return {evening + (seconds + set_by), boot, 1000 + seconds};
}

teach::Bank shipped(const char* name) {
  QFile file(QString(WM_RESOURCES "/quizzes/%1.txt").arg(name));
  if (!file.open(QFile::ReadOnly)) qFatal("no bank %s", name);
  return teach::read_bank(file.readAll().toStdString()).value();
}

SittingState wanted(const teach::Bank& bank, std::uint64_t seed = 7) {
  SittingState state;
  state.begun = "begun-1";
  state.person = "kim";
  state.attempt = {bank.name, bank.revision, seed, "en", {}};
  state.beside = "es";
  return state;
}

Sitting begun(std::uint64_t seed = 7, const char* name = "tier-1") {
  const teach::Bank bank = shipped(name);
  return Sitting::begin(bank, wanted(bank, seed), reading(0)).value();
}

/// Something of the right kind, other from question to question.
teach::Given some_answer(const Sitting& sitting) {
  struct Kind {
    const Sitting& s;
    teach::Given operator()(const teach::OneRight&) const { return teach::Chosen{s.at() % 2}; }
    teach::Given operator()(const teach::SeveralRight&) const { return teach::Ticked{{1, 0}}; }
    teach::Given operator()(const teach::InOrder&) const {
      auto steps = s.asked().order;
      std::swap(steps.front(), steps.back());
      return teach::Ordered{steps};
    }
    teach::Given operator()(const teach::ANumber&) const { return teach::Typed{"1 3/8\" \xc2\xbd"}; }
    teach::Given operator()(const teach::APlace&) const { return teach::Pointed{{0, 1000}}; }
  };
  return std::visit(Kind{sitting}, sitting.question().kind);
}

/// As a program that is killed has done it: three questions answered, one put off, the third still shown.
Sitting half_way() {
  Sitting sitting = begun();
  for (int i = 0; i < 3; ++i) {
    sitting.tick(reading(20 * (i + 1)));
    sitting.answer(some_answer(sitting));
    if (i == 1) sitting.toggle_later();
    if (i < 2) sitting.next();
  }
  return sitting;
}

/// Sits three questions, says so, and waits to be killed.
int sit_until_killed(const char* folder) {
  SittingFile file{QString(folder)};
  if (!file.take() || file.write(half_way().state())) return 1;
  std::puts("ready");
  std::fflush(stdout);
  for (;;) QThread::sleep(1);
}

}  // namespace

class SittingTest : public QObject {
  Q_OBJECT

 private slots:
  void from_question_to_question_and_back() {
    Sitting sitting = begun();
    QCOMPARE(sitting.size(), std::size_t(10));
    QCOMPARE(sitting.open_count(), std::size_t(10));
    sitting.back();
    QCOMPARE(sitting.at(), std::size_t(0));
    for (std::size_t i = 0; i < 20; ++i) sitting.next();
    QCOMPARE(sitting.at(), std::size_t(9));
    sitting.go_to(10);
    QCOMPARE(sitting.at(), std::size_t(9));
  }

  void what_is_left_is_open_or_to_be_come_back_to() {
    Sitting sitting = begun();
    for (std::size_t i = 0; i < sitting.size(); ++i) {
      sitting.go_to(i);
      if (i != 4) sitting.answer(some_answer(sitting));
    }
    sitting.go_to(2);
    sitting.toggle_later();
    QCOMPARE(sitting.open_count(), std::size_t(1));
    QCOMPARE(sitting.later_count(), std::size_t(1));
    QCOMPARE(sitting.next_left(), std::optional<std::size_t>(4));
    sitting.go_to(4);
    QCOMPARE(sitting.next_left(), std::optional<std::size_t>(2));
    sitting.answer(some_answer(sitting));
    sitting.go_to(2);
    sitting.toggle_later();
    QCOMPARE(sitting.next_left(), std::optional<std::size_t>());
  }

  void seconds_are_those_spent_on_each_question_all_visits_together() {
    Sitting sitting = begun();
    sitting.tick(reading(10));
    sitting.next();
    sitting.tick(reading(13));
    sitting.back();
    sitting.tick(reading(20));
    const auto& answers = sitting.state().attempt.answers;
    QCOMPARE(answers[0].seconds, 17);
    QCOMPARE(answers[1].seconds, 3);
    QCOMPARE(sitting.left(), std::optional<std::int64_t>(20 * 60 - 20));
  }

  void the_time_is_over_after_the_last_second_and_not_before() {
    Sitting sitting = begun();
    sitting.tick(reading(20 * 60 - 1));
    QVERIFY(!sitting.over());
    sitting.tick(reading(20 * 60));
    QVERIFY(sitting.over());
    teach::Bank endless = shipped("tier-1");
    endless.minutes.reset();
    Sitting without = Sitting::begin(endless, wanted(endless), reading(0)).value();
    without.tick(reading(1'000'000));
    QVERIFY(!without.over() && !without.left());
  }

  void a_clock_that_is_set_gives_no_time_and_takes_none() {
    for (const std::int64_t by : {-86400, -600, 600, 86400}) {
      Sitting sitting = begun();
      sitting.tick(reading(60, "first", by));
      QCOMPARE(sitting.state().gone, std::int64_t(60));
      // Killed and started again while the computer ran on, the clock set meanwhile.
      const auto again = Sitting::go_on(sitting.bank(), sitting.state(), reading(90, "first", 2 * by));
      QVERIFY(again);
      QCOMPARE(again->state().gone, std::int64_t(90));
    }
  }

  void the_time_while_the_computer_was_off_counts_and_was_spent_on_no_question() {
    Sitting sitting = begun();
    sitting.tick(reading(60));
    ClockReading later{evening + 360, "second", 20};
    const auto again = Sitting::go_on(sitting.bank(), sitting.state(), later);
    QVERIFY(again);
    QCOMPARE(again->state().gone, std::int64_t(360));
    QCOMPARE(again->state().attempt.answers[0].seconds, 60);
    // Not less than it has been on since.
    later.wall = evening + 70;
    later.since_boot = 200;
    QCOMPARE(Sitting::go_on(sitting.bank(), sitting.state(), later)->state().gone, std::int64_t(260));
  }

  void a_clock_set_back_while_the_computer_was_off_is_waited_for() {
    Sitting sitting = begun();
    sitting.tick(reading(60));
    const auto refused = Sitting::go_on(sitting.bank(), sitting.state(), {evening + 59, "second", 20});
    QVERIFY(!refused);
    QVERIFY(refused.error().what.find("clock shows earlier") != std::string::npos);
    QVERIFY(Sitting::go_on(sitting.bank(), sitting.state(), {evening + 60, "second", 0}));
  }

  void what_does_not_fit_the_bank_is_not_gone_on_with() {
    const Sitting sitting = half_way();
    teach::Bank other = sitting.bank();
    other.revision = 9;
    QVERIFY(!Sitting::go_on(other, sitting.state(), reading(90)));
    SittingState longer = sitting.state();
    longer.later.push_back(false);
    SittingState beyond = sitting.state();
    beyond.at = sitting.size();
    SittingState swapped = sitting.state();
    std::swap(swapped.attempt.answers[0], swapped.attempt.answers[1]);
    SittingState another = sitting.state();
    another.attempt.seed = 8;
    SittingState spoken = sitting.state();
    spoken.attempt.language = "pt";
    for (const SittingState& wrong : {longer, beyond, swapped, another, spoken})
      QVERIFY(!Sitting::go_on(sitting.bank(), wrong, reading(90)));
    QVERIFY(!Sitting::begin(other, sitting.state(), reading(0)));
  }

  void every_state_comes_back_from_its_file_as_it_was() {
    for (const char* name : {"tier-1", "tier-2", "tier-3", "tier-4"})
      for (std::uint64_t seed : {std::uint64_t(1), std::uint64_t(0xffffffffffffffff)}) {
        Sitting sitting = begun(seed, name);
        for (std::size_t i = 0; i < sitting.size(); ++i) {
          sitting.go_to(i);
          sitting.tick(reading(static_cast<std::int64_t>(i) * 7));
          if (i % 4 != 3) sitting.answer(some_answer(sitting));
          if (i % 3 == 0) sitting.toggle_later();
          sitting.set_large(i % 2 == 0);
          QVERIFY(sitting_state(to_json(sitting.state())) == std::optional(sitting.state()));
        }
      }
  }

  void what_was_handed_in_can_be_marked() {
    const Sitting sitting = half_way();
    QVERIFY(teach::mark_attempt(sitting.bank(), sitting.state().attempt));
  }

  void a_file_that_is_cut_off_or_altered_is_put_aside_and_told() {
    QTemporaryDir folder;
    const SittingFile file(folder.path());
    const QByteArray whole = to_json(half_way().state());
    QByteArray worded = whole, less = whole;
    worded.replace("\"at\":2", "\"at\":\"2\"");
    less.replace("\"gone\":60", "\"gone\":-60");
    QVERIFY(worded != whole && less != whole);
    int damaged = 0;
    for (const QByteArray& text : {QByteArray(), whole.left(1), whole.left(whole.size() / 2),
                                   whole.left(whole.size() - 1), QByteArray("[]"), worded, less}) {
      QFile out(folder.filePath("quiz.json"));
      QVERIFY(out.open(QFile::WriteOnly) && out.write(text) == text.size());
      out.close();
      const auto found = file.read(evening);
      QVERIFY(!found.state && found.damaged);
      ++damaged;
      QFile aside(QString::fromStdString(found.damaged->where));
      QVERIFY(aside.open(QFile::ReadOnly));
      QCOMPARE(aside.readAll(), text);
      QVERIFY(!QFile::exists(folder.filePath("quiz.json")));
    }
    // None of them was written over by the next.
    QCOMPARE(QDir(folder.path()).entryList({"*.unreadable"}).size(), damaged);
    QVERIFY(!file.read(evening).state && !file.read(evening).damaged);
  }

  void a_file_that_cannot_be_written_is_told() {
    const SittingFile file("/proc/no-such-folder");
    const auto problem = file.write(half_way().state());
    QVERIFY(problem && QString::fromStdString(problem->what).startsWith("The answers are not kept"));
  }

  void a_killed_program_comes_back_to_the_same_question_and_no_other_has_it_meanwhile() {
    QTemporaryDir folder;
    QProcess other;
    other.start(QCoreApplication::applicationFilePath(), {"--sit", folder.path()});
    QVERIFY(other.waitForReadyRead(20'000));
    SittingFile file(folder.path());
    const auto refused = file.take();
    QVERIFY(!refused);
    QVERIFY(QString::fromStdString(refused.error().what).contains("another window"));
    ::kill(static_cast<pid_t>(other.processId()), SIGKILL);
    QVERIFY(other.waitForFinished(20'000));
    QCOMPARE(other.exitStatus(), QProcess::CrashExit);
    QVERIFY(file.take());
    const auto found = file.read(evening);
    QVERIFY(found.state && !found.damaged);
    QVERIFY(*found.state == half_way().state());
    const auto again = Sitting::go_on(shipped("tier-1"), *found.state, reading(100));
    QCOMPARE(again->at(), std::size_t(2));
    QCOMPARE(again->state().gone, std::int64_t(100));
    SittingFile second(folder.path());
    QVERIFY(!second.take());
    file.let_go();
    QVERIFY(second.take());
    second.drop();
    QVERIFY(!second.read(evening).state);
  }
};

int main(int argc, char** argv) {
  if (argc == 3 && QByteArray(argv[1]) == "--sit") return sit_until_killed(argv[2]);
  QCoreApplication app(argc, argv);
  SittingTest test;
  return QTest::qExec(&test, argc, argv);
}
#include "sitting_test.moc"
