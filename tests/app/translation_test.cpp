// Another language: an invented one, in which every sentence stands between two signs, made as a translator
// makes one.
#include <QAbstractButton>
#include <QLabel>
#include <QtTest>

#include "app/frame/main_window.h"
#include "app/frame/pages.h"
#include "app/start/language.h"
#include "app/theme/theme.h"
#include "app/words/counted.h"
#include "page_test.h"
#include "program_strings.h"
#include "small_shop.h"

namespace translation_test {

using namespace wm;
using namespace wm::app;

namespace {

const QString committed = QStringLiteral(WM_TESTS "/../translations/witnessmark.ts");

void write_language(const QString& ts) {
  QFile file(ts);
  if (!file.open(QFile::WriteOnly)) qFatal("%s cannot be written", qPrintable(ts));
  QXmlStreamWriter xml(&file);
  xml.writeStartDocument();
  xml.writeStartElement("TS");
  xml.writeAttribute("version", "2.1");
  xml.writeAttribute("language", "de");
  for (const ProgramString& string : strings_in(committed)) {
    xml.writeStartElement("context");
    xml.writeTextElement("name", string.context);
    xml.writeStartElement("message");
    if (string.plural) xml.writeAttribute("numerus", "yes");
    xml.writeTextElement("source", string.source);
    if (!string.comment.isEmpty()) xml.writeTextElement("comment", string.comment);
    xml.writeStartElement("translation");
    const QString said = QStringLiteral("‹%1›").arg(string.source);
    if (string.plural)
      for (int form = 0; form < 2; ++form) xml.writeTextElement("numerusform", said);
    else
      xml.writeCharacters(said);
    for (int open = 0; open < 3; ++open) xml.writeEndElement();
  }
  xml.writeEndDocument();
}

}  // namespace

namespace {

bool shows_translated(const QWidget& page) {
  const auto translated = [](const auto* widget) {
    return widget->isVisible() && widget->text().contains("‹");
  };
  return std::ranges::any_of(page.findChildren<QAbstractButton*>(), translated) ||
         std::ranges::any_of(page.findChildren<QLabel*>(), translated);
}

}  // namespace

class TranslationTest : public QObject {
  Q_OBJECT

  QTemporaryDir folder_;

 private slots:
  void the_file_that_translators_begin_with_has_every_sentence_of_today() {
    const auto now = strings_of_the_program(), kept = strings_in(committed);
    for (const ProgramString& string : now)
      QVERIFY2(kept.contains(string), qPrintable("run translations/update; new: " + string.source));
    for (const ProgramString& string : kept)
      QVERIFY2(now.contains(string), qPrintable("run translations/update; gone: " + string.source));
    // A class without its namespace is one whose header lupdate did not find: the program would ask for the
    // whole name, and find nothing.
    for (const ProgramString& string : now)
      QVERIFY2(!string.context.endsWith("Page") || string.context.startsWith("wm::app::"),
               qPrintable(string.context));
  }

  void a_language_that_is_not_there_leaves_english() {
    QVERIFY(!speak(*qApp, QLocale(QLocale::German, QLocale::Austria), folder_.path()));
    QCOMPARE(page_title(pages().front()), QString("Desk"));
  }

  void what_is_shown_is_in_the_systems_language() {
    write_language(folder_.filePath("invented.ts"));
    QCOMPARE(QProcess::execute(language_tool("lrelease"), {"-silent", folder_.filePath("invented.ts"), "-qm",
                                                           folder_.filePath("witnessmark_de.qm")}),
             0);
    // Austria's own is not there: the language's is taken.
    QVERIFY(speak(*qApp, QLocale(QLocale::German, QLocale::Austria), folder_.path()));
    QCOMPARE(minutes_words(3), QString("‹3 minutes›"));
    apply_theme(*qApp, Shade::light);
    SmallShop shop;
    QVERIFY(shop.session->sit_down("rosa", "1111"));
    MainWindow window(*shop.session);
    window.show();
    for (const PageEntry& entry : pages()) {
      Place place;
      place.page = entry.id;
      window.go(place);
      // Some pages wait for the disk first.
      QTRY_VERIFY2(shows_translated(*window.current()), qPrintable(place.page));
      for (const auto* button : window.current()->findChildren<QAbstractButton*>()) {
        if (!button->isVisible() || button->text().isEmpty()) continue;
        QVERIFY2(button->text().contains("‹"), qPrintable(place.page + ": " + button->text()));
      }
    }
  }
};

}  // namespace translation_test

WM_PAGE_TEST(translation_test, TranslationTest)
#include "translation_test.moc"
