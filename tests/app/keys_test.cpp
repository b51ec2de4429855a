// No two keys mean two things at once, and none takes away what people know from everywhere.
#include <QAbstractButton>
#include <QAction>
#include <QShortcut>
#include <QtTest>

#include "app/frame/main_window.h"
#include "app/frame/pages.h"
#include "app/theme/theme.h"
#include "db/journal/subject.h"
#include "page_test.h"
#include "small_shop.h"

namespace keys_test {

using namespace wm;
using namespace wm::app;

class KeysTest : public QObject {
  Q_OBJECT

  static std::vector<std::pair<QKeySequence, QString>> keys_seen_in(MainWindow& window) {
    std::vector<std::pair<QKeySequence, QString>> keys;
    const auto add = [&](const QKeySequence& key, const QString& what) {
      if (!key.isEmpty()) keys.emplace_back(key, what);
    };
    for (const auto* button : window.findChildren<QAbstractButton*>())
      if (button->isVisible()) add(button->shortcut(), button->text());
    for (const auto* shortcut : window.findChildren<QShortcut*>())
      if (auto* on = qobject_cast<QWidget*>(shortcut->parent());
          on && on->isVisible() && shortcut->isEnabled())
        add(shortcut->key(), shortcut->objectName());
    for (const auto* widget : window.findChildren<QWidget*>())
      for (const auto* action : widget->isVisible() ? widget->actions() : QList<QAction*>())
        for (const QKeySequence& key : action->shortcuts()) add(key, action->text());
    return keys;
  }

  static void check(MainWindow& window, const QString& where) {
    const auto keys = keys_seen_in(window);
    for (std::size_t i = 0; i < keys.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j)
        QVERIFY2(keys[i].first != keys[j].first,
                 qPrintable(QString("%1: %2 is both %3 and %4")
                                .arg(where, keys[i].first.toString(), keys[i].second, keys[j].second)));
      // Fields take these for themselves under X11 (Qt's table of standard keys), so a page would not get
      // them.
      for (const char* field : {"Ctrl+D", "Ctrl+E", "Ctrl+K", "Ctrl+U"})
        QVERIFY2(keys[i].first != QKeySequence(field), qPrintable(where + ": a field takes " + field));
      for (const auto usual :
           {QKeySequence::Copy, QKeySequence::Cut, QKeySequence::Paste, QKeySequence::SelectAll,
            QKeySequence::Quit, QKeySequence::HelpContents, QKeySequence::Close})
        QVERIFY2(!QKeySequence::keyBindings(usual).contains(keys[i].first),
                 qPrintable(where + ": " + keys[i].first.toString() + " is known for something else"));
    }
  }

 private slots:
  void a_clock_that_jumped_is_shown_and_confirmed_by_a_manager() {
    apply_theme(*qApp, Shade::light);
    SmallShop shop;
    MainWindow window(*shop.session);
    window.show();
    auto* banner = window.findChild<QFrame*>("clock_banner");
    auto* right = window.findChild<QAbstractButton*>("clock_right");
    QVERIFY(!banner->isVisible());
    const db::Printed paper{"Roster", 1, std::string(64, 'a')};
    QVERIFY(shop.session->commit(db::EnterShopFact{paper}));
    shop.now = shop.now - 5 * 3600;
    QTRY_VERIFY(banner->isVisible());
    QVERIFY(!right->isVisible());
    QVERIFY(shop.session->sit_down("rosa", "1111"));
    QVERIFY(right->isVisible());
    QTest::keyClick(&window, Qt::Key_T, Qt::ControlModifier | Qt::ShiftModifier);
    QVERIFY(!banner->isVisible());
    QVERIFY(db::as<db::ClockConfirmed>(shop.session->store().entries().back().fact));
  }

  /// A proxy that is not the first of what it stands for would be gone to past all before it.
  void tab_reaches_whatever_takes_the_cursor() {
    apply_theme(*qApp, Shade::light);
    SmallShop shop;
    QVERIFY(shop.session->sit_down("rosa", "1111"));
    MainWindow window(*shop.session);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    QStringList all{"emergency", "seat"};
    for (const PageEntry& entry : pages()) all << entry.id;
    Place place;
    for (const QString& page : all) {
      place.page = page;
      window.go(place);
      QCoreApplication::processEvents();
      QSet<QWidget*> waiting;
      for (auto* widget : window.findChildren<QWidget*>())
        if (widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) &&
            !widget->focusProxy())
          waiting << widget;
      constexpr int most = 120;
      for (int tabs = 0; tabs < most && !waiting.isEmpty(); ++tabs) {
        waiting.remove(QApplication::focusWidget());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
      }
      QStringList missed;
      for (const QWidget* widget : waiting)
        missed << widget->metaObject()->className() + QString(" ") + widget->objectName();
      QVERIFY2(missed.isEmpty(), qPrintable(page + ": " + missed.join(", ")));
    }
  }

  void no_two_keys_of_a_page_clash() {
    apply_theme(*qApp, Shade::light);
    SmallShop shop;
    QVERIFY(shop.session->sit_down("rosa", "1111"));
    MainWindow window(*shop.session);
    window.show();
    Place place;
    for (const PageEntry& entry : pages()) {
      place.page = entry.id;
      window.go(place);
      check(window, entry.id);
    }
    for (const char* page : {"emergency", "seat"}) {
      place.page = page;
      window.go(place);
      check(window, page);
    }
    place.page = "desk";
    place.person = "jonas";
    window.go(place);
    check(window, "desk with a person");
  }
};

}  // namespace keys_test

WM_PAGE_TEST(keys_test, KeysTest)
#include "keys_test.moc"
