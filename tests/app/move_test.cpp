// The demo shop taken to a PostgreSQL server by the command, and back into a file: every answer, roster and
// root the same. WM_SERVER names a server with an empty database.
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

#include "app/rosters/roster_paper.h"
#include "app/session.h"
#include "core/time/text.h"
#include "db/demo.h"

#include "page_test.h"

namespace move_test {

using namespace wm;
using namespace wm::app;

namespace {

struct Said {
  int returned;
  QString out, err;
};
Said run(const QStringList& words) {
  QProcess program;
  program.start(WM_PROGRAM, words);
  if (!program.waitForFinished(120'000)) return {-1, {}, program.errorString()};
  return {program.exitCode(), QString::fromUtf8(program.readAllStandardOutput()),
          QString::fromUtf8(program.readAllStandardError())};
}

QString root_in(const QString& words) {
  static const QRegularExpression form("[0-9]+(-[0-9A-Z]{4}){7}");
  return form.match(words).captured();
}

QString written(std::optional<Instant> t) {
  return t ? QString::fromStdString(to_text(*t)) : QStringLiteral("-");
}

/// Everybody's standing on every machine with all that it rests on, and the words of every roster.
QStringList all_said(const QString& place, Instant now) {
  auto store = db::Store::open(place.toStdString(), [now] { return now; });
  if (!store) return {QString::fromStdString("cannot be opened: " + store.error().what)};
  Session session(std::move(*store));
  QStringList all;
  const Instant t = session.now();
  const Rulebook* book = session.decider().in_force(t);
  for (const db::Person& person : session.store().people())
    for (const TargetName& target : targets_of(*book)) {
      const StandingAnswer answer = session.decider().standing(session.joined(person.id), target, t);
      all << QString::fromStdString(person.number + " " + target + " " + std::string(word(answer.standing))) +
                 " " + written(answer.since) + " " + written(answer.until);
      for (const GateAnswer& gate : answer.gates)
        all << QString::fromStdString(gate.id + " " + std::string(word(gate.state))) + " " +
                   written(gate.due) + " " + written(gate.lapses);
    }
  for (const RosterForm form : {RosterForm::grid, RosterForm::door, RosterForm::machine_a_page}) {
    RosterChoice choice;
    choice.form = form;
    all << roster_words(roster_table(session, choice), choice, PaperSize::letter).words;
  }
  return all;
}

}  // namespace

class MoveTest : public QObject {
  Q_OBJECT
 private slots:
  void there_and_back_everything_is_the_same() {
    const QString server = qEnvironmentVariable("WM_SERVER");
    QVERIFY2(!server.isEmpty(), "WM_SERVER names no server");
    QTemporaryDir folder;
    const QString before = folder.filePath("before.wm"), back = folder.filePath("back.wm");
    const Instant now{1'800'000'000};
    QVERIFY(db::make_demo(before.toStdString(), [now] { return now; }));

    const Said there = run({"move", before, server});
    QVERIFY2(there.returned == 0, qPrintable(there.err));
    const Said again = run({"move", server, back});
    QVERIFY2(again.returned == 0, qPrintable(again.err));
    const QString root = root_in(there.out);
    QVERIFY2(!root.isEmpty(), qPrintable(there.out));
    QCOMPARE(root_in(again.out), root);
    for (const QString& place : {before, back}) QCOMPARE(root_in(run({"verify", place}).out), root);

    const QStringList said = all_said(before, now);
    QVERIFY(said.size() > 1000);
    QCOMPARE(all_said(server, now), said);
    QCOMPARE(all_said(back, now), said);

    // What is there already is not written over, on either side.
    for (const QStringList& twice :
         {QStringList{"move", before, server}, QStringList{"move", server, back}}) {
      const Said refused = run(twice);
      QCOMPARE(refused.returned, 2);
      QVERIFY2(refused.err.contains("already"), qPrintable(refused.err));
    }
    QCOMPARE(all_said(server, now), said);
  }
};

}  // namespace move_test

WM_PAGE_TEST(move_test, MoveTest)
#include "move_test.moc"
