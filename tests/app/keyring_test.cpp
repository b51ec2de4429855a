// This computer's secret in a keyring of this test's own (GNOME's, on a bus of its own:
// tests/app/with_keyring), and without one.
#include "app/start/keyring.h"

#include <QtTest>

#include "app/start/computer_secret.h"

using namespace wm;
using namespace wm::app;

class KeyringTest : public QObject {
  Q_OBJECT

  static QByteArray content(const QString& folder) {
    QFile file(QDir(folder).filePath("secret"));
    return file.open(QIODevice::ReadOnly) ? file.readAll().trimmed() : QByteArray();
  }
  static ledger::Secret secret(const QString& folder) {
    const auto made = computer_secret(folder);
    if (!made) qFatal("%s", made.error().what.c_str());
    return *made;
  }

  QTemporaryDir home_;
  QByteArray bus_ = qgetenv("DBUS_SESSION_BUS_ADDRESS");

 private slots:
  void what_is_kept_is_read_back_and_what_is_not_is_not_there() {
    const QByteArray bytes("\0\xff and more", 11);
    QVERIFY(keep_in_keyring("one", bytes));
    QCOMPARE(read_keyring("one").state, KeyringState::found);
    QCOMPARE(read_keyring("one").bytes, bytes);
    QCOMPARE(read_keyring("another").state, KeyringState::not_there);
  }

  void a_new_secret_goes_into_the_keyring_and_stays_the_same() {
    const QString folder = home_.filePath("new");
    const ledger::Secret made = secret(folder);
    QCOMPARE(content(folder), QByteArray("in the system's keyring"));
    QVERIFY(secret(folder) == made);
    QVERIFY(!(secret(home_.filePath("other")) == made));
  }

  void one_from_before_is_moved_and_is_still_the_same() {
    const QString folder = home_.filePath("before");
    QDir().mkpath(folder);
    const ledger::Secret before = ledger::Secret::random();
    QFile file(QDir(folder).filePath("secret"));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(ledger::to_hex(before.bytes())));
    file.close();
    QVERIFY(secret(folder) == before);
    QCOMPARE(content(folder), QByteArray("in the system's keyring"));
    QVERIFY(secret(folder) == before);
  }

  void a_file_that_is_something_else_is_refused() {
    const QString folder = home_.filePath("else");
    QDir().mkpath(folder);
    QFile file(QDir(folder).filePath("secret"));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write("a shopping list");
    file.close();
    QVERIFY(!computer_secret(folder));
    QCOMPARE(content(folder), QByteArray("a shopping list"));
  }

  void what_the_keyring_lost_is_said_and_no_other_made() {
    const QString folder = home_.filePath("lost");
    QDir().mkpath(folder);
    QFile file(QDir(folder).filePath("secret"));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write("in the system's keyring\n");
    file.close();
    const auto refused = computer_secret(folder);
    QVERIFY(!refused);
    QVERIFY(QString::fromStdString(refused.error().what).contains("no longer in the system's keyring"));
    QCOMPARE(content(folder), QByteArray("in the system's keyring"));
  }
};

QTEST_GUILESS_MAIN(KeyringTest)
#include "keyring_test.moc"
