// A computer that is to work at a shop's server: asked once, at its first start, and at every start after
// that there without being asked, also where the server is not up yet. WM_SERVER names a server with an empty
// database, WM_SERVER_CONTROL what stops and starts it.
#include <QLineEdit>
#include <QProcess>
#include <QRadioButton>
#include <QStandardPaths>
#include <QtTest>

#include "app/start/server_shop.h"
#include "app/start/shop_windows.h"
#include "app/theme/theme.h"
#include "db/sql/server.h"
#include "page_test.h"
#include "small_shop.h"

namespace server_start_test {

using namespace wm;
using namespace wm::app;

class ServerStartTest : public QObject {
  Q_OBJECT

  QTemporaryDir folder_;
  Instant now_ = SmallShop::at("2026-11-25T23:20:00Z");
  db::ServerAddress server_;

  db::Store::Clock clock() {
    return [this] { return now_; };
  }
  static db::StoreOptions quick() {
    db::StoreOptions options;
    options.pin_operations = 1;
    options.pin_memory = 8192;
    return options;
  }
  static void control(const char* word) {
    QProcess program;
    program.start(qEnvironmentVariable("WM_SERVER_CONTROL"), {word});
    if (!program.waitForFinished(60'000) || program.exitCode() != 0)
      qFatal("the server does not %s: %s", word, program.readAllStandardError().constData());
  }
  static StartPage* asked() {
    for (QWidget* each : QApplication::topLevelWidgets())
      if (auto* page = qobject_cast<StartPage*>(each); page && page->isVisible()) return page;
    return nullptr;
  }
  static QString waiting() {
    for (QWidget* each : QApplication::topLevelWidgets())
      if (auto* words = qobject_cast<QLabel*>(each); words && words->isVisible()) return words->text();
    return {};
  }
  ServerAnswers answers() const {
    const QString port = server_.port < 0 ? QString() : ':' + QString::number(server_.port);
    return {server_.host + port, server_.database, server_.user, {}, {}};
  }

 private slots:
  void initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    apply_theme(*qApp, Shade::light);
    const std::string name = qEnvironmentVariable("WM_SERVER").toStdString();
    server_ = db::read_address(name).value();
    auto store = db::Store::create(name, {"Cedar Street Workshop", "America/Chicago", 0}, clock(), quick());
    if (!store || !store->found(SmallShop::history())) qFatal("no shop");
  }

  void what_is_typed_becomes_an_address_or_is_refused_in_a_sentence() {
    const QString certificate = folder_.filePath("a root & more.crt");
    QFile file(certificate);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.close();
    const ServerAnswers good{"server.shop.lan:6432", "shop", "desk 1", "p@:/?#[] %41", certificate};
    const auto address = address_of(good);
    QVERIFY(address);
    QVERIFY(!QString::fromStdString(*address).contains("p@"));
    const auto read = db::read_address(with_password(*address, good.password));
    QVERIFY(read);
    QCOMPARE(read->host, QString("server.shop.lan"));
    QCOMPARE(read->port, 6432);
    QCOMPARE(read->user, good.login);
    QCOMPARE(read->password, good.password);
    QCOMPARE(read->database, good.database);
    QVERIFY(read->options.contains("sslmode='verify-full'"));
    QVERIFY(read->options.contains("sslrootcert='" + certificate + "'"));
    QVERIFY(!QString::fromStdString(db::shown_name(with_password(*address, good.password))).contains("41"));
    const auto refused = [&](auto change) {
      ServerAnswers bad = good;
      change(bad);
      const auto made = address_of(bad);
      return !made && !made.error().what.empty() && !made.error().remedy.empty();
    };
    QVERIFY(refused([](ServerAnswers& a) { a.host.clear(); }));
    QVERIFY(refused([](ServerAnswers& a) { a.host = "a name with spaces"; }));
    QVERIFY(refused([](ServerAnswers& a) { a.login.clear(); }));
    QVERIFY(refused([](ServerAnswers& a) { a.database.clear(); }));
    QVERIFY(refused([](ServerAnswers& a) { a.root_certificate = "/nowhere.crt"; }));
    QVERIFY(
        refused([](ServerAnswers& a) { a.root_certificate.clear(); }));  // anybody could pass for the server
  }

  void a_computer_is_told_its_server_at_its_first_start() {
    const QString own = folder_.filePath("own");
    QVERIFY(!kept_server_shop(own).value());
    ShopWindows windows(folder_.filePath("shop.witnessmark").toStdString(), clock(), quick());
    windows.keep_server_in(own);
    windows.ask();
    StartPage* page = asked();
    QVERIFY(page);
    for (QRadioButton* each : page->findChildren<QRadioButton*>())
      if (each->text().contains("server")) each->click();
    const auto line = [&](const char* name) { return page->findChild<QLineEdit*>(name); };
    QVERIFY(line("host")->isVisible() && !line("shop_name")->isVisible());
    line("host")->setText(answers().host);
    line("database")->setText("no_such_shop");
    line("login")->setText(answers().login);
    QTest::keyClick(line("login"), Qt::Key_Return);
    QVERIFY(!windows.session());  // told, and asked again
    QVERIFY(asked());
    QVERIFY(!kept_server_shop(own).value());
    line("database")->setText(answers().database);
    QTest::keyClick(line("login"), Qt::Key_Return);
    QVERIFY(windows.session());
    QVERIFY(windows.window() && windows.window()->isVisible());
    QVERIFY(!asked());
    QCOMPARE(QString::fromStdString(windows.session()->store().login()), answers().login);
    QCOMPARE(kept_server_shop(own).value(), std::optional(address_of(answers()).value()));
    QVERIFY(!QFile::exists(folder_.filePath("shop.witnessmark")));
  }

  void a_password_comes_back_with_the_address_and_stands_in_no_address() {
    const QString own = folder_.filePath("with a password");
    const std::string address = address_of(answers()).value();
    QVERIFY(keep_server_shop(own, address, QStringLiteral("søt 8 %20:@/")));
    QCOMPARE(kept_server_shop(own).value(),
             std::optional(with_password(address, QStringLiteral("søt 8 %20:@/"))));
    QFile file(QDir(own).filePath("server"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll().trimmed(), QByteArray::fromStdString(address));
    QCOMPARE(QFile::permissions(QDir(own).filePath("server-password")) &
                 (QFile::ReadGroup | QFile::ReadOther | QFile::WriteGroup | QFile::WriteOther),
             QFile::Permissions());
    QVERIFY(keep_server_shop(own, address, {}));  // the server takes it without one now
    QCOMPARE(kept_server_shop(own).value(), std::optional(address));
  }

  void a_start_before_the_server_s_waits_and_goes_on_by_itself() {
    control("stop");
    ShopWindows windows(address_of(answers()).value(), clock(), quick());
    windows.open_behind();
    QTRY_VERIFY_WITH_TIMEOUT(waiting().contains("goes on by itself once it can"), 15'000);
    QVERIFY(!windows.window());
    control("start");
    QTRY_VERIFY_WITH_TIMEOUT(windows.window(), 15'000);
    QVERIFY(windows.window()->isVisible());
    QVERIFY(waiting().isEmpty());
  }
};

}  // namespace server_start_test

WM_PAGE_TEST(server_start_test, ServerStartTest)
#include "server_start_test.moc"
