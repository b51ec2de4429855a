// Figures by keyboard on the demo shop: the two questions that something is wrong with come first, and what
// can't be worked out is said in words.
#include "app/figures/agreed_words.h"
#include "app/figures/figures_csv.h"
#include "app/figures/figures_page.h"

#include <QProcess>

#include "app/figures/figure_words.h"
#include "app/figures/question_card.h"
#include "db/journal/subject.h"
#include "demo_shop.h"
#include "evening.h"
#include "lists_shop.h"
#include "page_test.h"

namespace figures_test {

using namespace wm;
using namespace wm::app;

namespace {

/// The page as the window shows it, once its figures have been worked out.
struct ShownFigures {
  Session& session;
  FiguresPage page{session};
  explicit ShownFigures(Session& shop) : session(shop) {
    QObject::connect(&session, &Session::changed, &page, &Page::refresh);
    QObject::connect(&session, &Session::seated_changed, &page, &Page::refresh);
    page.resize(1200, 800);
    page.show();
    wait_for([this] {
      page.refresh();
      page.open({});
    });
  }
  void wait_for(const std::function<void()>& act) {
    QSignalSpy done(&page, &FiguresPage::worked_out);
    act();
    QVERIFY(done.count() > 0 || done.wait(20000));
  }
  QStringList cards() const {
    QStringList names;
    for (const QuestionCard* card : page.findChild<QScrollArea*>("figures")->findChildren<QuestionCard*>())
      names << card->objectName();
    return names;
  }
};

/// What Python's csv reader makes of a file, as JSON: a list of rows.
QString read_by_python(const QString& path) {
  QProcess python;
  python.start("python3", {"-c",
                           "import csv,sys,json\n"
                           "rows=list(csv.reader(open(sys.argv[1],encoding='utf-8-sig',newline='')))\n"
                           "print(json.dumps(rows))",
                           path});
  python.waitForFinished();
  return QString::fromUtf8(python.readAllStandardOutput());
}

}  // namespace

class FiguresTest : public QObject {
  Q_OBJECT
  std::unique_ptr<Session> demo_;

 private slots:
  void initTestCase() {
    apply_theme(*qApp, Shade::light);
    demo_ = demo_session();
    QVERIFY(demo_ && demo_->seated());
  }

  void the_two_questions_that_are_wrong_come_first_in_words() {
    ShownFigures shown(*demo_);
    QCOMPARE(shown.cards(), QStringList({"question_fine-dust", "question_blade-height"}));
    const QString seen = seen_on(shown.page);
    QVERIFY2(seen.contains("The best members get this wrong more often than the weakest."), qPrintable(seen));
    QVERIFY(seen.contains("Fewer get this right than would by guessing: "));
    QVERIFY(seen.contains("Which dust is the worst for your lungs?"));
    QVERIFY(seen.contains("The dust that you can smell, from resinous or tropical wood"));
  }

  void a_quiz_is_chosen_by_arrow_and_shows_all_of_its_questions() {
    ShownFigures shown(*demo_);
    auto* list = shown.page.findChild<ListView*>("list");
    QCOMPARE(list->rows().size(), std::size_t(6));  // assessors last
    press(shown.page, Qt::Key_Down);
    QCOMPARE(list->chosen(), QString("tier 1"));
    press(shown.page, Qt::Key_Down);
    QCOMPARE(list->chosen(), QString("tier 2"));
    const QString seen = seen_on(shown.page);
    QVERIFY2(seen.contains("Revision 2"), qPrintable(seen));
    // Papers are drawn, so KR-20 has no number anywhere, and it is said why.
    QVERIFY(seen.contains("drawn papers"));
    QVERIFY(seen.contains("this figure needs everybody to have been asked the same questions."));
    QVERIFY(shown.cards().contains("question_whose-padlock"));
    QVERIFY(shown.cards().size() > 28);
    QCOMPARE(shown.page.findChildren<QGraphicsView*>().size(), 2);
  }

  void how_far_assessors_agree_is_told_by_number_only_where_there_is_one() {
    ShownFigures shown(*demo_);
    auto* list = shown.page.findChild<ListView*>("list");
    list->choose("assessors");
    QCOMPARE(list->chosen(), QString("assessors"));
    QVERIFY2(seen_on(shown.page).contains("No performance has been marked by two assessors here"),
             qPrintable(seen_on(shown.page)));
    Agreed agreed;
    agreed.things = 20;
    agreed.alike = 15;
    stats::Kappa kappa;
    kappa.kappa = 0.583;
    kappa.interval = stats::Interval{0.2, 0.9};
    agreed.kappa = kappa;
    QCOMPARE(agreed_sentence(agreed), QString("Marked alike: 15 of 20. They agree moderately beyond chance "
                                              "(kappa 0.58; 0.20 to 0.90)."));
    kappa.interval = stats::Interval{-0.2, 1};
    agreed.kappa = kappa;
    QVERIFY2(agreed_sentence(agreed).contains("They may agree no better than chance (kappa 0.58; "),
             qPrintable(agreed_sentence(agreed)));
    kappa.kappa = -0.1;
    agreed.kappa = kappa;
    QVERIFY(agreed_sentence(agreed).contains("They agree no better than chance (kappa "));
    agreed.things = 9;
    agreed.alike = 7;
    QVERIFY(agreed_sentence(agreed).startsWith("Marked alike: 7 of 9. That is too few"));
    QVERIFY(!agreed_sentence(agreed).contains("kappa"));
    agreed.kappa = tl::unexpected(stats::NoKappa::chance_is_all);
    QVERIFY(agreed_sentence(agreed).contains("Chance would do that too"));
  }

  void sheets_that_two_marked_show_their_worst_lines_first() {
    evening::Shop shop;
    shop.sit_down("odile", "8642");
    shop.enter(db::EnterFact{Appoint{"odile", Everything{}, true, day_of({2027, 12, 31})}});
    for (int i = 0; i < 12; ++i) {
      shop.clock = shop.clock + 60;
      shop.sit_down("mara", "2468");
      db::SignCheckout sign;
      sign.checkout = {i % 2 ? "tola" : "jonas", "jointer-planer", 4, Outcome::failed, "mara"};
      sign.pin = "2468";
      sign.machine = "jp1";
      sign.sheet = "jointer-planer";
      sign.sheet_revision = 4;
      sign.marks = {Mark::shown, i % 3 ? Mark::shown : Mark::not_shown, Mark::shown};
      shop.enter(sign);
      const RecordId checkout =
          db::as<db::SheetMarks>(shop.session->store().of_kind("marks").back()->fact)->checkout;
      shop.sit_down("odile", "8642");
      shop.enter(db::ScoreApart{
          {checkout,
           "odile",
           "jointer-planer",
           4,
           {Mark::shown, i % 3 ? Mark::shown : Mark::not_shown, i % 2 ? Mark::shown : Mark::not_shown}},
          "8642"});
    }
    ShownFigures shown(*shop.session);
    auto* list = shown.page.findChild<ListView*>("list");
    list->choose("assessors");
    const QString seen = seen_on(shown.page);
    QVERIFY2(seen.contains("sheet revision 4. Performances: 12. Assessors of each: 2."), qPrintable(seen));
    QVERIFY2(seen.contains("Marked alike: 30 of 36."), qPrintable(seen));
    const auto third = seen.indexOf("Line 3"), first = seen.indexOf("Line 1"),
               second = seen.indexOf("Line 2");
    QVERIFY2(third >= 0 && third < first && third < second, qPrintable(seen));
    QVERIFY2(seen.contains("Marked alike: 6 of 12. They agree no better than chance (kappa 0.00"),
             qPrintable(seen));
  }

  void a_quiz_that_was_struck_out_or_entered_later_is_left_out() {
    ShownFigures shown(*demo_);
    const auto attempts = [&shown] { return shown.page.findChild<QLabel*>("summary")->text(); };
    const QString now = attempts();
    const db::Entry* early = nullptr;
    for (const db::Entry& entry : demo_->store().entries())
      if (!early && db::as<db::AttemptSat>(entry.fact)) early = &entry;
    shown.wait_for([&] { demo_->set_known(early->recorded + 86400); });
    QVERIFY2(attempts() != now, qPrintable(attempts()));
    QVERIFY2(seen_on(shown.page).contains("No question stands out."), qPrintable(seen_on(shown.page)));
    shown.wait_for([this] { demo_->set_known({}); });
    QCOMPARE(attempts(), now);
    const auto number = [](const QString& words) {
      return QRegularExpression("\\d+").match(words).captured().toInt();
    };
    const RecordId quiz = db::as<db::AttemptSat>(early->fact)->quiz;
    shown.wait_for([&] { QVERIFY(demo_->commit(db::StrikeOutRecord{quiz, "another person's"})); });
    QCOMPARE(number(attempts()), number(now) - 1);
  }

  void nobody_but_instructors_and_managers_sees_the_answers() {
    auto nobody = demo_session(false);
    FiguresPage page(*nobody);
    page.show();
    page.refresh();
    QVERIFY(seen_on(page).contains("They open for instructors and managers."));
    QVERIFY(!page.findChild<QPushButton*>("csv")->isEnabled());
    QCOMPARE(page.findChild<ListView*>("list")->rows().size(), std::size_t(0));
  }

  void the_table_is_read_back_by_another_reader() {
    ShownFigures shown(*demo_);
    QTemporaryDir folder;
    const QString path = folder.filePath("figures.csv");
    QSignalSpy told(&shown.page, &Page::tell);
    shown.page.save_csv(path);
    QCOMPARE(told.count(), 1);
    const QJsonArray rows = QJsonDocument::fromJson(read_by_python(path).toUtf8()).array();
    const QJsonArray titles = rows.first().toArray();
    QVERIFY(rows.size() > 300);
    const auto at = [&titles](const QJsonArray& row, const char* title) {
      for (qsizetype i = 0; i < titles.size(); ++i)
        if (titles[i].toString() == title) return row[i].toString();
      return QString("no such column");
    };
    int groups = 0, dust = 0;
    for (const QJsonValue& each : rows) {
      const QJsonArray row = each.toArray();
      QCOMPARE(row.size(), titles.size());
      groups += at(row, "kind") == "group" ? 1 : 0;
      if (at(row, "question") != "fine-dust" || at(row, "kind") != "choice") continue;
      ++dust;
      if (at(row, "choice") == "3")
        QCOMPARE(at(row, "words"), QString("The dust that you can smell, from resinous or tropical wood"));
      QCOMPARE(at(row, "right_choice"), at(row, "choice") == "2" ? QString("yes") : QString("no"));
    }
    QCOMPARE(dust, 4);
    QVERIFY(groups > 20);
    for (const QJsonValue& each : rows)
      if (at(each.toArray(), "quiz") == "tier 2" && at(each.toArray(), "kind") == "group")
        QVERIFY(at(each.toArray(), "kr20").isEmpty() && !at(each.toArray(), "missing").isEmpty());
  }

  void how_far_assessors_agree_is_in_the_table_too() {
    // Eleven performances: nine alike, two apart; and three of another sheet, too few for a number.
    std::vector<MarkedTwice> marked;
    for (int i = 0; i < 11; ++i) {
      const Mark second = i < 2 ? Mark::not_shown : i < 6 ? Mark::shown_when_asked : Mark::shown;
      const Mark first = i < 2 ? Mark::shown : second;
      marked.push_back({"jointer-planer", 1, {{first, Mark::shown}, {second, Mark::shown}}});
    }
    for (int i = 0; i < 3; ++i)
      marked.push_back({"bandsaw", 2, {{Mark::shown}, {i == 0 ? Mark::not_shown : Mark::shown}}});
    const std::vector<SheetAgreed> agreed = sheets_agreed(marked);
    QTemporaryDir folder;
    const QString path = folder.filePath("agreed.csv");
    QVERIFY(write_figures_csv({}, agreed, path));
    const QJsonArray rows = QJsonDocument::fromJson(read_by_python(path).toUtf8()).array();
    const QJsonArray titles = rows.first().toArray();
    const auto at = [&titles](const QJsonArray& row, const char* title) {
      for (qsizetype i = 0; i < titles.size(); ++i)
        if (titles[i].toString() == title) return row[i].toString();
      return QString("no such column");
    };
    const auto row_of = [&](const char* kind, const char* sheet, const char* line) {
      for (const QJsonValue& each : rows)
        if (const QJsonArray row = each.toArray();
            at(row, "kind") == kind && at(row, "sheet") == sheet && at(row, "line") == line)
          return row;
      return QJsonArray();
    };
    QCOMPARE(rows.size(), 1 + 3 + 2);
    const QJsonArray first_line = row_of("assessors_line", "jointer-planer", "1");
    QCOMPARE(at(first_line, "revision"), QString("1"));
    QCOMPARE(at(first_line, "performances"), QString("11"));
    QCOMPARE(at(first_line, "assessors"), QString("2"));
    QCOMPARE(at(first_line, "marked"), QString("11"));
    QCOMPARE(at(first_line, "alike"), QString("9"));
    // By hand, with linear weights: observed 9/11; first 7,4,0 and second 5,4,2 of 11, so expected
    // (7*5 + 4*4 + (7*4 + 4*5 + 4*2)/2) / 121 = 79/121; kappa (99 - 79)/(121 - 79) = 10/21.
    QVERIFY(qAbs(at(first_line, "kappa").toDouble() - 10.0 / 21) < 1e-12);
    QVERIFY(at(first_line, "kappa_low").toDouble() < 10.0 / 21);
    QVERIFY(at(first_line, "kappa_high").toDouble() > 10.0 / 21);
    QVERIFY(at(first_line, "missing").isEmpty());
    // All alike with one mark is no agreement beyond chance, and three are too few: no number, and why.
    for (const QJsonArray& none :
         {row_of("assessors_line", "jointer-planer", "2"), row_of("assessors_line", "bandsaw", "1"),
          row_of("assessors", "bandsaw", "")}) {
      QVERIFY(!at(none, "alike").isEmpty());
      QVERIFY(at(none, "kappa").isEmpty() && at(none, "kappa_low").isEmpty());
      QVERIFY2(at(none, "missing").startsWith("kappa: "), qPrintable(at(none, "missing")));
    }
    QCOMPARE(at(row_of("assessors", "jointer-planer", ""), "marked"), QString("22"));
  }

  void a_paper_of_the_figures_is_saved_and_noted() {
    ShownFigures shown(*demo_);
    QTemporaryDir folder;
    QSignalSpy told(&shown.page, &Page::tell), problems(&shown.page, &Page::tell_problem);
    shown.page.save_pdf(folder.filePath("figures.pdf"));
    QCOMPARE(problems.count(), 0);
    QCOMPARE(told.count(), 1);
    const auto* printed = db::as<db::Printed>(demo_->store().entries().back().fact);
    QVERIFY(printed && printed->title == "Figures of the quizzes");
    QVERIFY(QFile(folder.filePath("figures.pdf")).size() > 10000);
  }

  void a_shop_without_banks_or_attempts_says_so() {
    Shown<FiguresPage> shop("mia");
    QTRY_VERIFY(seen_on(shop.page).contains("No question bank has been issued yet."));
  }

  void what_cannot_be_worked_out_is_never_a_number() {
    for (const auto why :
         {teach::NoFigure::nobody, teach::NoFigure::one_person, teach::NoFigure::one_question,
          teach::NoFigure::all_alike, teach::NoFigure::other_questions, teach::NoFigure::other_lengths}) {
      const QString cell = figure_cell(tl::unexpected(why));
      QVERIFY2(!cell.contains(QRegularExpression("[0-9]")) && !cell.isEmpty(), qPrintable(cell));
      QVERIFY(no_figure_sentence(why).toLower().startsWith(cell));
    }
    QCOMPARE(figure_cell(-0.394), QString::fromUtf8("\u22120.39"));
    QCOMPARE(figure_cell(-0.001), QString("0.00"));
    QCOMPARE(share_with_interval(0, 0), QString("nobody"));
    QCOMPARE(share_words(218, 219), QString("over 99 %"));
    QCOMPARE(share_words(1, 219), QString("under 1 %"));
    QCOMPARE(share_words(219, 219), QString("100 %"));
    QCOMPARE(share_words(0, 219), QString("0 %"));
    // Newcombe 1998, table I: 15 of 148 is 0.1013, by Wilson 0.0624 to 0.1605.
    QCOMPARE(share_with_interval(15, 148), QString("10 % (6 to 16 %)"));
  }
};

}  // namespace figures_test

WM_PAGE_TEST(figures_test, FiguresTest)
#include "figures_test.moc"
