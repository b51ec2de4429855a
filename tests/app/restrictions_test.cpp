// What a check-out left open stands beside the ladder wherever the person's standing on the machine is said,
// and ends only with a new check-out of the same name that is passed.
#include <QLabel>
#include <QProcess>
#include <QtTest>

#include "app/calendars/events.h"
#include "app/desk/answer.h"
#include "app/desk/strip_list.h"
#include "app/diary/diary_rows.h"
#include "app/diary/reminder.h"
#include "app/emergency/what_follows.h"
#include "app/people/person_paper.h"
#include "app/rosters/roster_grid.h"
#include "app/rosters/roster_paper.h"
#include "evening.h"
#include "page_test.h"

namespace restrictions_test {

using namespace wm;
using namespace wm::app;

namespace {

const TargetName planing = "jointer-planer/planing";
const QString words = "no dado; with an interpreter";

QString printed(const QString& pdf) {
  QProcess process;
  process.start("pdftotext", {"-raw", pdf, "-"});
  if (!process.waitForFinished()) qFatal("pdftotext is missing: install poppler-utils");
  return QString::fromUtf8(process.readAllStandardOutput()).simplified();
}

}  // namespace

class RestrictionsTest : public QObject {
  Q_OBJECT

  Session& session() { return *shop_->session; }
  void sign(Outcome outcome, std::vector<std::string> restrictions = {}) {
    shop_->clock = shop_->clock + 60;
    db::SignCheckout sign;
    sign.checkout = {"tola", "jointer-planer", 4, outcome, "mara"};
    sign.pin = "2468";
    sign.machine = "jp1";
    sign.restrictions = std::move(restrictions);
    shop_->enter(sign);
  }
  QString answer() { return desk_answer(session(), shop_now(session()), "tola", planing).sentence; }
  /// Everything that says how Tola stands on the planer, each by the name of its place.
  std::map<QString, QString> places() {
    std::map<QString, QString> said;
    const DeskAnswer desk = desk_answer(session(), shop_now(session()), "tola", planing);
    said["Desk"] = desk.sentence;
    const Strips strips = strips_of(session(), "tola");
    const auto row = std::ranges::find(strips.rows, planing, &StripRow::target);
    said["strip"] = row->restricted;
    said["strip, spoken"] = row->spoken;
    said["strip, pointed at"] = why_at(session(), "tola", *row, session().now());
    StripModel model;
    model.set(strips);
    said["strip, read aloud"] =
        model.data(model.index(model.row_of(planing)), Qt::AccessibleTextRole).toString();
    const RosterTable table = roster_table(session(), {std::nullopt, true});
    RosterModel roster;
    roster.set_table(table);
    for (int r = 0; r < roster.rowCount(); ++r)
      for (int c = 0; c < roster.columnCount(); ++c)
        if (table.rows[static_cast<std::size_t>(r)].person == "tola" &&
            table.columns[static_cast<std::size_t>(c)].target == planing)
          said["roster on the screen"] = roster.data(roster.index(r, c), Qt::DisplayRole).toString();
    QTemporaryDir folder;
    for (const auto& [name, form] : {std::pair{"grid", RosterForm::grid}, std::pair{"door", RosterForm::door},
                                     std::pair{"machine", RosterForm::machine_a_page}}) {
      const QString path = folder.filePath(QString("%1.pdf").arg(name));
      if (!write_roster_pdf(session(), {std::nullopt, false, form}, path)) qFatal("no roster");
      said[QString("roster on paper, %1").arg(name)] = printed(path);
    }
    const QString paper = folder.filePath("person.pdf");
    if (!write_person_pdf(session(), "tola", paper, PaperSize::a4)) qFatal("no paper");
    // The journal further down has it in any case.
    said["the person's paper"] = printed(paper).section("Every record", 0, 0);
    for (const DiaryRow& each :
         diary_rows(session(), {{"tola", planing}, session().zone().day(session().now())}))
      if (each.kind == DiaryRow::Kind::booking) said["Diary, a booking"] = each.reason;
    // These are read now, whatever date somebody looks at.
    if (!session().known()) {
      WhatFollows follows(session());
      follows.show_of(
          {{planing, "jp1", 3, {}, {}, ""}, session().now(), {{"tola", planing, session().now(), {}}}},
          shop_now(session()));
      QStringList lines;
      for (const QLabel* label : follows.findChildren<QLabel*>()) lines << label->text();
      said["what follows from an incident"] = lines.join('\n');
      const Instant now = session().now();
      for (const BookingLine& line : bookings(session(), {now, now + 86400}))
        said["reminder"] = reminder_text(session(), line);
      for (const Whose& whose : {Whose(OfPerson{"tola"}), Whose(OfPerson{"mara"}), Whose(OfUnit{"jp1"})})
        said["calendar of " + whose_words(session(), whose)] =
            QString::fromStdString(published(session(), whose)).remove("\r\n ");
    }
    return said;
  }
  void everywhere(bool wanted) {
    for (const auto& [place, said] : places()) {
      const bool there = said.contains("no dado") && said.contains("with an interpreter");
      const bool none = !said.contains("no dado") && !said.contains("interpreter");
      QVERIFY2(wanted ? there : none, qPrintable(place + ": " + said));
    }
  }

  std::unique_ptr<evening::Shop> shop_;

 private slots:
  void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }
  void init() {
    apply_theme(*qApp, Shade::light);
    shop_ = std::make_unique<evening::Shop>();
    shop_->sit_down("mara", "2468");
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
  }

  void it_stands_wherever_the_standing_is_said() {
    everywhere(false);
    sign(Outcome::passed, {"no dado", "with an interpreter"});
    QCOMPARE(session().decider().rung("tola", planing, session().now()), Rung::independent);
    everywhere(true);
    // Others, and another machine, are not restricted by it.
    QVERIFY(!desk_answer(session(), shop_now(session()), "jonas", planing).sentence.contains("dado"));
    QVERIFY(!desk_answer(session(), shop_now(session()), "tola", "shaper").sentence.contains("dado"));
  }

  void it_can_be_read_on_the_strips_and_on_the_grid() {
    sign(Outcome::passed, {"no dado", "with an interpreter"});
    StripList strips(session());
    strips.resize(760, 300);
    strips.show_person("tola");
    const int row = static_cast<const StripModel*>(strips.model())->row_of(planing);
    QCOMPARE(strips.model()->rowCount() > 3, true);
    QVERIFY(strips.sizeHintForRow(row) > strips.height_of_row());
    evening::grab(strips, "strips-restricted");
    RosterGrid grid;
    grid.resize(760, 300);
    grid.show_table(roster_table(session(), {std::nullopt, true}));
    QVERIFY(grid.rowHeight(0) > grid.rowHeight(1) || grid.rowHeight(1) > grid.rowHeight(0));
    evening::grab(grid, "roster-restricted");
  }

  void starting_the_machine_says_it_too() {
    sign(Outcome::passed, {"no dado", "with an interpreter"});
    const QString now = desk_answer(session(), shop_now(session()), "tola", planing).now;
    QCOMPARE(now, "Tola may start it now. Restricted: " + words + ".");
  }

  void failing_and_a_pause_leave_it_and_a_pass_ends_it() {
    sign(Outcome::passed, {"no dado", "with an interpreter"});
    sign(Outcome::failed);
    QCOMPARE(session().decider().rung("tola", planing, session().now()), Rung::supervised);
    everywhere(true);
    QCOMPARE(answer(),
             "Tola may use the jointer/planer for planing only with a supervisor, while staff are in. "
             "Restricted: " +
                 words + ".");
    shop_->sit_down("odile", "8642");
    shop_->enter(db::EnterFact{Suspend{"tola", Everything{}, std::nullopt}});
    QVERIFY2(answer().endsWith("Restricted: " + words + "."), qPrintable(answer()));
    const RecordId pause = session().store().entries().back().id;
    shop_->enter(db::EnterFact{Reinstate{pause}});
    shop_->sit_down("mara", "2468");
    sign(Outcome::passed, {"stock up to 8 in"});
    QVERIFY2(answer().endsWith("Restricted: stock up to 8 in."), qPrintable(answer()));
    sign(Outcome::passed);
    everywhere(false);
    QVERIFY(!answer().contains("Restricted"));
  }

  void what_was_known_before_says_nothing_of_it() {
    sign(Outcome::passed, {"no dado", "with an interpreter"});
    session().set_known(session().now() + -30);
    everywhere(false);
  }
};

}  // namespace restrictions_test

WM_PAGE_TEST(restrictions_test, RestrictionsTest)
#include "restrictions_test.moc"
