// The roster on the screen and on paper. The paper is judged by what pdftotext (Poppler) takes out of it.
#include <QProcess>
#include <QRegularExpression>
#include <map>
#include <set>

#include "app/print/printed.h"
#include "app/rosters/door_layout.h"
#include "app/rosters/roster_paper.h"
#include "app/rosters/rosters_page.h"
#include "app/rosters/wall_card.h"
#include "db/journal/subject.h"
#include "demo_shop.h"
#include "lists_shop.h"
#include "page_test.h"

namespace rosters_test {

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

/// Letters alone, to look a name up in. Arabic comes out of a PDF in presentation forms, one for each place
/// in a word, since Qt writes glyphs and not the letters they stand for: compatibility normalisation makes
/// letters of them again. Hebrew comes out with spaces between its letters, and both with marks of direction.
QString letters_of(const QString& text) {
  QString letters;
  for (const QChar c : text.normalized(QString::NormalizationForm_KC))
    if (!c.isSpace() && c.category() != QChar::Other_Format) letters += c;
  return letters;
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

  /// Made once: it takes seconds.
  std::unique_ptr<Session> demo_;
  Session& demo() {
    if (!demo_) demo_ = demo_session(false);
    return *demo_;
  }

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

  void no_word_on_the_paper_is_cut_or_runs_into_another_data() {
    QTest::addColumn<int>("form");
    QTest::addColumn<int>("size");
    for (const RosterForm form :
         {RosterForm::grid, RosterForm::door, RosterForm::machine_a_page, RosterForm::card})
      for (const PaperSize size : {PaperSize::letter, PaperSize::a4})
        QTest::addRow("form %d, size %d", static_cast<int>(form), static_cast<int>(size))
            << static_cast<int>(form) << static_cast<int>(size);
  }

  void no_word_on_the_paper_is_cut_or_runs_into_another() {
    QFETCH(const int, form);
    QFETCH(const int, size);
    const auto paper_size = static_cast<PaperSize>(size);
    const bool grid = static_cast<RosterForm>(form) == RosterForm::grid;
    ListsShop shop;
    {
      const QString pdf = shop.file("roster.pdf");
      QVERIFY(write_roster_pdf(shop.session(), {std::nullopt, true, static_cast<RosterForm>(form)}, pdf,
                               paper_size));
      QSizeF paper;
      const std::vector<Word> words = words_of(pdf, &paper);
      QVERIFY(words.size() > 100);
      // ISO 216 A4 is 210 x 297 mm, US Letter 8.5 x 11 in (ANSI/ASME Y14.1, size A).
      const bool letter = paper_size == PaperSize::letter;
      QCOMPARE(qRound(grid ? paper.width() : paper.height()), letter ? 792 : 842);
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

  void a_roster_as_known_then_says_what_it_said_then() {
    ListsShop shop;
    const RosterChoice everybody{std::nullopt, true, RosterForm::door};
    const auto text_as_of = [&](Instant day) {
      const QString pdf = shop.file("then.pdf");
      shop.session().set_asked_at(day);
      shop.session().set_known(day);
      const auto pages = write_roster_pdf(shop.session(), everybody, pdf, PaperSize::letter);
      shop.session().set_asked_at(std::nullopt);
      shop.session().set_known(std::nullopt);
      return pages ? run_pdftotext({"-layout", pdf, "-"}) : QString();
    };
    const Instant then = shop.session().now();
    const QString before = text_as_of(then);
    QVERIFY(before.contains("Castellanos"));
    // Ten years of renaming, newcomers, papers, strike-outs and erasing.
    shop.sit("mia");
    const std::vector<db::Person> people = shop.session().store().people();
    for (int year = 1; year <= 10; ++year) {
      shop.wait(365 * 86400);
      for (db::Person person : people) {
        person.family = "Renamed-" + std::to_string(year);
        QVERIFY(shop.session().commit(db::CorrectPerson{person}));
      }
      db::Person late;
      late.given = "Late";
      late.family = "Comer-" + std::to_string(year);
      const auto entered = shop.session().commit(db::EnterPerson{late, Day{4000}});
      QVERIFY(entered);
      QVERIFY(shop.session().commit(db::EnterFact{Document{entered->person, "induction", std::nullopt}}));
    }
    QCOMPARE(text_as_of(then), before);
    QVERIFY(text_as_of(shop.session().now()).contains("Renamed-10"));

    // Somebody erased is a number from then on, on the papers of before too; all else stays.
    const auto erased = std::ranges::find_if(people, [&](const db::Person& p) {
      return p.family == "Castellanos" && !shop.session().store().role_of(p.id);
    });
    QVERIFY(erased != people.end());
    QVERIFY(shop.session().commit(db::BlankPerson{erased->id}));
    const QString after = text_as_of(then);
    QVERIFY(!after.contains("Castellanos"));
    QVERIFY(after.contains("person "));
    QVERIFY(after.contains("Griffith, Dee"));
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

  void a_door_has_under_each_machine_everybody_who_may_use_it_and_nobody_else() {
    const RosterTable table = roster_table(demo(), {});
    QTemporaryDir folder;
    const QString pdf = folder.filePath("machines.pdf");
    const auto pages =
        write_roster_pdf(table, {{}, false, RosterForm::machine_a_page}, pdf, PaperSize::letter);
    QVERIFY(pages);
    QCOMPARE(*pages, static_cast<int>(table.columns.size()));
    int some_restricted = 0;
    for (int page = 0; page < *pages; ++page) {
      const auto column = static_cast<std::size_t>(page);
      const QString number = QString::number(page + 1);
      // Arabic comes out in presentation forms, one for each place in a word: Qt writes the glyphs and not
      // the letters they stand for. Compatibility normalisation makes letters of them again.
      const QString text = letters_of(run_pdftotext({"-f", number, "-l", number, "-layout", pdf, "-"}));
      QVERIFY2(text.contains(letters_of(table.columns[column].machine)), qPrintable(text));
      int free = 0, watched = 0, restricted = 0;
      for (const RosterRow& row : table.rows) {
        const RosterCell& cell = row.cells[column];
        const bool open = cell.restricted.isEmpty();
        free += cell.rung == Rung::independent && open;
        watched += cell.rung == Rung::supervised && open;
        restricted += cell.rung != Rung::barred && !open;
        if (cell.rung != Rung::barred && !open)
          QVERIFY2(text.contains(letters_of(cell.restricted.join("; "))), qPrintable(text));
        const QString family = letters_of(row.name.section(',', 0, 0));
        if (!cell.empty()) QVERIFY2(text.contains(family), qPrintable(family + " is not in:\n" + text));
        if (cell.empty() && family.size() > 4) QVERIFY2(!text.contains(family + ','), qPrintable(family));
        if (cell.rung == Rung::independent && cell.until)
          QVERIFY(text.contains(letters_of(door_day(cell, table))));
      }
      some_restricted += restricted;
      if (free) QVERIFY2(text.contains(QString("throughthedayshown:%1").arg(free)), qPrintable(text));
      if (watched) QVERIFY2(text.contains(QString("Onlywithasupervisor:%1").arg(watched)), qPrintable(text));
    }
    QVERIFY(some_restricted > 0);
  }

  void a_card_beside_a_machine_names_everybody_who_may_use_it_and_nobody_else() {
    RosterTable table = roster_table(demo(), {});
    table.emergency = {"555 0100", "Mill Road 12, the yard"};
    QTemporaryDir folder;
    const QString pdf = folder.filePath("cards.pdf");
    const auto pages = write_roster_pdf(table, {{}, false, RosterForm::card}, pdf, PaperSize::letter);
    QVERIFY(pages);
    int page = 0, some_restricted = 0, some_days = 0;
    for (std::size_t first = 0; first < table.columns.size();) {
      std::size_t end = first;
      while (end < table.columns.size() && table.columns[end].machine == table.columns[first].machine) ++end;
      // A long list of names goes on overleaf; what to do when somebody is hurt stands at the end.
      QString text;
      while (!text.contains("leaveeverythingasitis")) {
        QVERIFY2(page < *pages, qPrintable(text));
        const QString number = QString::number(++page);
        const QString one = letters_of(run_pdftotext({"-f", number, "-l", number, "-layout", pdf, "-"}));
        QVERIFY(one.contains(QString("Tier%1").arg(table.columns[first].tier)));
        text += one;
      }
      const auto says = [&text](const QString& words) { return text.contains(letters_of(words)); };
      QVERIFY2(says(table.columns[first].machine), qPrintable(text));
      QVERIFY(says("Call 555 0100. Say: Mill Road 12, the yard. What happened, how many are hurt."));
      QVERIFY(says("Whoever is not named here may not use it."));
      QStringList conditions = table.columns[first].conditions;
      QCOMPARE(conditions.removeDuplicates(), 0);
      for (const QString& condition : conditions)
        QVERIFY2(says("Only while " + condition + '.'), qPrintable(condition));
      std::set<QString> named, not_named;
      for (std::size_t column = first; column < end; ++column) {
        int free = 0, watched = 0;
        if (!table.columns[column].mode.isEmpty()) QVERIFY(says("For " + table.columns[column].mode));
        for (const RosterRow& row : table.rows) {
          const RosterCell& cell = row.cells[column];
          free += cell.rung == Rung::independent;
          watched += cell.rung == Rung::supervised;
          if (!cell.empty()) named.insert(row.name);
          if (cell.rung == Rung::independent && cell.until) {
            ++some_days;
            QVERIFY(says(door_day(cell, table)));
          }
          if (cell.rung == Rung::barred || cell.restricted.isEmpty()) continue;
          ++some_restricted;
          QVERIFY2(says(cell.restricted.join("; ")), qPrintable(text));
        }
        if (free) QVERIFY(says(QString("Without a supervisor, through the day shown: %1").arg(free)));
        if (watched) QVERIFY(says(QString("Only with a supervisor: %1").arg(watched)));
      }
      for (const RosterRow& row : table.rows) {
        const QString family = letters_of(row.name.section(',', 0, 0));
        if (named.contains(row.name))
          QVERIFY2(text.contains(family), qPrintable(family + " is not in:\n" + text));
        else if (family.size() > 4)
          QVERIFY2(!text.contains(family + ','), qPrintable(family + " is in:\n" + text));
      }
      first = end;
    }
    QCOMPARE(page, *pages);
    QVERIFY(some_restricted > 0);
    QVERIFY(some_days > 0);
  }

  void a_card_without_a_number_has_room_for_it_and_a_manager_enters_one_for_the_shop() {
    QSettings().setValue("emergency_number", "555 0199");  // as an earlier version kept it here
    Shown<RostersPage> shop("mia");
    auto* form = shop.page.findChild<QComboBox*>("form");
    auto* number = shop.page.findChild<QLineEdit*>("emergency_number");
    QVERIFY(!number->isVisible());
    form->setCurrentIndex(form->findData(static_cast<int>(RosterForm::card)));
    QVERIFY(number->isVisible());
    const auto saved = [&shop] {
      shop.page.save_pdf(shop.file("cards.pdf"));
      return letters_of(run_pdftotext({"-layout", shop.file("cards.pdf"), "-"}));
    };
    // It is proposed, and counts for nothing before it is entered.
    QCOMPARE(number->text(), QString("555 0199"));
    QVERIFY(saved().contains(letters_of("Call the local emergency number: ____________ (write it here)")));
    number->setFocus();
    number->setCursorPosition(0);
    QTest::keyClicks(number, "0-");
    shop.page.findChild<QLineEdit*>("emergency_where")->setFocus();
    type(shop.page, "Mill Road 12, the yard");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(shop.session().store().emergency_call(),
             (db::EmergencyCall{"0-555 0199", "Mill Road 12, the yard"}));
    QVERIFY(!QSettings().contains("emergency_number"));
    const QString text = saved();
    QVERIFY(text.contains(letters_of("Call 0-555 0199. Say: Mill Road 12, the yard.")));
    QVERIFY(!text.contains("writeithere"));
    // Whoever is no manager reads it.
    shop.sit("dee");
    QVERIFY(!number->isVisible());
    QVERIFY(shop.page.findChild<QLabel*>("emergency_said")->text().contains("0-555 0199"));
  }

  void the_way_to_what_is_called_leads_to_its_field_and_what_is_no_number_is_refused() {
    QSettings().remove("emergency_number");
    Shown<RostersPage> shop("mia");
    Place place;
    place.page = "rosters";
    place.item = "emergency";
    shop.page.open(place);
    QCOMPARE(at_cursor(shop.page)->objectName(), QString("emergency_number"));
    QSignalSpy refused(&shop.page, &Page::tell_problem);
    type(shop.page, "Mill Road");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused.size(), 1);
    QCOMPARE(shop.session().store().emergency_call(), db::EmergencyCall{});
    // What is typed stays, and the cursor is where it is put right.
    QCOMPARE(at_cursor(shop.page)->objectName(), QString("emergency_number"));
    QCOMPARE(shop.page.findChild<QLineEdit*>("emergency_number")->text(), QString("Mill Road"));
  }

  void a_long_list_goes_on_overleaf_with_its_heads_and_loses_nobody() {
    const RosterTable table = roster_table(demo(), {});
    const QRectF body(0, 0, 5400, 3000);  // a short page
    const auto pages = lay_out_door(table, false, body);
    std::vector<std::vector<std::size_t>> printed(table.columns.size());
    for (const DoorPage& page : pages) {
      QVERIFY(page.pieces.size() > 1);
      QVERIFY(page.pieces[0].kind == DoorPiece::Kind::tier);
      QVERIFY(page.pieces[1].kind == DoorPiece::Kind::machine);
      double bottom = 0;
      for (const DoorPiece& piece : page.pieces) {
        QVERIFY(piece.top >= bottom);
        bottom = piece.top + piece.height;
        auto& names = printed[piece.column];
        names.insert(names.end(), piece.rows.begin(), piece.rows.end());
      }
      QVERIFY(bottom <= body.height() - door_legend_height);
    }
    for (std::size_t column = 0; column < table.columns.size(); ++column) {
      // Whoever is restricted stands below the others; who needs a supervisor is run into lines, unless
      // restricted.
      std::vector<std::size_t> expected;
      for (const auto& [rung, restricted] :
           {std::pair{Rung::independent, false}, std::pair{Rung::independent, true},
            std::pair{Rung::supervised, true}})
        for (std::size_t row = 0; row < table.rows.size(); ++row)
          if (table.rows[row].cells[column].rung == rung &&
              table.rows[row].cells[column].restricted.isEmpty() != restricted)
            expected.push_back(row);
      QCOMPARE(printed[column], expected);
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
    Shown<RostersPage> shop;
    QCoreApplication::processEvents();
    auto* grid = shop.page.findChild<RosterGrid*>("roster");
    const int all = grid->model()->columnCount();
    QVERIFY(QApplication::focusWidget());
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("tier_1"));
    press(shop.page, Qt::Key_Space);
    QCOMPARE(grid->model()->columnCount(), all - 3);
    shop.page.save_pdf(shop.file("two.pdf"));
    QVERIFY(!run_pdftotext({shop.file("two.pdf"), "-"}).contains("Hand tools"));
  }

  void what_is_noted_of_a_paper_are_the_words_on_it() {
    ListsShop shop;
    const RosterTable table = roster_table(shop.session(), {});
    const QString pdf = shop.file("words.pdf");
    QVERIFY(write_roster_pdf(table, {}, pdf, PaperSize::a4));
    const RosterWords noted = roster_words(table, {}, PaperSize::a4);
    QCOMPARE(noted.words.count('\f'), noted.pages);
    static const QRegularExpression space("\\s+");
    const auto words_in = [](const QString& text) {
      QStringList words = text.normalized(QString::NormalizationForm_C).split(space, Qt::SkipEmptyParts);
      words.sort();
      return words;
    };
    QCOMPARE(words_in(noted.words), words_in(run_pdftotext({"-layout", pdf, "-"})));
    QCOMPARE(words_digest(""),
             std::string("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"));
  }

  void a_saved_roster_is_in_the_journal_whoever_sits_there() {
    Shown<RostersPage> shop;
    const QString said =
        roster_words(roster_table(shop.session(), shop.page.choice()), shop.page.choice(), paper_size())
            .words;
    shop.page.save_pdf(shop.file("noted.pdf"));
    const db::Entry& last = shop.session().store().entries().back();
    const auto printed = std::get<db::Printed>(std::get<db::ShopFact>(last.fact));
    QVERIFY(last.entered_by.empty());
    QVERIFY2(printed.title.starts_with("Who may use what, Hollow Oak Workshop"), printed.title.c_str());
    QCOMPARE(printed.digest, words_digest(said));
  }

  void a_pdf_that_cannot_be_written_is_told_and_nothing_is_left() {
    Shown<RostersPage> shop;
    QSignalSpy told(&shop.page, &Page::tell_problem);
    shop.page.save_pdf(shop.file("no/such/folder/roster.pdf"));
    QCOMPARE(told.count(), 1);
    for (const db::Entry& entry : shop.session().store().entries()) QVERIFY(!db::as<db::Printed>(entry.fact));
  }

  void letter_is_north_american_and_the_rest_prints_on_a4() {
    QCOMPARE(usual_paper(QLocale(QLocale::English, QLocale::UnitedStates)), PaperSize::letter);
    QCOMPARE(usual_paper(QLocale(QLocale::French, QLocale::Canada)), PaperSize::letter);
    QCOMPARE(usual_paper(QLocale(QLocale::English, QLocale::UnitedKingdom)), PaperSize::a4);
    QCOMPARE(usual_paper(QLocale(QLocale::German, QLocale::Germany)), PaperSize::a4);
  }
};

}  // namespace rosters_test

WM_PAGE_TEST(rosters_test, RostersTest)
#include "rosters_test.moc"
