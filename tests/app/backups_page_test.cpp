// Backups by keyboard: set up, made by hand and by themselves, told of at the desk when they are old, and put
// back with nothing lost unsaid.
#include "app/backups/backups_page.h"

#include "app/backups/backup_words.h"
#include "app/desk/answer.h"
#include "app/start/shop_windows.h"
#include "lists_shop.h"
#include "page_test.h"
#include "small_shop.h"
#include "word_list.h"

namespace backups_page_test {

using namespace wm;
using namespace wm::app;

namespace {

constexpr std::int64_t day = 86400;

/// The page, and a folder for backups.
struct ShownBackups : Shown<BackupsPage> {
  QTemporaryDir folder;
  QSignalSpy told{&page, &Page::tell}, refused{&page, &Page::tell_problem};

  explicit ShownBackups(const PersonId& who) : Shown(who) {
    QObject::connect(&backups(), &Backups::changed, &page, &Page::refresh);
  }
  Backups& backups() { return session().backups(); }
  void set(int every, int remind) { backups().set({folder.path(), every, remind}); }
  QStringList files() const { return QDir(folder.path()).entryList({"*.backup"}, QDir::Files); }
  /// Looks again and waits until that is done.
  void look() {
    QSignalSpy changed(&backups(), &Backups::changed);
    backups().look();
    QVERIFY(changed.wait());
  }
};

/// What the desk is told, and that it reads well.
QString reminder(ListsShop& shop) {
  const QString words = backup_reminder(shop.session());
  if (words.isEmpty()) return words;
  const QString fault = fault_of_sentence(words);
  return fault.isEmpty() ? words : "badly said: " + fault + ": " + words;
}

/// A file of the small shop, with the program's windows on it.
struct Program {
  QTemporaryDir folder;
  Instant now = SmallShop::at("2026-11-25T23:20:00Z");
  std::string path = folder.filePath("shop.witnessmark").toStdString();
  QDir backups{folder.filePath("backups")};
  std::unique_ptr<ShopWindows> windows;

  Program() {
    QDir(folder.path()).mkdir("backups");
    db::StoreOptions quick;
    quick.pin_operations = 1;
    quick.pin_memory = 8192;
    auto store = db::Store::create(path, {"Cedar Street Workshop", "America/Chicago", 0}, clock(), quick);
    if (!store || !store->found(SmallShop::history())) qFatal("no shop");
    set_backup_settings(shop_key(path), {backups.path(), 1, 3});
    windows = std::make_unique<ShopWindows>(path, clock(), db::StoreOptions{});
    windows->open(std::move(*store));
  }
  db::Store::Clock clock() {
    return [this] { return now; };
  }
  MainWindow& window() const { return *windows->window(); }
  Session& session() const { return *windows->session(); }
  QString told() const { return window().messages().text(); }
};

}  // namespace

class BackupsPageTest : public QObject {
  Q_OBJECT

  QTemporaryDir settings_;

 private slots:
  void initTestCase() {
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings_.path());
    QStandardPaths::setTestModeEnabled(true);
  }

  void somebody_is_looked_up_while_the_shop_is_being_read() {
    Program program;
    Session& session = program.session();
    const DeskAnswer answer = desk_answer(session, shop_now(session), "jonas", "jointer-planer/jointing");
    program.windows = std::make_unique<ShopWindows>(program.path, program.clock(), db::StoreOptions{});
    program.windows->open_behind();
    FirstLookWindow* look = program.windows->first_look();
    QVERIFY(look);
    // Not as keys: a shop as small as this one is read before the next event.
    look->findChild<QLineEdit*>("search")->setText("jonas");
    QCOMPARE(look->person(), std::optional<PersonId>("jonas"));
    const QString said = look->findChild<QLabel*>("answers")->text();
    QVERIFY2(said.contains(answer.sentence), qPrintable(said + "\n\n" + answer.sentence));
    QTRY_VERIFY(program.windows->window());
    QVERIFY(!program.windows->first_look());
    QCOMPARE(program.window().current()->id(), QString("desk"));
    QVERIFY(seen_on(*program.window().current()).contains("Lindqvist"));
  }

  void somebody_hurt_has_one_key_while_the_shop_is_being_read_and_goes_on_when_it_has_been() {
    Program program;
    QVERIFY(program.session().sit_down("rosa", "1111"));
    QVERIFY(program.session().commit(db::EnterShopFact{db::EmergencyCall{"9-911", "Cedar Street 12"}}));
    program.windows = std::make_unique<ShopWindows>(program.path, program.clock(), db::StoreOptions{});
    {
      auto opened = db::FirstLook::open(program.path, program.clock());
      QVERIFY(opened);
      FirstLookWindow look(std::move(*opened));
      look.show();
      QVERIFY(QTest::qWaitForWindowActive(&look));
      QTest::keyClicks(QApplication::focusWidget(), "jon");
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier);
      QVERIFY(look.somebody_hurt());
      QVERIFY(look.findChild<QLabel*>("emergency_call")->text().contains("9-911"));
      QTest::keyClicks(QApplication::focusWidget(), "as");
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
      QVERIFY(!look.somebody_hurt());
      QCOMPARE(QApplication::focusWidget()->objectName(), QString("search"));
      QCOMPARE(look.findChild<QLineEdit*>("search")->text(), QString("jon"));
    }
    program.windows->open_behind();
    QVERIFY(program.windows->first_look());
    // Not as a key: a shop as small as this one is read before the next event.
    program.windows->first_look()->findChild<QAbstractButton*>("emergency")->click();
    QTRY_VERIFY(program.windows->window());
    QCOMPARE(program.window().current()->id(), QString("emergency"));
    QVERIFY(seen_on(*program.window().current()).contains("9-911"));
  }

  void a_manager_sets_them_up_and_backs_up_by_keyboard() {
    ShownBackups shop("mia");
    QVERIFY(!shop.page.findChild<QPushButton*>("back_up"));
    press(shop.page, Qt::Key_T, Qt::ControlModifier);
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("folder"));
    type(shop.page, shop.folder.path() + "/none");
    press(shop.page, Qt::Key_Return);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->isVisible());
    shop.page.findChild<QLineEdit*>("folder")->setText(shop.folder.path());
    shop.page.findChild<QLineEdit*>("remind")->setText("1");
    press(shop.page, Qt::Key_Return);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->isVisible());
    shop.page.findChild<QLineEdit*>("remind")->setText("5");
    press(shop.page, Qt::Key_Return);
    QCOMPARE(shop.backups().settings(), (BackupSettings{shop.folder.path(), 1, 5}));
    QCOMPARE(backup_settings(shop_key(shop.session().store().path())), shop.backups().settings());
    shop.told.clear();
    QTest::qWait(300);  // the folder has been looked into
    QTest::keyClick(at_cursor(shop.page), Qt::Key_B, Qt::ControlModifier);
    QVERIFY(shop.backups().making());  // behind the window, which goes on
    QTRY_COMPARE(shop.told.count(), 1);
    QCOMPARE(shop.files().size(), 1);
    const QString size = QLocale().formattedDataSize(
        QFileInfo(shop.folder.filePath(shop.files().front())).size(), 1, QLocale::DataSizeSIFormat);
    QCOMPARE(
        shop.told.front().front().toString(),
        QString("Backup made, read back and equal to the shop: %1, %2.").arg(shop.files().front(), size));
    const QString seen = seen_on(shop.page);
    for (const QString& words : {shop.files().front(), size, QString("after 5 days without one")})
      QVERIFY2(seen.contains(words), qPrintable(words + " in " + seen));
  }

  void a_folder_that_is_gone_is_told() {
    ShownBackups shop("mia");
    shop.set(0, 3);
    QVERIFY(shop.folder.remove());
    QTest::qWait(300);  // the folder has been looked into
    press(shop.page, Qt::Key_B, Qt::ControlModifier);
    QTRY_COMPARE(shop.refused.count(), 1);
    QVERIFY(seen_on(shop.page).contains("The folder does not exist."));
    QCOMPARE(shop.backups().care(), BackupCare::no_folder);
    QVERIFY(reminder(shop).contains("can't be reached"));
  }

  void the_desk_makes_one_and_neither_sets_up_nor_puts_back() {
    ShownBackups shop("dee");
    shop.set(0, 3);
    shop.look();
    press(shop.page, Qt::Key_B, Qt::ControlModifier);
    QTRY_COMPARE(shop.told.count(), 1);
    QCOMPARE(shop.files().size(), 1);
    for (const char* button : {"set_up", "put_back"})
      QVERIFY2(!shop.page.findChild<QPushButton*>(button), button);
    shop.session().hand_over();
    QVERIFY(!shop.page.findChild<QPushButton*>("back_up"));
  }

  void one_is_made_by_itself_each_day_and_none_before_the_program_has_begun() {
    ShownBackups shop("mia");
    shop.set(1, 3);
    shop.look();
    QCOMPARE(shop.files().size(), 0);
    QSignalSpy changed(&shop.backups(), &Backups::changed);
    shop.backups().start();
    QVERIFY(changed.wait());
    QCOMPARE(shop.files().size(), 1);
    shop.wait(5 * 3600);  // 23:00 of the same day in Chicago
    shop.look();
    QCOMPARE(shop.files().size(), 1);
    shop.wait(2 * 3600);
    shop.look();
    QCOMPARE(shop.files().size(), 2);
    shop.set(7, 9);
    shop.look();
    shop.wait(6 * day);
    shop.look();
    QCOMPARE(shop.files().size(), 2);
    shop.wait(day);
    shop.look();
    QCOMPARE(shop.files().size(), 3);
    shop.set(0, 9);
    shop.wait(30 * day);
    shop.look();
    QCOMPARE(shop.files().size(), 3);
    QVERIFY(shop.told.isEmpty());
  }

  void the_desk_is_told_when_there_is_none_or_the_last_is_too_old() {
    ShownBackups shop("dee");
    QVERIFY(reminder(shop).isEmpty());  // nobody has looked yet
    shop.backups().start();
    QCOMPARE(reminder(shop),
             QString("No backups are made of this shop. Please ask a manager to set them up."));
    shop.set(0, 3);
    shop.look();
    QCOMPARE(reminder(shop), QString("There is no backup yet. Please ask a manager to look."));
    shop.backups().back_up_now();
    QTRY_COMPARE(shop.told.count(), 1);
    QVERIFY(reminder(shop).isEmpty());
    shop.wait(3 * day - 1);
    QVERIFY(reminder(shop).isEmpty());
    shop.wait(1);
    QCOMPARE(reminder(shop), QString("The last good backup is 3 days old, of Saturday 14 March 2026. "
                                     "Please ask a manager to look."));
  }

  void what_would_be_lost_is_seen_first_and_then_the_shop_goes_on_as_it_was() {
    Program program;
    QTRY_COMPARE(program.backups.entryList({"*.backup"}, QDir::Files).size(), 1);  // by itself
    QVERIFY(program.session().sit_down("ines", "3333"));
    program.now = program.now + 60;
    QVERIFY(program.session().commit(db::EnterFact{Lesson{"lucja", "guards", 1}}));
    QVERIFY(program.session().sit_down("rosa", "1111"));
    const auto with_lesson = program.session().store().entries().size();
    QVERIFY(QTest::qWaitForWindowActive(&program.window()));
    press(program.window(), Qt::Key_F12, Qt::ShiftModifier);
    QCOMPARE(program.window().current()->id(), QString("backups"));
    QTRY_VERIFY(program.window().findChild<QPushButton*>("put_back"));
    QTest::qWait(300);  // as a person does who looks at the list, which is read once more meanwhile
    press(program.window(), Qt::Key_R, Qt::ControlModifier);
    auto* now = program.window().findChild<QPushButton*>("put_back_now");
    QTRY_VERIFY(now->isEnabled());
    const QString seen = seen_on(program.window());
    for (const char* words :
         {"One entry made since would be lost.", "25 Nov 2026", "Ines Okafor", "had the lesson"})
      QVERIFY2(seen.contains(words), qPrintable(QString(words) + " in " + seen));
    press(program.window(), Qt::Key_Escape);
    QVERIFY(!now->isVisible());
    QCOMPARE(program.session().store().entries().size(), with_lesson);

    press(program.window(), Qt::Key_R, Qt::ControlModifier);
    QTRY_VERIFY(now->isEnabled());
    program.now = program.now + 60;
    press(program.window(), Qt::Key_Return, Qt::ControlModifier);
    QTRY_VERIFY(program.windows->window() && program.told().contains("The backup is in place."));
    QVERIFY(program.window().isVisible());
    QCOMPARE(program.session().store().entries().size(), with_lesson - 1);
    QVERIFY(!program.session().seated());
    const QStringList kept = QDir(program.folder.path()).entryList({"shop-replaced-*.witnessmark"});
    QCOMPARE(kept.size(), 1);
    QVERIFY(program.told().contains(program.folder.filePath(kept.front())));
    // And it goes on: somebody sits down and enters something.
    QVERIFY(program.session().sit_down("ines", "3333"));
    QVERIFY(program.session().commit(db::EnterFact{Lesson{"lucja", "guards", 1}}));
  }

  void a_shop_that_another_window_has_open_stays_as_it_is() {
    Program program;
    QTRY_COMPARE(program.backups.entryList({"*.backup"}, QDir::Files).size(), 1);
    const auto other = db::Store::open(program.path, program.clock());
    QVERIFY(other.has_value());
    const auto before = other->entries();
    program.session().backups().put_back(
        program.backups.filePath(program.backups.entryList({"*.backup"}, QDir::Files).front()).toStdString());
    QTRY_VERIFY(program.windows->window() && program.told().contains("Another program has the shop open."));
    QCOMPARE(program.session().store().entries(), before);
    QVERIFY(QDir(program.folder.path()).entryList({"shop-replaced-*"}).isEmpty());
  }
};

}  // namespace backups_page_test

WM_PAGE_TEST(backups_page_test, BackupsPageTest)
#include "backups_page_test.moc"
