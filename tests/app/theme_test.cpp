// Every pair of colours that is used, against the contrast that WCAG 2.2 asks for (1.4.3: text 4.5 :
// 1; 1.4.11: drawings 3 : 1), by that standard's own formula for relative luminance.
#include "app/theme/theme.h"
#include "app/start/system_shade.h"
#include "app/widgets/message_bar.h"

#include <QtTest>
#include <cmath>

#include "page_test.h"

namespace theme_test {

using namespace wm::app;

namespace {

double linear(double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); }

double luminance(const QColor& c) {
  return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

double contrast(const QColor& a, const QColor& b) {
  const double x = luminance(a), y = luminance(b);
  return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

}  // namespace

class ThemeTest : public QObject {
  Q_OBJECT
 private slots:
  void the_formula_gives_the_standards_own_ends() {
    QCOMPARE(qRound(contrast(Qt::black, Qt::white) * 100), 2100);
    QCOMPARE(qRound(contrast(Qt::white, Qt::white) * 100), 100);
  }

  void words_can_be_read_on_every_ground() {
    for (const Shade shade : {Shade::light, Shade::dark}) {
      const Palette& p = palette(shade);
      for (const QColor& ground : {p.ground, p.paper, p.chosen}) {
        QVERIFY(contrast(p.text, ground) >= 4.5);
        QVERIFY(contrast(p.full, ground) >= 4.5);
      }
      for (const QColor& ground : {p.ground, p.paper}) QVERIFY(contrast(p.quiet, ground) >= 4.5);
      QVERIFY(contrast(p.paper, p.full) >= 4.5);  // the button that comes next
    }
  }

  void drawings_stand_out_from_every_ground() {
    for (const Shade shade : {Shade::light, Shade::dark}) {
      const Palette& p = palette(shade);
      for (const QColor& ground : {p.ground, p.paper, p.chosen})
        for (const QColor& ink : {p.full, p.half, p.quiet, p.text})
          QVERIFY2(contrast(ink, ground) >= 3.0, qPrintable(ink.name() + " on " + ground.name() +
                                                            QString(" %1").arg(contrast(ink, ground))));
    }
  }

  void the_program_goes_light_when_the_system_does() {
    follow_system_shade(*qApp);
    apply_theme(*qApp, Shade::dark);
    QWidget window;
    window.show();
    QEvent changed(QEvent::ThemeChange);
    QApplication::sendEvent(&window, &changed);
    QVERIFY(shade() == Shade::light);  // as the offscreen platform always is
    QCOMPARE(QApplication::palette().color(QPalette::Window), palette(Shade::light).ground);
  }

  void what_the_bar_at_the_foot_shows_can_be_read_after_the_shade_has_changed() {
    apply_theme(*qApp, Shade::light);
    MessageBar bar;
    bar.resize(600, 60);
    for (const bool problem : {false, true}) {
      if (problem)
        bar.tell_problem({"where", "It cannot be", "Do something else"});
      else
        bar.tell("It is done");
      // As it is shown, and after each change.
      for (const Shade shade : {Shade::light, Shade::dark, Shade::light}) {
        if (shade != wm::app::shade()) apply_theme(*qApp, shade);
        QCoreApplication::processEvents();
        const QImage seen = bar.grab().toImage();
        const Palette& p = palette(shade);
        QCOMPARE(seen.pixelColor(3, seen.height() - 3), p.chosen);
        QCOMPARE(seen.pixelColor(300, 0), problem ? p.full : p.line);
        QCOMPARE(seen.pixelColor(300, 2), problem ? p.full : p.chosen);
        QCOMPARE(bar.findChild<QLabel*>("message")->palette().color(QPalette::WindowText), p.text);
      }
    }
  }

  void three_sizes_and_weight_before_size() {
    QVERIFY(type(TypeSize::small).pixelSize() < type(TypeSize::body).pixelSize());
    QVERIFY(type(TypeSize::body).pixelSize() < type(TypeSize::large).pixelSize());
    QVERIFY(type(TypeSize::body, true).weight() > type(TypeSize::body).weight());
    QCOMPARE(row_height(), 36);
  }
};

}  // namespace theme_test

WM_PAGE_TEST(theme_test, ThemeTest)
#include "theme_test.moc"
