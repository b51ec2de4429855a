// The roster on the screen and on paper. The paper is judged by what pdftotext (Poppler) takes out of it.
#include <QProcess>
#include <QRegularExpression>
#include <map>

#include "app/rosters/roster_paper.h"
#include "app/rosters/rosters_page.h"
#include "lists_shop.h"

using namespace wm;
using namespace wm::app;

namespace {

struct Word {
  int page;
  QRectF box;
  QString text;
};

QString run_pdftotext(const QStringList& arguments) {
  QProcess process;
  process.start("pdftotext", arguments);
  if (!process.waitForFinished()) qFatal("pdftotext is missing: install poppler-utils");
  return QString::fromUtf8(process.readAllStandardOutput());
}

std::vector<Word> words_of(const QString& pdf, QSizeF* size = nullptr) {
  static const QRegularExpression page(R"re(<page width="([\d.]+)" height="([\d.]+)">)re");
  static const QRegularExpression word(
      R"re(<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*)</word>)re");
  std::vector<Word> words;
  int number = -1;
  for (const QString& line : run_pdftotext({"-bbox", pdf, "-"}).split('\n')) {
    if (const auto found = page.match(line); found.hasMatch()) {
      ++number;
      if (size) *size = {found.captured(1).toDouble(), found.captured(2).toDouble()};
    }
    const auto found = word.match(line);
    if (!found.hasMatch()) continue;
    const auto at = [&found](int i) { return found.captured(i).toDouble(); };
    words.push_back({number, QRectF(QPointF(at(1), at(2)), QPointF(at(3), at(4))), found.captured(5)});
  }
  return words;
}

}  // namespace

class RostersTest : public QObject {
  Q_OBJECT
 private slots:
  void people_of_every_script_are_on_the_paper_in_real_letters() {
    ListsShop shop;
    const QString pdf = shop.file("roster.pdf");
    QVERIFY(write_roster_pdf(shop.session(), {}, pdf, PaperSize::letter));
    const QString text = run_pdftotext({"-layout", pdf, "-"}).normalized(QString::NormalizationForm_C);
    // "Griffith" has a ligature in many typefaces.
    for (const char* name : {"Castellanos, Inés", "Griffith, Dee", "Иванова, Ольга", "Żółkiewski, Łukasz",
                             "Nguyễn, Thị Hương", "Παπαδοπούλου, Ελένη"})
      QVERIFY2(text.contains(QString::fromUtf8(name)), name);
    QVERIFY(text.contains("Hollow Oak Workshop"));
    QVERIFY(text.contains("Rulebook 1."));
    QVERIFY(text.contains("As known on Saturday 14 March 2026"));
    QVERIFY(text.contains("Page 1 of "));
    QCOMPARE(text.count("does not make"), text.count("Page "));
  }

  void no_word_on_the_paper_is_cut_or_runs_into_another() {
    ListsShop shop;
    for (const PaperSize size : {PaperSize::letter, PaperSize::a4}) {
      const QString pdf = shop.file("roster.pdf");
      QVERIFY(write_roster_pdf(shop.session(), {std::nullopt, true}, pdf, size));
      QSizeF paper;
      const std::vector<Word> words = words_of(pdf, &paper);
      QVERIFY(words.size() > 100);
      // ISO 216 A4 is 210 x 297 mm, US Letter 8.5 x 11 in (ANSI/ASME Y14.1, size A).
      QCOMPARE(qRound(paper.width()), size == PaperSize::letter ? 792 : 842);
      for (std::size_t i = 0; i < words.size(); ++i) {
        QVERIFY2(QRectF(QPointF(35, 35), paper - QSizeF(70, 70)).contains(words[i].box),
                 qPrintable(words[i].text));
        for (std::size_t j = i + 1; j < words.size(); ++j)
          if (words[i].page == words[j].page)
            QVERIFY2(!words[i]
                          .box.adjusted(0.4, 0.8, -0.4, -0.8)
                          .intersects(words[j].box.adjusted(0.4, 0.8, -0.4, -0.8)),
                     qPrintable(words[i].text + " / " + words[j].text));
      }
    }
  }

  void every_page_repeats_its_column_heads() {
    ListsShop shop;
    const QString pdf = shop.file("roster.pdf");
    const auto pages = write_roster_pdf(shop.session(), {std::nullopt, true}, pdf, PaperSize::letter);
    QVERIFY(pages);
    QVERIFY(*pages > 1);
    std::map<int, int> heads, titles;
    for (const Word& word : words_of(pdf)) {
      heads[word.page] += word.text == "Tier" && word.box.top() > 60;
      titles[word.page] += word.text == "Who";
    }
    for (int page = 0; page < *pages; ++page) {
      QVERIFY(heads[page] >= 1);
      QCOMPARE(titles[page], 1);
    }
  }

  void the_table_says_what_the_engine_says() {
    ListsShop shop;
    const RosterTable table = roster_table(shop.session(), {std::nullopt, true});
    QCOMPARE(table.rows.size(), std::size_t(8));
    Decider decider(shop.session().store().shop());
    for (const RosterRow& row : table.rows)
      for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const TargetName& target = table.columns[i].target;
        QCOMPARE(row.cells[i].rung, decider.rung(row.person, target, table.at));
        QCOMPARE(row.cells[i].assesses, decider.able_to_assess(row.person, target, table.at));
      }
  }

  void a_check_out_in_its_grace_is_overdue_and_a_birthday_is_not_told() {
    ListsShop shop;
    const RosterTable table = roster_table(shop.session(), {});
    const auto cell = [&table](const PersonId& person, const TargetName& target) {
      const auto row = std::ranges::find(table.rows, person, &RosterRow::person);
      const auto column = std::ranges::find(table.columns, target, &RosterColumn::target);
      return row->cells[static_cast<std::size_t>(column - table.columns.begin())];
    };
    const RosterCell ines = cell("ines", "bandsaw");
    QVERIFY(ines.overdue);
    QVERIFY(cell_detail(ines, table.zone, table.at).startsWith("overdue, "));
    QVERIFY(!cell("olga", "bandsaw").overdue);
    const RosterCell minor = cell("luk", "jointer-planer/jointing");
    QCOMPARE(minor.rung, Rung::supervised);
    QVERIFY(!minor.until);
  }

  void a_tier_is_left_out_by_one_key_and_the_paper_follows() {
    ListsShop shop;
    RostersPage page(shop.session());
    shop.show(page);
    QCoreApplication::processEvents();
    auto* grid = page.findChild<RosterGrid*>("roster");
    const int all = grid->model()->columnCount();
    QVERIFY(QApplication::focusWidget());
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("tier_1"));
    press(page, Qt::Key_Space);
    QCOMPARE(grid->model()->columnCount(), all - 3);
    page.save_pdf(shop.file("two.pdf"));
    QVERIFY(!run_pdftotext({shop.file("two.pdf"), "-"}).contains("Hand tools"));
  }

  void a_pdf_that_cannot_be_written_is_told_and_nothing_is_left() {
    ListsShop shop;
    RostersPage page(shop.session());
    shop.show(page);
    QSignalSpy told(&page, &Page::tell_problem);
    page.save_pdf(shop.file("no/such/folder/roster.pdf"));
    QCOMPARE(told.count(), 1);
  }

  void letter_is_north_american_and_the_rest_prints_on_a4() {
    QCOMPARE(usual_paper(QLocale(QLocale::English, QLocale::UnitedStates)), PaperSize::letter);
    QCOMPARE(usual_paper(QLocale(QLocale::French, QLocale::Canada)), PaperSize::letter);
    QCOMPARE(usual_paper(QLocale(QLocale::English, QLocale::UnitedKingdom)), PaperSize::a4);
    QCOMPARE(usual_paper(QLocale(QLocale::German, QLocale::Germany)), PaperSize::a4);
  }
};

QTEST_MAIN(RostersTest)
#include "rosters_test.moc"
