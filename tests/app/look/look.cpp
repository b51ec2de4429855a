// Every page of the demo shop, drawn at the two sizes and in the two shades that the program must look right
// in; and its papers, as PDFs.
#include <QAbstractItemView>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QRadioButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>

#include "app/checkouts/blank_sheet.h"
#include "app/desk/shop_now.h"
#include "app/figures/figures_page.h"
#include "app/frame/main_window.h"
#include "app/frame/pages.h"
#include "app/lists/list_view.h"
#include "app/passes/plan_view.h"
#include "app/people/import_view.h"
#include "app/print/paper.h"
#include "app/quiz/station.h"
#include "app/rosters/roster_paper.h"
#include "app/sheets/own_sheets.h"
#include "app/start/first_look_window.h"
#include "app/start/start_page.h"
#include "app/theme/theme.h"
#include "app/words/words.h"
#include "demo_shop.h"

using namespace wm;
using namespace wm::app;

namespace {

struct Size {
  const char* name;
  QSize points;
  qreal scale;
};
const Size sizes[] = {{"1366x768", {1366, 768}, 1}, {"3840x2160", {1920, 1080}, 2}};

/// Something to look at: how to get there from a fresh Desk.
struct View {
  QString name;
  std::function<void(MainWindow&)> go;
  /// Whether the bar at the foot is meant to say that something stands in the way.
  bool refused = false;
};

Place place(const QString& page, const PersonId& person = {}) {
  Place to;
  to.page = page;
  to.person = person;
  return to;
}

void type_name(MainWindow& window, const QString& name, bool enter) {
  window.go(place("desk"));
  auto* search = window.findChild<QLineEdit*>("desk_search");
  search->clear();
  QTest::keyClicks(search, name);
  if (enter) QTest::keyClick(search, Qt::Key_Return);
}

void press(MainWindow& window, const char* button) {
  window.current()->findChild<QAbstractButton*>(button)->click();
}

void press(MainWindow& window, const char* page, const char* button) {
  window.go(place(page));
  press(window, button);
}

void fill(MainWindow& window, std::initializer_list<std::pair<const char*, const char*>> fields) {
  for (const auto& [name, text] : fields) {
    auto* field = window.current()->findChild<QLineEdit*>(name);
    field->clear();
    QTest::keyClicks(field, text);
  }
}

void show_lesson(MainWindow& window, const char* name) {
  window.go(place("lessons"));
  window.current()->findChild<QLineEdit*>("search")->setText(name);
}

Place checkout_of_jonas(Session& session) {
  Place to = place("checkouts");
  for (const db::Person& person : session.people())
    if (person.number == "0412") to.person = person.id;
  to.target = "jointer-planer/planing";
  return to;
}

/// The sheet of his check-out on the combination, with a pass plan for its practice piece.
void plan_passes(MainWindow& window, Session& session, const char* length) {
  window.go(checkout_of_jonas(session));
  press(window, "pass_plan");
  fill(window, {{"plan_length", length},
                {"plan_width", "5 3/4 in"},
                {"plan_thickest", "1 1/2 in"},
                {"plan_final", "1 in"},
                {"plan_uneven", "0 in"},
                {"plan_marks", "0.001 in"}});
}

/// Goes down the sheet of his check-out, a key a line; a line that measures takes what is typed after "M".
void mark_sheet(MainWindow& window, Session& session, const char* keys) {
  window.go(checkout_of_jonas(session));
  auto* sheet = window.current()->findChild<QWidget*>("sheet");
  sheet->setFocus();
  QTest::keyClick(sheet, Qt::Key_Home);
  for (const char* key = keys; *key; ++key) {
    QTest::keyClick(sheet, *key);
    if (key[1]) QTest::keyClick(sheet, Qt::Key_Down);
  }
}

/// Chosen by their first letters, as a keyboard does it.
void choose(MainWindow& window, const char* box, const char* letters) {
  auto* choice = window.current()->findChild<QWidget*>(box);
  choice->setFocus();
  QTest::keyClicks(choice, letters);
}

void paste(MainWindow& window, const char* name, const char* text) {
  window.current()->findChild<QPlainTextEdit*>(name)->setPlainText(QString::fromUtf8(text));
}

/// Somebody of the staff is in, with a visitor.
void let_a_visitor_in(Session& session) {
  static const auto in = session.commit(db::EnterShopFact{db::Presence{session.seated()->id, true, true}});
  static const auto visit =
      session.commit(db::EnterShopFact{db::Visit{"Ada Quill", "visitor-rules", session.seated()->id}});
  if (!in || !visit) std::fputs("no visitor\n", stderr);
}

void show_unit(MainWindow& window, const MachineId& machine) {
  Place to = place("machines");
  to.machine = machine;
  window.go(to);
}

/// A few backups, the last of them some days ago.
void make_backups(Session& session) {
  static QTemporaryDir folder;
  const Instant now{QDateTime::currentSecsSinceEpoch()};
  for (int days : {26, 12, 5, 4})
    if (!db::back_up(session.store().path(), folder.path().toStdString(), now - days * 86400)) return;
  session.backups().set({folder.path(), 0, 14});
}

/// The desk is told, or not, that the last backup is four days old.
void remind_after(Session& session, int days) {
  BackupSettings settings = session.backups().settings();
  settings.remind_days = days;
  QSignalSpy looked(&session.backups(), &Backups::changed);
  session.backups().set(settings);
  looked.wait();
}

/// Once they have been worked out.
void go_to_figures(MainWindow& window) {
  window.go(place("figures"));
  auto* page = static_cast<FiguresPage*>(window.current());
  QSignalSpy done(page, &FiguresPage::worked_out);
  done.wait(20000);
}

QAbstractItemView* diary(MainWindow& window) {
  return window.current()->findChild<QAbstractItemView*>("list");
}

/// The first row that reads so; false where none does.
bool choose_row(MainWindow& window, const QString& part) {
  auto* list = diary(window);
  for (int row = 0; row < list->model()->rowCount(); ++row) {
    const QModelIndex at = list->model()->index(row, 0);
    if (!at.data(Qt::AccessibleTextRole).toString().contains(part)) continue;
    list->setCurrentIndex(at);
    list->scrollTo(at, QAbstractItemView::PositionAtCenter);
    return true;
  }
  return false;
}

/// What only a shop of its own is asked, since it changes it.
std::vector<View> views_that_change(Session& session) {
  const auto hurt = [](MainWindow& w, const char* name) {
    w.go(place("emergency"));
    auto* who = w.current()->findChild<QLineEdit*>("hurt_person");
    QTest::keyClicks(who, name);
    QTest::keyClick(who, Qt::Key_Return);
  };
  const auto fill_in = [](MainWindow& w, const Session& shop) {
    auto* machine = w.current()->findChild<QComboBox*>("incident_machine");
    for (const auto& [id, each] : shop_now(shop).units)
      if (each.machine_class == "jointer-planer")
        machine->setCurrentIndex(machine->findData(QString::fromStdString(id)));
    w.current()->findChild<QComboBox*>("severity")->setCurrentIndex(1);
    paste(w, "what_happened", "Kickback threw a short offcut; a hand was bruised. The guard was up.");
  };
  const auto independent = [&session] {
    for (const db::Person& person : session.store().people())
      if (session.store().joined(person.id) == person.id &&
          session.decider().rung(person.id, "jointer-planer/jointing", session.now()) == Rung::independent &&
          !session.role_of(person.id))
        return QString::fromStdString(person.number);
    return QString();
  };
  return {
      {"diary-held",
       [&session](MainWindow& w) {
         w.go(place("diary", checkout_of_jonas(session).person));
         choose_row(w, ", free");
         press(w, "hold");
         choose_row(w, "held through");
       }},
      {"diary-swap",
       [](MainWindow& w) {
         w.go(place("diary"));
         choose_row(w, "Anneke van den Berg");  // on a table saw for as long as Tola
         press(w, "move");
         choose_row(w, "Tola Adeyemi");
       }},
      {"emergency-hurt", [hurt](MainWindow& w) { hurt(w, "jonas li"); }},
      {"emergency-number",
       [&session, hurt](MainWindow& w) {
         static_cast<void>(session.commit(db::EnterShopFact{db::EmergencyCall{
             "9-911", "Mill Road 12, second floor; the door is in the yard, past the bicycles"}}));
         hurt(w, "jonas li");
       }},
      {"emergency-typed",
       [&session, hurt, fill_in](MainWindow& w) {
         hurt(w, "jonas li");
         fill_in(w, session);
       }},
      {"emergency-follows",
       [&session, fill_in, independent](MainWindow& w) {
         w.go(place("emergency"));
         auto* who = w.current()->findChild<QLineEdit*>("incident_person");
         QTest::keyClicks(who, independent());
         QTest::keyClick(who, Qt::Key_Return);
         w.current()->findChild<QWidget*>("there_0")->findChildren<QCheckBox*>()[1]->setChecked(true);
         fill_in(w, session);
         press(w, "record_incident");
         QTest::qWait(50);
       }},
      {"emergency-nobody",
       [&session, hurt](MainWindow& w) {
         session.hand_over();
         hurt(w, "jonas li");
       }},
      {"rosters-number",
       [](MainWindow& w) {
         Place to = place("rosters");
         to.item = "emergency";
         w.go(to);
       }},
  };
}

std::vector<View> views(Session& session) {
  std::vector<View> all = {
      {"desk-tonight",
       [&session](MainWindow& w) {
         remind_after(session, 14);
         type_name(w, {}, false);
         w.go(place("desk"));
       }},
      {"desk-matches", [](MainWindow& w) { type_name(w, "jo", false); }},
      {"desk-person", [](MainWindow& w) { type_name(w, "jonas li", true); }},
      {"desk-paper",
       [](MainWindow& w) {
         type_name(w, "jonas li", true);
         press(w, "take_paper");
       }},
      {"desk-reminder",
       [&session](MainWindow& w) {
         remind_after(session, 3);
         w.go(place("desk"));
       }},
      {"diary-fit",
       [](MainWindow& w) {
         press(w, "diary", "fit_everyone");
         QTest::qWait(12'000);
       }},
      {"backups-set-up", [](MainWindow& w) { press(w, "backups", "set_up"); }},
      {"backups-put-back",
       [](MainWindow& w) {
         press(w, "backups", "put_back");
         QTest::qWait(1500);
       }},
      {"people-import",
       [](MainWindow& w) {
         press(w, "people", "import");
         static QTemporaryDir files;
         QFile file(files.filePath("members.csv"));
         file.open(QFile::WriteOnly);
         file.write(
             "Member no;First name;Last name;Born;Email\n"
             "0901;Adaeze;Nwosu;04.07.1991;adaeze@example.org\n"
             "0902;Bj\xc3\xb6rn;Sand;31.02.1988;bjorn@example.org\n"
             "0903;Chiyo;Tanabe;12.11.2003;\n"
             ";;;;\n"
             "0412;Dario;Conti;09.05.1975;dario@example.org\n");
         file.close();
         w.findChild<ImportView*>()->open_file(file.fileName());
       }},
      {"people-new", [](MainWindow& w) { press(w, "people", "new"); }},
      {"people-hours", [](MainWindow& w) { press(w, "people", "hours"); }},
      {"people-pause",
       [&session](MainWindow& w) {
         static const PersonId paused = session.store().people().back().id;
         static const auto pause = session.commit(db::EnterFact{Suspend{paused, Everything{}, std::nullopt}},
                                                  std::nullopt, "Took the guard off the bandsaw");
         w.go(place("people", paused));
         if (pause) press(w, "end_pause");
       }},
      {"people-close",
       [&session](MainWindow& w) {
         w.go(place("people", session.seated()->id));
         press(w, "close");
       }},
      {"clock",
       [&session](MainWindow& w) {
         w.go(place("desk"));
         emit session.clock_jumped(-5 * 3600);
       }},
      {"people-join", [](MainWindow& w) { press(w, "people", "join"); }},
      {"machines-out", [](MainWindow& w) { press(w, "machines", "put_out"); }},
      {"machines-new", [](MainWindow& w) { press(w, "machines", "new"); }},
      {"machines-card",
       [](MainWindow& w) {
         Place to = place("machines");
         to.machine = "jointer-planer-2";
         w.go(to);
       }},
      {"machines-card-form",
       [](MainWindow& w) {
         Place to = place("machines");
         to.machine = "jointer-planer-2";
         w.go(to);
         press(w, "card");
       }},
      {"checkouts-measured",
       [&session](MainWindow& w) {
         w.go(checkout_of_jonas(session));
         auto* sheet = w.current()->findChild<QWidget*>("sheet");
         QTest::keyClick(sheet, Qt::Key_End);
         QTest::keyClick(sheet, Qt::Key_Up);
         QTest::keyClick(sheet, Qt::Key_Up);
         QTest::keyClick(sheet, Qt::Key_M);
         QTest::keyClicks(sheet->findChild<QLineEdit*>("measure"), "25.2 mm");
       }},
      {"checkouts-plan", [&session](MainWindow& w) { plan_passes(w, session, "24 in"); }},
      {"checkouts-plan-measured",
       [&session](MainWindow& w) {
         plan_passes(w, session, "24 in");
         fill(w, {{"plan_measured", "1.469 in"}});
       }},
      {"checkouts-plan-refused", [&session](MainWindow& w) { plan_passes(w, session, "5 in"); }},
      {"checkouts-plan-joint",
       [&session](MainWindow& w) {
         plan_passes(w, session, "24 in");
         w.current()->findChild<QComboBox*>("plan_machine")->setCurrentIndex(0);
         fill(w, {{"plan_hollow", "5/32 in"}});
         w.current()->findChild<QCheckBox*>("plan_crown")->setChecked(true);
       }},
      {"checkouts-marked", [&session](MainWindow& w) { mark_sheet(w, session, "11211311"); }},
      {"checkouts-pin",
       [&session](MainWindow& w) {
         w.go(checkout_of_jonas(session));
         press(w, "choose_member_pin");
       }},
      {"checkouts-countersign",
       [&session](MainWindow& w) {
         w.go(checkout_of_jonas(session));
         choose(w, "hand", "on");
         fill(w, {{"countersigned_form", "7K2Q9X"}});
         choose(w, "outcome", "fail");
         choose(w, "assessor", "Mara");  // who sits there has not watched him
         press(w, "sign");
       },
       true},  // it asks for her PIN
      {"checkouts-put-by",
       [&session](MainWindow& w) {
         w.go(checkout_of_jonas(session));
         fill(w, {{"restrictions", "no dado"}, {"note", "the edge is left to joint"}});
         press(w, "another_day");
         w.go(checkout_of_jonas(session));
       }},
      {"checkouts-paper",
       [](MainWindow& w) {
         press(w, "checkouts", "from_paper");
         choose(w, "paper_sheet", "Joi");
       }},
      {"machines-lock",
       [&session](MainWindow& w) {
         const auto out = shop_now(session).out;
         if (!out.empty()) show_unit(w, out.front().machine);
       }},
      {"machines-change",
       [](MainWindow& w) {
         show_unit(w, "jointer-planer-1");
         press(w, "change");
         fill(w, {{"what", "helical cutterhead"}});
       }},
      {"machines-changed",
       [&session](MainWindow& w) {
         static const auto changed = session.commit(db::RecordChange{
             "jointer-planer", "jointer-planer-1", db::Alteration::cutter, "helical cutterhead"});
         if (changed) show_unit(w, "jointer-planer-1");
       }},
      {"people-group",
       [](MainWindow& w) {
         press(w, "people", "group");
         paste(w, "group_names",
               "Jonas Lindqvist\nAoki, Kim\n0397\nThi Huong Nguyen\nWilhelmina van der Meulen-Achterberg\n"
               "0412 Jonas Lindqvist\nBj\xc3\xb6rn Sand\nAdaeze Nwosu\nChiyo\n9999\nDario Conti\n"
               "\xd0\x9e\xd0\xbb\xd1\x8c\xd0\xb3\xd0\xb0 \xd0\x9b\xd0\xb8\xd1\x81\n");
         choose(w, "group_lesson", "gua");
       }},
      {"people-visitor",
       [&session](MainWindow& w) {
         let_a_visitor_in(session);
         press(w, "people", "visitor");
       }},
      {"people-visitors",
       [&session](MainWindow& w) {
         let_a_visitor_in(session);
         w.go(place("people"));
       }},
      {"desk-visitor",
       [&session](MainWindow& w) {
         let_a_visitor_in(session);
         w.go(place("desk"));
       }},
      {"hours-rules", [](MainWindow& w) { press(w, "hours", "rules"); }},
      {"hours-other", [](MainWindow& w) { press(w, "hours", "other"); }},
      {"hours-upkeep", [](MainWindow& w) { press(w, "hours", "upkeep"); }},
      {"lessons-text", [](MainWindow& w) { show_lesson(w, "guards"); }},
      {"lessons-read",
       [](MainWindow& w) {
         show_lesson(w, "guards");
         press(w, "read");
         QTest::keyClick(&w, Qt::Key_Return, Qt::ControlModifier);
       }},
      {"lessons-read-large",
       [](MainWindow& w) {
         show_lesson(w, "guards");
         press(w, "read");
         press(w, "lesson_size");
       }},
      {"lessons-issue",
       [](MainWindow& w) {
         show_lesson(w, "guards");
         press(w, "issue");
       }},
      {"lessons-attest",
       [](MainWindow& w) {
         show_lesson(w, "guards");
         press(w, "attest");
       }},
      {"lessons-publish", [](MainWindow& w) { press(w, "lessons", "publish"); }},
      {"journal-strike",
       [](MainWindow& w) {
         w.go(place("journal"));
         w.current()->findChild<QLineEdit*>("search")->setText("passed the check-out");
         press(w, "strike_out");
       }},
      {"journal-look", [](MainWindow& w) { press(w, "journal", "look"); }},
      {"people-give-out", [](MainWindow& w) { press(w, "people", "give_out"); }},
      {"people-appoint", [](MainWindow& w) { press(w, "people", "appoint"); }},
      {"people-pin", [](MainWindow& w) { press(w, "people", "pin"); }},
      {"emergency", [](MainWindow& w) { w.go(place("emergency")); }},
      {"seat", [](MainWindow& w) { w.go(place("seat")); }},
      {"figures-quiz",
       [](MainWindow& w) {
         go_to_figures(w);
         w.current()->findChild<ListView*>("list")->choose("tier 2");
       }},
      {"banks-edit",
       [](MainWindow& w) {
         w.go(place("banks"));
         w.current()->findChild<ListView*>("list")->choose("tier 3/1");
         press(w, "edit");
         auto* text = w.current()->findChild<QPlainTextEdit*>("bank_text");
         text->find("hands-never-here");
         text->centerCursor();
       }},
      {"sheets-edit",
       [](MainWindow& w) {
         w.go(place("sheets"));
         w.current()->findChild<ListView*>("list")->choose("jointer-planer/5");
         press(w, "edit");
       }},
      {"sheets-wrong",
       [](MainWindow& w) {
         w.go(place("sheets"));
         w.current()->findChild<ListView*>("list")->choose("bandsaw/1");
         press(w, "edit");
         auto* text = w.current()->findChild<QPlainTextEdit*>("sheet_text");
         text->find("opens: stance");
         text->insertPlainText("opens: where they stand");
         text->find("* Guard just");
         text->insertPlainText("Guard just");
         QTest::qWait(300);
       }},
      {"banks-wrong",
       [](MainWindow& w) {
         w.go(place("banks"));
         w.current()->findChild<ListView*>("list")->choose("tier 2/2");
         press(w, "edit");
         auto* text = w.current()->findChild<QPlainTextEdit*>("bank_text");
         text->find("What does the riving knife do?");
         text->insertPlainText("What is the riving knife for?");
         text->find("kind: place");
         text->insertPlainText("kind: plaice");
         QTest::qWait(300);
       }},
  };
  for (const PageEntry& entry : pages())
    if (QString id = entry.id; id == "figures")
      all.push_back({id, go_to_figures});
    else if (id != "desk" && id != "computers")
      all.push_back({id, [id](MainWindow& w) { w.go(place(id)); }});
  return all;
}

void draw(QWidget& window, const Size& size, const QString& path) {
  window.resize(size.points);
  // What is laid out anew asks for it once more where words break over lines.
  for (int times = 0; times < 4; ++times) QTest::qWait(40);
  QImage image(size.points * size.scale, QImage::Format_RGB32);
  image.setDevicePixelRatio(size.scale);
  window.render(&image);
  image.save(path);
}

void draw_start(const QDir& folder, const QString& shade) {
  StartPage page;
  page.show();
  for (const Size& size : sizes)
    draw(page, size, folder.filePath(QString("start-%1-%2.png").arg(size.name, shade)));
  for (QRadioButton* each : page.findChildren<QRadioButton*>())
    if (each->text().contains("server")) each->click();
  for (const Size& size : sizes)
    draw(page, size, folder.filePath(QString("start-server-%1-%2.png").arg(size.name, shade)));
}

/// The demo shop as if it were on a server: in the office, where computers are told what they are for, and at
/// the tablet.
void draw_computers(const QDir& folder, const QString& shade) {
  for (const std::string login : {"office", "tablet"}) {
    const auto session = demo_session(true, login);
    if (!session) return;
    for (const auto& [at, station] : {std::pair{"office", db::Station::office},
                                      {"counter", db::Station::front},
                                      {"loft", db::Station::quiz},
                                      {"tablet", db::Station::machine}})
      if (!session->commit(db::EnterShopFact{db::StationTold{at, station}})) return;
    MainWindow window(*session);
    window.show();
    window.go(place("machines"));
    window.activateWindow();  // whose keys they are
    if (QTest::qWaitForWindowActive(&window) && login == "office") QTest::keyClick(&window, Qt::Key_F5);
    for (const Size& size : sizes)
      draw(window, size,
           folder.filePath(
               QString("computers-%1-%2-%3.png").arg(QString::fromStdString(login), size.name, shade)));
  }
}

void draw_first_look(Session& session, const QDir& folder, const QString& shade) {
  auto look = db::FirstLook::open(
      session.store().path(), [&session] { return session.now() - session.store().details().demo_clock; });
  if (!look) return;
  FirstLookWindow window(std::move(*look));
  window.show();
  window.findChild<QLineEdit*>("search")->setText("jonas");
  for (const Size& size : sizes)
    draw(window, size, folder.filePath(QString("first-look-%1-%2.png").arg(size.name, shade)));
  window.findChild<QAbstractButton*>("emergency")->click();
  for (const Size& size : sizes)
    draw(window, size, folder.filePath(QString("first-look-hurt-%1-%2.png").arg(size.name, shade)));
}

/// Draws what is wanted of them; false where the bar at the foot says that something stands in the way and
/// was not meant to, or the other way round: then what is drawn is not what its name says.
bool draw_views(Session& session, const std::vector<View>& views,
                const std::function<bool(const QString&)>& wanted, const QDir& folder, const QString& shade) {
  bool fine = true;
  for (const View& view : views) {
    if (!wanted(view.name)) continue;
    MainWindow window(session);
    window.resize(sizes[0].points);  // what it does goes by how much there is to scroll
    window.show();
    view.go(window);
    const MessageBar& bar = window.messages();
    const bool refused = bar.isVisible() && bar.property("problem").toBool();
    if (refused != view.refused) {
      std::fprintf(stderr, "%s: %s\n", qPrintable(view.name),
                   refused ? qPrintable(bar.text()) : "nothing was refused");
      fine = false;
    }
    for (const Size& size : sizes)
      draw(window, size, folder.filePath(QString("%1-%2-%3.png").arg(view.name, size.name, shade)));
  }
  return fine;
}

/// Each in a demo shop of its own, as it is at first.
bool draw_changing(const std::function<bool(const QString&)>& wanted, const QDir& folder,
                   const QString& shade) {
  std::vector<QString> names;
  {
    const auto session = demo_session();
    if (!session) return false;
    for (const View& view : views_that_change(*session)) names.push_back(view.name);
  }
  bool fine = true;
  for (const QString& name : names) {
    if (!wanted(name)) continue;
    const auto session = demo_session();
    if (!session) return false;
    fine = draw_views(
               *session, views_that_change(*session), [&name](const QString& each) { return each == name; },
               folder, shade) &&
           fine;
  }
  return fine;
}

/// A lesson before it is gone through at the station, and its first part.
void draw_lesson(QuizStation& station, const std::function<void(QuizStation&, const QString&)>& save) {
  auto* list = station.findChild<QListWidget*>("quizzes");
  const int chosen = list->currentRow();
  for (int row = 0; row < list->count(); ++row)
    if (list->item(row)->text().startsWith("Lesson")) list->setCurrentRow(row);
  save(station, "start-lesson");
  station.findChild<QPushButton*>("begin")->click();
  save(station, "lesson");
  station.findChild<QPushButton*>("lesson_leave")->click();
  list->setCurrentRow(chosen);
}

/// The station at its start, at a question of each kind, large and in two languages, and at its end.
void draw_quiz(const QDir& folder, const QString& shade) {
  // A shop of its own each time: the quizzes of the last have been sat.
  const auto own_shop = demo_session(false);
  if (!own_shop) return;
  Session& session = *own_shop;
  const auto save = [&](QuizStation& station, const QString& name) {
    for (const Size& size : sizes)
      draw(station, size, folder.filePath(QString("quiz-%1-%2-%3.png").arg(name, size.name, shade)));
  };
  const auto member = [&](const char* number) {
    for (const db::Person& person : session.store().people())
      if (person.number == number) return person.id;
    return PersonId();
  };
  {
    QuizStation own(session, true);
    own.show();
    save(own, "who");
    own.findChild<QAbstractButton*>("emergency")->click();
    save(own, "hurt");
  }
  std::map<std::string, const char*> banks{{"tier 1", "0397"}, {"tier 3", "0412"}};
  std::set<std::size_t> kinds;
  for (const auto& [quiz, number] : banks) {
    QuizStation station(session, false);
    station.open_for(member(number), quiz);
    station.show();
    save(station, "start-" + QString::fromStdString(quiz).replace(' ', '-'));
    if (quiz == banks.begin()->first) draw_lesson(station, save);
    station.findChild<QPushButton*>("begin")->click();
    const Sitting* sitting = station.run().sitting();
    if (!sitting) continue;
    for (std::size_t i = 0; i < sitting->size(); ++i) {
      if (kinds.insert(sitting->question().kind.index()).second) {
        QTest::keyClick(station.focusWidget(), Qt::Key_1);
        save(station, QString("kind-%1").arg(sitting->question().kind.index()));
        if (kinds.size() == 1) {
          station.findChild<QPushButton*>("large")->click();
          station.findChild<QPushButton*>("beside")->click();
          save(station, "large");
          station.findChild<QPushButton*>("large")->click();
          station.findChild<QPushButton*>("beside")->click();
        }
      }
      station.findChild<QPushButton*>("next")->click();
      if (!station.findChild<QWidget*>("question")->isVisible()) break;
    }
    station.findChild<QPushButton*>("hand_in")->click();
    save(station, "hand-in");
    station.findChild<QPushButton*>("hand_in_now")->click();
    save(station, "end-" + QString::fromStdString(quiz).replace(' ', '-'));
  }
  QuizStation out(session, false);
  out.open_for(member("0397"), "tier 1");
  out.show();
  save(out, "not-now");
}

/// Letter, since that is what the demo shop's town prints on.
void write_papers(Session& session, const QDir& folder) {
  const std::pair<const char*, RosterForm> forms[] = {{"roster-door.pdf", RosterForm::door},
                                                      {"roster-machines.pdf", RosterForm::machine_a_page},
                                                      {"roster-desk.pdf", RosterForm::grid},
                                                      {"roster-cards.pdf", RosterForm::card}};
  for (const auto& [name, form] : forms)
    write_roster_pdf(session, {{}, false, form}, folder.filePath(name), PaperSize::letter);
}

/// As it goes to the machine.
void write_blank_sheet(Session& session, const QDir& folder) {
  for (const OwnSheet& own : own_sheets()) {
    const Sheet& sheet = own.sheet;
    const BlankSheet blank = blank_sheet(session, sheet, "7K2Q9X", PaperSize::letter);
    write_pdf(folder.filePath(
                  QString("blank-%1-%2.pdf").arg(QString::fromStdString(sheet.name)).arg(sheet.revision)),
              blank.text, blank.laid.pages, blank.laid.draw);
  }
}

void write_plan(Session& session, const QDir& folder) {
  MainWindow window(session);
  window.show();
  plan_passes(window, session, "24 in");
  window.findChild<PlanView*>()->save_pdf(folder.filePath("pass-plan.pdf"));
  fill(window, {{"plan_measured", "1.469 in"}});
  window.findChild<PlanView*>()->save_pdf(folder.filePath("pass-plan-measured.pdf"));
}

}  // namespace

int main(int argc, char** argv) {
  QApplication app(argc, argv);
  QApplication::setQuitOnLastWindowClosed(false);
  const QStringList words = QApplication::arguments();
  if (words.size() < 2) {
    std::fputs("usage: look DIR [PAGE]\n", stderr);
    return 2;
  }
  QTemporaryDir settings;
  QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
  const QDir folder(words[1]);
  folder.mkpath(".");
  auto session = demo_session();
  if (!session) return 1;
  make_backups(*session);
  const QString only = words.size() > 2 ? words[2] : QString();
  const auto wanted = [&only](const QString& name) { return only.isEmpty() || name.startsWith(only); };
  bool fine = true;
  for (const Shade shade : {Shade::light, Shade::dark}) {
    apply_theme(app, shade);
    const QString shade_name = shade == Shade::light ? "light" : "dark";
    if (wanted("start")) draw_start(folder, shade_name);
    if (wanted("computers")) draw_computers(folder, shade_name);
    if (wanted("quiz")) draw_quiz(folder, shade_name);
    if (wanted("first-look")) draw_first_look(*session, folder, shade_name);
    fine = draw_views(*session, views(*session), wanted, folder, shade_name) && fine;
    fine = draw_changing(wanted, folder, shade_name) && fine;
  }
  if (wanted("pass-plan")) write_plan(*session, folder);
  if (wanted("blank")) write_blank_sheet(*session, folder);
  if (wanted("roster")) write_papers(*session, folder);
  return fine ? 0 : 1;
}
