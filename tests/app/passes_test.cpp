// Limits cards on Machines, and pass plans on Check-outs, by keyboard.
#include "app/passes/card_words.h"

#include "app/checkouts/checkouts_page.h"
#include "app/machines/machines_page.h"
#include "app/passes/plan_view.h"
#include "app/words/length_words.h"
#include "core/passes/json.h"
#include "db/journal/subject.h"
#include "lists_shop.h"
#include "page_test.h"

namespace passes_test {

using namespace wm;
using namespace wm::app;

namespace {

/// Common practice, no source: at most 1/8 in a pass, stock of 6 in or more, 5/32 in a turn, a scale within
/// 1/16.
const char* const planer_text =
    R"({"depths": [{"width": "6 in", "deepest": "1/8 in"}, {"width": "12 in", "deepest": "1/16 in"}],
        "shortest": "6 in", "thinnest": "1/4 in", "light": "1/32 in", "scale_marks": "1/64 in",
        "scale_error": "1/16 in", "wheel": {"turn": "5/32 in", "divisions": 20}})";
const char* const jointer_text =
    R"({"depths": [{"width": "6 in", "deepest": "1/8 in"}], "shortest": "12 in", "thinnest": "1/2 in",
        "light": "1/16 in", "scale_marks": "1/64 in", "scale_error": "1/64 in"})";

void issue(ListsShop& shop, const TargetName& target, const char* text, int revision = 1) {
  shop.enter(db::EnterShopFact{db::Issued{db::Work::card, target, revision, "", text, {}}});
}

template <class W = QWidget>
W* in(QWidget& page, const char* name) {
  return page.findChild<W*>(name);
}

QString said(QWidget& page, const char* name) { return in<QLabel>(page, name)->text(); }

/// What is typed into fields by name, in order.
void fill(QWidget& page, std::initializer_list<std::pair<const char*, const char*>> fields) {
  for (const auto& [name, text] : fields) {
    auto* field = in<QLineEdit>(page, name);
    QVERIFY2(field && field->isVisible(), name);
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, text);
  }
}

/// A page of Check-outs with its plan open for somebody's piece, in a shop whose combination has both cards.
struct Planning : Shown<CheckoutsPage> {
  explicit Planning(const char* planer = planer_text, const char* target = "jointer-planer/planing")
      : Shown<CheckoutsPage>("mia") {
    issue(*this, "jointer-planer/jointing", jointer_text);
    issue(*this, "jointer-planer/planing", planer);
    plan_for("ines", target);
  }
  void plan_for(const char* person, const char* target) {
    Place of;
    of.person = person;
    of.target = target;
    page.open(of);
    press(page, Qt::Key_T, Qt::ControlModifier);
  }
  void board(const char* length, const char* thickest, const char* final) {
    fill(page, {{"plan_length", length},
                {"plan_width", "6"},
                {"plan_thickest", thickest},
                {"plan_uneven", "0"},
                {"plan_final", final}});
  }
  void choose_jointing() {
    in<QComboBox>(page, "plan_machine")->setFocus();
    press(page, Qt::Key_Up);
    QCOMPARE(in<QComboBox>(page, "plan_machine")->currentText(), QString("Jointer/planer, jointing"));
  }
  void tick(const char* box) {
    in<QCheckBox>(page, box)->setFocus();
    press(page, Qt::Key_Space);
    QVERIFY(in<QCheckBox>(page, box)->isChecked());
  }
  int ticks() {
    return static_cast<int>(in<QCheckBox>(page, "plan_crown")->isChecked()) +
           static_cast<int>(in<QCheckBox>(page, "plan_fence")->isChecked());
  }
  void measure(const QString& typed) { fill(page, {{"plan_measured", qPrintable(typed)}}); }
  QString words() { return said(page, "plan_said"); }
  QTableWidget* lines() { return in<QTableWidget>(page, "plan_lines"); }
  QString cell(int row, int column) { return lines()->item(row, column)->text(); }
};

const char* const how_far = "by what is measured";

/// How many divisions of 20 the page says to turn on; nothing where it says no number.
std::optional<double> divisions(const QString& words) {
  static const QRegularExpression form("^(?:(\\d+) turns? and )?(?:about )?([\\d.]+) of 20 \\(");
  const auto found = form.match(words);
  if (!found.hasMatch()) return std::nullopt;
  return found.captured(1).toDouble() * 20 + found.captured(2).toDouble();
}

/// A planer of 1/128 in a division with an even board on it, and a caliper of thousandths.
struct Machine {
  double gap = 0, board = 1.5, deepest = 0;
  /// Whether it cut.
  bool feed() {
    const double cut = board - gap;
    deepest = std::max(deepest, cut);
    board = std::min(board, gap);
    return cut > 1e-9;
  }
  QString read() const { return QString::number(board, 'f', 3); }
};

}  // namespace

class PassesTest : public QObject {
  Q_OBJECT
 private slots:
  void init() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    apply_theme(*qApp, Shade::light);
  }

  void an_eighth_is_eight_tenths_of_a_turn() {
    const Wheel wheel{inches(5, 32), 20};
    QCOMPARE(wheel_words(wheel_move(wheel, inches(1, 8)), wheel), QString("16 of 20 (0.8 turn)"));
    QCOMPARE(wheel_words(wheel_move(wheel, inches(5, 32)), wheel), QString("1 turn (1 turn)"));
    QCOMPARE(wheel_words(wheel_move(wheel, inches(3, 16)), wheel), QString("1 turn and 4 of 20 (1.2 turns)"));
    // 0.001 in is 0.128 of a division of 1/128 in.
    QCOMPARE(wheel_words(wheel_move(wheel, inches(1, 1000)), wheel),
             QString("about 0.1 of 20 (about 0.01 turn)"));
  }

  void a_plan_goes_pass_by_pass_with_the_arithmetic_beside_it() {
    Planning shop;
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("plan_length"));
    QCOMPARE(in<QComboBox>(shop.page, "plan_machine")->currentText(), QString("Jointer/planer, planing"));
    QVERIFY(!in<QLineEdit>(shop.page, "plan_hollow")->isVisible());
    shop.board("24", "1 1/2", "1");
    const QString words = said(shop.page, "plan_said");
    // 1/2 in at 1/8 in a pass.
    QVERIFY2(
        words.contains("Arithmetic: 1/2 in to come off at 1/8 in a pass at most is 4; no plan has fewer"),
        qPrintable(words));
    QVERIFY2(words.contains("The deepest pass, 1/8 in, is 0.8 turn of the wheel, which moves 5/32 in a turn"),
             qPrintable(words));
    const auto plan = plan_passes(*read_planer_card(planer_text), {inches(24), inches(6), inches(3, 2),
                                                                   inches(0), inches(1), inches(1, 1000)});
    QVERIFY(plan);
    QCOMPARE(shop.lines()->rowCount(), static_cast<int>(plan->passes.size()));
    QVERIFY(words.contains(QString("Passes: %1 at most, %2").arg(plan->passes.size()).arg(plan->fewest)));
    for (int row = 0; row < shop.lines()->rowCount(); ++row) {
      const Pass& pass = plan->passes[static_cast<std::size_t>(row)];
      QCOMPARE(shop.lines()->item(row, 3)->text().isEmpty(), false);
      QCOMPARE(shop.lines()->item(row, 2)->text().contains("turn"), pass.kind == PassKind::feel);
    }
    QCOMPARE(shop.lines()->item(shop.lines()->rowCount() - 1, 1)->text(), QString("1 in"));
    // Tied by the caliper, and shown no finer than it reads.
    shop.measure("1.501");
    QCOMPARE(shop.cell(3, 1), QString("1.024 in"));
    QVERIFY(said(shop.page, "plan_cautions").contains("maker's manual"));
    QVERIFY(in<QWidget>(shop.page, "plan_drawing")->isVisible());
    press(shop.page, Qt::Key_Escape);
    QVERIFY(!in<QWidget>(shop.page, "plan_title")->isVisible());
  }

  void whoever_follows_what_is_shown_and_types_what_is_measured_ends_at_the_size_data() {
    QTest::addColumn<QString>("marks");
    QTest::addColumn<double>("off");
    QTest::newRow("off to cut more, and the first only just touches") << "1/32 in" << -1.0 / 16;
    QTest::newRow("off to cut more") << "1/64 in" << -1.0 / 16;
    QTest::newRow("as it says") << "1/64 in" << 0.0;
    QTest::newRow("off to cut less") << "1/64 in" << 1.0 / 16;
  }

  void whoever_follows_what_is_shown_and_types_what_is_measured_ends_at_the_size() {
    QFETCH(QString, marks);
    QFETCH(double, off);
    const QString card = QString(planer_text).replace("1/64 in", marks);
    Planning shop(qPrintable(card));
    shop.board("24", "1 1/2", "1");
    Machine machine;
    machine.gap = in_inches(*read_length(shop.cell(0, 1).toStdString())).count.get_d() + off;
    const int rows = shop.lines()->rowCount();
    int row = 0;
    for (bool cut = machine.feed(); !cut; cut = machine.feed()) {
      const auto turn = divisions(shop.cell(++row, 2));
      QVERIFY2(turn, qPrintable(shop.cell(row, 2)));
      machine.gap -= *turn / 128;
    }
    if (marks == "1/32 in") QCOMPARE(machine.read(), QString("1.469"));
    // What comes after is counted, and nobody can set it yet.
    int later = 0;
    for (int i = 0; i < rows; ++i) later += shop.cell(i, 2) == how_far;
    QCOMPARE(later, 5);
    QCOMPARE(shop.cell(rows - 1, 2), QString(how_far));
    QCOMPARE(shop.cell(rows - 2, 1), QString());

    in<QLineEdit>(shop.page, "plan_marks")->setFocus();
    press(shop.page, Qt::Key_Tab);
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("plan_measured"));
    bool last = false;
    for (int measures = 0; !last && measures < 10; ++measures) {
      shop.measure(machine.read());
      QVERIFY2(shop.words().contains("Measured where it was cut: " +
                                     length_words(in_inches(*read_length(machine.read().toStdString())))),
               qPrintable(shop.words()));
      for (int i = 0; i < shop.lines()->rowCount(); ++i) {
        const auto turn = divisions(shop.cell(i, 2));
        if (!turn) break;
        QCOMPARE(i == 0, shop.cell(i, 4).startsWith("before"));
        machine.gap -= *turn / 128;
        machine.feed();
        last = shop.cell(i, 0).contains("Last");
      }
    }
    QVERIFY(last);
    QVERIFY2(std::abs(machine.board - 1) <= 0.001, qPrintable(QString::number(machine.board, 'f', 5)));
    QVERIFY(machine.deepest <= 0.125 + 1e-9);
    shop.measure("1.000");
    QVERIFY2(shop.words().contains("as asked. Nothing more comes off"), qPrintable(shop.words()));
    QVERIFY(!shop.lines()->isVisible());
  }

  void a_measure_is_read_as_people_type_it_and_one_that_cannot_be_is_refused() {
    Planning shop;
    shop.board("24", "1 1/2", "1");
    const int rows = shop.lines()->rowCount();
    for (const char* typed : {"1.469", "1 15/32", "37.3 mm", "1-15/32\""}) {
      shop.measure(typed);
      QVERIFY2(shop.words().contains("Passes left: 5."), qPrintable(shop.words()));
      // 0.469 in at 1/8 in a pass.
      QVERIFY2(shop.words().contains("is 4; no plan has fewer"), qPrintable(shop.words()));
      QCOMPARE(shop.lines()->rowCount(), 5);
      QCOMPARE(shop.cell(0, 2), QString("15 of 20 (0.75 turn)"));
      QCOMPARE(shop.cell(4, 2), QString(how_far));
      QVERIFY2(said(shop.page, "plan_title").contains("to 1 in, measured "),
               qPrintable(said(shop.page, "plan_title")));
    }
    shop.measure("1.502");
    QCOMPARE(shop.words(), QString("No plan. 1.502 in is thicker than the board was. Measure again, where it "
                                   "was cut and is thickest."));
    QVERIFY(!shop.lines()->isVisible());
    QVERIFY(!in<QWidget>(shop.page, "plan_print")->isEnabled());
    shop.measure("a hair");
    QVERIFY2(shop.words().startsWith("No plan. Measured where it was cut: "), qPrintable(shop.words()));
    shop.measure("0.98");
    QVERIFY2(shop.words().contains("0.98 in, thinner than the 1 in that was asked for"),
             qPrintable(shop.words()));
    in<QLineEdit>(shop.page, "plan_measured")->setFocus();
    press(shop.page, Qt::Key_A, Qt::ControlModifier);
    press(shop.page, Qt::Key_Delete);
    QCOMPARE(shop.lines()->rowCount(), rows);
    QCOMPARE(shop.cell(rows - 1, 2), QString(how_far));
  }

  void what_was_measured_of_one_board_says_nothing_of_another() {
    Planning shop;
    shop.board("24", "1 1/2", "1");
    shop.measure("1.469");
    fill(shop.page, {{"plan_final", "15/16"}, {"plan_marks", "0.01"}});
    QVERIFY2(shop.words().contains("Measured where it was cut: 1.469 in"), qPrintable(shop.words()));
    for (const char* size : {"plan_length", "plan_width", "plan_thickest", "plan_uneven"}) {
      shop.measure("1.469");
      in<QLineEdit>(shop.page, size)->setFocus();
      press(shop.page, Qt::Key_End);
      type(shop.page, " in");
      QCOMPARE(in<QLineEdit>(shop.page, "plan_measured")->text(), QString());
      QVERIFY2(shop.words().contains("at most"), qPrintable(shop.words()));
    }
    shop.measure("1.469");
    shop.choose_jointing();
    press(shop.page, Qt::Key_Down);
    QCOMPARE(in<QLineEdit>(shop.page, "plan_measured")->text(), QString());
  }

  void how_uneven_a_board_is_is_asked() {
    Planning shop;
    fill(shop.page,
         {{"plan_length", "24"}, {"plan_width", "6"}, {"plan_thickest", "1 1/2"}, {"plan_final", "1"}});
    QVERIFY2(shop.words().startsWith("Type the sizes"), qPrintable(shop.words()));
    fill(shop.page, {{"plan_uneven", "0"}});
    QVERIFY(shop.lines()->isVisible());
  }

  void what_was_typed_and_looked_at_is_not_the_next_ones() {
    Planning shop(planer_text, "jointer-planer/jointing");
    fill(shop.page,
         {{"plan_length", "24"}, {"plan_width", "6"}, {"plan_thickest", "1"}, {"plan_hollow", "1/8"}});
    shop.tick("plan_crown");
    QVERIFY(shop.lines()->isVisible());
    // The same one-on-one, looked at once more.
    press(shop.page, Qt::Key_Escape);
    press(shop.page, Qt::Key_T, Qt::ControlModifier);
    QCOMPARE(in<QLineEdit>(shop.page, "plan_hollow")->text(), QString("1/8"));
    QVERIFY(in<QCheckBox>(shop.page, "plan_crown")->isChecked());
    shop.plan_for("olga", "jointer-planer/jointing");
    for (const char* size : {"plan_length", "plan_width", "plan_thickest", "plan_hollow"})
      QVERIFY2(in<QLineEdit>(shop.page, size)->text().isEmpty(), size);
    QVERIFY(!in<QCheckBox>(shop.page, "plan_crown")->isChecked());
    QVERIFY2(shop.words().startsWith("Type the sizes"), qPrintable(shop.words()));
  }

  void a_change_of_board_joint_or_machine_is_looked_at_anew() {
    Planning shop;
    shop.choose_jointing();
    fill(shop.page,
         {{"plan_length", "24"}, {"plan_width", "6"}, {"plan_thickest", "1"}, {"plan_hollow", "1/8"}});
    for (const char* size : {"plan_length", "plan_width", "plan_thickest", "plan_hollow"}) {
      shop.tick("plan_crown"), shop.tick("plan_fence");
      in<QLineEdit>(shop.page, size)->setFocus();
      press(shop.page, Qt::Key_End);
      type(shop.page, " in");
      QVERIFY2(shop.ticks() == 0, size);
    }
    QVERIFY2(shop.words().contains("The crown is not up"), qPrintable(shop.words()));
    shop.tick("plan_crown"), shop.tick("plan_fence");
    in<QComboBox>(shop.page, "plan_joint")->setFocus();
    press(shop.page, Qt::Key_Down);
    QCOMPARE(shop.ticks(), 0);
    shop.tick("plan_crown"), shop.tick("plan_fence");
    in<QComboBox>(shop.page, "plan_machine")->setFocus();
    press(shop.page, Qt::Key_Down);
    press(shop.page, Qt::Key_Up);
    QCOMPARE(shop.ticks(), 0);
  }

  void a_machine_without_a_card_takes_no_other_machines() {
    Planning shop(planer_text, "lathe");
    QCOMPARE(in<QComboBox>(shop.page, "plan_machine")->currentIndex(), -1);
    QVERIFY2(shop.words().contains("has no limits card. A manager issues one on the page Machines."),
             qPrintable(shop.words()));
    QVERIFY(!in<QWidget>(shop.page, "plan_print")->isEnabled());
    QVERIFY(!shop.lines()->isVisible());
    // Issued meanwhile, it is there at once.
    issue(shop, "lathe", planer_text);
    QCOMPARE(in<QComboBox>(shop.page, "plan_machine")->currentIndex(), 2);
    QVERIFY2(shop.words().startsWith("Type the sizes"), qPrintable(shop.words()));
  }

  void without_a_one_on_one_the_machine_is_chosen() {
    Shown<CheckoutsPage> shop("mia");
    press(shop.page, Qt::Key_T, Qt::ControlModifier);
    QVERIFY2(said(shop.page, "plan_said").startsWith("No machine has a limits card yet"),
             qPrintable(said(shop.page, "plan_said")));
    issue(shop, "jointer-planer/planing", planer_text);
    QVERIFY2(said(shop.page, "plan_said").startsWith("Choose the machine"),
             qPrintable(said(shop.page, "plan_said")));
    in<QComboBox>(shop.page, "plan_machine")->setFocus();
    press(shop.page, Qt::Key_Down);
    QVERIFY2(said(shop.page, "plan_said").startsWith("Type the sizes"),
             qPrintable(said(shop.page, "plan_said")));
  }

  void a_narrow_edge_is_refused_with_what_would_help() {
    Planning shop;
    shop.choose_jointing();
    in<QComboBox>(shop.page, "plan_joint")->setFocus();
    press(shop.page, Qt::Key_Down);
    fill(shop.page,
         {{"plan_length", "24"}, {"plan_width", "1/2"}, {"plan_thickest", "1"}, {"plan_hollow", "1"}});
    shop.tick("plan_crown"), shop.tick("plan_fence");
    QVERIFY2(shop.words().startsWith("No plan. Nothing could be left of it, and the narrowest board that an "
                                     "edge may leave on this machine is 1/2 in. Joint the edge while"),
             qPrintable(shop.words()));
  }

  void the_drawing_parts_the_board_from_what_is_there_to_what_is_asked() {
    const PlanerCard card = *read_planer_card(planer_text);
    const Stock stock{inches(24), inches(6), inches(3, 2), inches(0), inches(1), inches(1, 1000)};
    const PlanPicture before = picture_of(*plan_passes(card, stock), stock);
    const PlanPicture after =
        picture_of(*passes_left(card, stock, inches(1469, 1000)), stock, inches(1469, 1000));
    QCOMPARE(before.rough, 1.5);
    QCOMPARE(after.rough, 1.469);
    for (const PlanPicture* picture : {&before, &after}) {
      double above = picture->rough;
      for (const PlanPicture::Cut& cut : picture->cuts) {
        if (!cut.takes) continue;
        QVERIFY(std::abs(cut.top - above) < 1e-9);
        QVERIFY(cut.bottom < cut.top);
        above = cut.bottom;
      }
      QVERIFY(std::abs(above - 1) < 1e-9);
    }
    // No size stands beside what goes by a measure.
    QCOMPARE(before.cuts[before.cuts.size() - 2].setting, QString());
    QCOMPARE(after.cuts[0].setting, QString("1.352 in"));
  }

  void stock_too_short_is_refused_with_what_would_help() {
    Planning shop;
    shop.board("5", "1 1/2", "1");
    const QString words = said(shop.page, "plan_said");
    QVERIFY2(words.contains("No plan. Stock 5 in long is too short: the maker allows 6 in or more"),
             qPrintable(words));
    QVERIFY2(words.contains("Take longer stock and cut it to length afterwards"), qPrintable(words));
    QVERIFY(!shop.lines()->isVisible());
    QVERIFY(!in<QWidget>(shop.page, "plan_print")->isEnabled());
    shop.board("6", "1 1/2", "1");
    QVERIFY(shop.lines()->isVisible());
    shop.board("6 furlongs", "1 1/2", "1");
    QVERIFY2(said(shop.page, "plan_said").startsWith("No plan. Length: "),
             qPrintable(said(shop.page, "plan_said")));
  }

  void a_card_without_the_makers_shortest_makes_no_plan() {
    Planning shop;
    QString text(planer_text);
    text.remove(R"("shortest": "6 in", )");
    issue(shop, "jointer-planer/planing", qPrintable(text), 2);
    shop.board("24", "1 1/2", "1");
    const QString words = said(shop.page, "plan_said");
    QVERIFY2(words.contains("The shortest length that the maker allows is missing"), qPrintable(words));
    QVERIFY2(said(shop.page, "plan_card").contains("missing: no plan is made without it"),
             qPrintable(said(shop.page, "plan_card")));
  }

  void a_face_is_jointed_crown_up_and_an_edge_with_the_fence_tried() {
    Planning shop;
    shop.choose_jointing();
    QVERIFY(!in<QLineEdit>(shop.page, "plan_final")->isVisible());
    QVERIFY(!in<QLineEdit>(shop.page, "plan_measured")->isVisible());
    fill(shop.page,
         {{"plan_length", "24"}, {"plan_width", "6"}, {"plan_thickest", "1"}, {"plan_hollow", "1/8"}});
    QVERIFY2(said(shop.page, "plan_said").contains("The crown is not up"),
             qPrintable(said(shop.page, "plan_said")));
    shop.tick("plan_crown");
    QVERIFY2(said(shop.page, "plan_said").contains("is 1; no plan has fewer"),
             qPrintable(said(shop.page, "plan_said")));
    QVERIFY(shop.lines()->isColumnHidden(2));
    in<QComboBox>(shop.page, "plan_joint")->setFocus();
    press(shop.page, Qt::Key_Down);
    shop.tick("plan_crown");
    QVERIFY2(said(shop.page, "plan_said").contains("90 degrees"), qPrintable(said(shop.page, "plan_said")));
    shop.tick("plan_fence");
    QVERIFY(shop.lines()->isVisible());
  }

  void a_plan_on_paper_is_noted_and_says_the_same() {
    Planning shop;
    shop.board("24", "1 1/2", "1");
    shop.page.findChild<PlanView*>()->save_pdf(shop.file("plan.pdf"));
    QFile pdf(shop.file("plan.pdf"));
    QVERIFY(pdf.open(QFile::ReadOnly));
    QVERIFY(pdf.readAll().startsWith("%PDF"));
    const auto* printed = db::as<db::Printed>(shop.session().store().entries().back().fact);
    QVERIFY(printed);
    QVERIFY(QString::fromStdString(printed->title).contains("1 1/2 in to 1 in"));
    shop.measure("1.469");
    shop.page.findChild<PlanView*>()->save_pdf(shop.file("rest.pdf"));
    printed = db::as<db::Printed>(shop.session().store().entries().back().fact);
    QVERIFY(printed &&
            QString::fromStdString(printed->title).contains("1 1/2 in to 1 in, measured 1.469 in"));
  }

  void a_paper_is_black_on_white_whatever_the_screens_colours() {
    apply_theme(*qApp, Shade::dark);
    Planning shop;
    shop.board("24", "1 1/2", "1");
    const auto plan = shown_plan(*card_of(shop.session(), "jointer-planer/planing"),
                                 {"24", "6", "1 1/2", "0", "1", "0.001", {}, Joint::face, false, false});
    QVERIFY(plan);
    const PlanPaper paper = plan_paper(*plan, "Hollow Oak Workshop", {}, PaperSize::letter);
    const QRectF body = paper_body(paper.text);
    QImage image(body.size().toSize() / 8, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(0.125, 0.125);
    painter.translate(-body.topLeft());
    paper.draw(painter, body, 0);
    painter.end();
    int dark = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width() / 2; ++x) dark += qGray(image.pixel(x, y)) < 80;
    QVERIFY2(dark > 500, qPrintable(QString::number(dark)));
  }

  void metric_sizes_are_typed_as_a_metric_shop_types_them() {
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    Planning shop;
    fill(shop.page, {{"plan_length", "600"},
                     {"plan_width", "150"},
                     {"plan_thickest", "38,1"},
                     {"plan_final", "25,4"},
                     {"plan_uneven", "0"},
                     {"plan_marks", "0,05"}});
    QVERIFY2(said(shop.page, "plan_said").contains(": 1/2 in to come off"),
             qPrintable(said(shop.page, "plan_said")));
  }

  void a_manager_writes_a_card_and_is_told_what_is_wrong_in_it() {
    Shown<MachinesPage> shop("mia");
    type(shop.page, "combination");
    press(shop.page, Qt::Key_K, Qt::ControlModifier);
    in<QComboBox>(shop.page, "card_kind")->setFocus();
    press(shop.page, Qt::Key_End);
    fill(shop.page, {{"card_depths", "6 in: 1/8 in; 12 in: 3/16 in"},
                     {"card_shortest", "12"},
                     {"card_thinnest", "1/2"},
                     {"card_light", "1/16"},
                     {"card_marks", "a hair"},
                     {"card_error", "1/64"},
                     {"card_narrowest", "3/4"},
                     {"card_changed", "Manual, page 14"}});
    QVERIFY(!in<QLineEdit>(shop.page, "card_turn")->isEnabled());
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(said(shop.page, "problem").startsWith("Scale marks apart: "),
             qPrintable(said(shop.page, "problem")));
    fill(shop.page, {{"card_marks", "1/64"}});
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(said(shop.page, "problem").contains("wider stock may be cut deeper"),
             qPrintable(said(shop.page, "problem")));
    fill(shop.page, {{"card_depths", "6 in"}});
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(said(shop.page, "problem").contains("with a colon between"),
             qPrintable(said(shop.page, "problem")));
    fill(shop.page, {{"card_depths", "6 in: 1/8 in; 12 in: 1/16 in"}});
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    const auto card = card_of(shop.session(), "jointer-planer/jointing");
    QVERIFY(card);
    QCOMPARE(card->revision, 1);
    QCOMPARE(card->changed, QString("Manual, page 14"));
    QVERIFY(std::holds_alternative<JointerCard>(card->card));
    QVERIFY(limits_of(card->card).shortest == inches(12));
    QVERIFY(std::get<JointerCard>(card->card).narrowest == inches(3, 4));
    const QString seen = seen_on(shop.page);
    for (const char* words : {"1/8 in up to 6 in wide; 1/16 in up to 12 in wide", "12 in", "Manual, page 14",
                              "As the maker's manual says", "Revision 1"})
      QVERIFY2(seen.contains(words), words);
  }

  void a_card_is_changed_from_what_it_says_and_the_next_revision_issued() {
    Shown<MachinesPage> shop("mia");
    issue(shop, "jointer-planer/jointing", jointer_text);
    type(shop.page, "combination");
    press(shop.page, Qt::Key_K, Qt::ControlModifier);
    QCOMPARE(in<QLineEdit>(shop.page, "card_depths")->text(), QString("6 in: 1/8 in"));
    fill(shop.page, {{"card_shortest", ""}});
    in<QLineEdit>(shop.page, "card_shortest")->clear();
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    const auto card = card_of(shop.session(), "jointer-planer/jointing");
    QVERIFY(card);
    QCOMPARE(card->revision, 2);
    QVERIFY(!limits_of(card->card).shortest);
    QVERIFY(limits_of(card->card).light == inches(1, 16));
    // As it was known before the second revision.
    const Instant before = shop.session().now();
    QVERIFY(seen_on(shop.page).contains("missing: no plan is made without it"));
    shop.wait(60);
    issue(shop, "jointer-planer/jointing", jointer_text, 3);
    shop.session().set_known(before);
    QCOMPARE(card_of(shop.session(), "jointer-planer/jointing")->revision, 2);
  }

  void the_desk_reads_a_card_and_changes_none() {
    Shown<MachinesPage> shop("mia");
    issue(shop, "jointer-planer/planing", planer_text);
    shop.session().hand_over();
    shop.sit("dee");
    type(shop.page, "combination");
    const QString seen = seen_on(shop.page);
    QVERIFY(seen.contains("5/32 in a turn, 20 divisions"));
    QVERIFY(!seen.contains("jointing"));
    QVERIFY(!in<QWidget>(shop.page, "card"));
  }
};

}  // namespace passes_test

WM_PAGE_TEST(passes_test, PassesTest)
#include "passes_test.moc"
