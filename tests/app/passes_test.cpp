// Limits cards on Machines, and pass plans on Check-outs, by keyboard.
#include "app/passes/card_words.h"

#include "app/checkouts/checkouts_page.h"
#include "app/machines/machines_page.h"
#include "app/passes/plan_view.h"
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

/// A page of Check-outs with its plan open, of a shop whose combination has both cards.
struct Planning : Shown<CheckoutsPage> {
  Planning() : Shown<CheckoutsPage>("mia") {
    issue(*this, "jointer-planer/jointing", jointer_text);
    issue(*this, "jointer-planer/planing", planer_text);
    press(page, Qt::Key_T, Qt::ControlModifier);
  }
  void board(const char* length, const char* thickest, const char* final) {
    fill(page,
         {{"plan_length", length}, {"plan_width", "6"}, {"plan_thickest", thickest}, {"plan_final", final}});
  }
  QTableWidget* lines() { return in<QTableWidget>(page, "plan_lines"); }
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
      QCOMPARE(shop.lines()->item(row, 2)->text().contains("turn"), pass.kind != PassKind::by_scale);
    }
    QCOMPARE(shop.lines()->item(shop.lines()->rowCount() - 1, 1)->text(), QString("1 in"));
    // Tied by the caliper, and shown no finer than it reads.
    QCOMPARE(shop.lines()->item(shop.lines()->rowCount() - 2, 1)->text(), QString("1.024 in"));
    QVERIFY(said(shop.page, "plan_cautions").contains("maker's manual"));
    QVERIFY(in<QWidget>(shop.page, "plan_drawing")->isVisible());
    press(shop.page, Qt::Key_Escape);
    QVERIFY(!in<QWidget>(shop.page, "plan_title")->isVisible());
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
    in<QComboBox>(shop.page, "plan_machine")->setFocus();
    press(shop.page, Qt::Key_Up);
    QCOMPARE(in<QComboBox>(shop.page, "plan_machine")->currentText(), QString("Jointer/planer, jointing"));
    QVERIFY(!in<QLineEdit>(shop.page, "plan_final")->isVisible());
    fill(shop.page,
         {{"plan_length", "24"}, {"plan_width", "6"}, {"plan_thickest", "1"}, {"plan_hollow", "1/8"}});
    QVERIFY2(said(shop.page, "plan_said").contains("The crown is not up"),
             qPrintable(said(shop.page, "plan_said")));
    in<QCheckBox>(shop.page, "plan_crown")->setFocus();
    press(shop.page, Qt::Key_Space);
    QVERIFY2(said(shop.page, "plan_said").contains("is 1; no plan has fewer"),
             qPrintable(said(shop.page, "plan_said")));
    QVERIFY(shop.lines()->isColumnHidden(2));
    in<QComboBox>(shop.page, "plan_joint")->setFocus();
    press(shop.page, Qt::Key_Down);
    QVERIFY2(said(shop.page, "plan_said").contains("90 degrees"), qPrintable(said(shop.page, "plan_said")));
    in<QCheckBox>(shop.page, "plan_fence")->setFocus();
    press(shop.page, Qt::Key_Space);
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
