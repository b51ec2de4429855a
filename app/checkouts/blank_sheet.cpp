#include "app/checkouts/blank_sheet.h"

#include <QCoreApplication>
#include <QRandomGenerator>

#include "app/checkouts/measure_words.h"
#include "app/checkouts/result_words.h"
#include "app/print/html_paper.h"
#include "app/print/printed.h"
#include "app/words/labels.h"

namespace wm::app {
namespace {

struct BlankSheets {
  Q_DECLARE_TR_FUNCTIONS(Checkouts)
};

QString plain(const std::string& text) { return QString::fromStdString(text); }
QString escaped(const std::string& text) { return plain(text).toHtmlEscaped(); }

QString cell(const QString& html, const char* attributes = "") {
  return QString("<td %1>%2</td>").arg(QLatin1String(attributes), html);
}

/// A name with room behind it.
QString room(const QString& name, const char* width) {
  return cell("<small>" + name.toHtmlEscaped() + "</small><br>&nbsp;", width);
}

QString who_and_when() {
  return "<table width=100% border=1 cellspacing=0 cellpadding=30><tr>" +
         room(BlankSheets::tr("Member"), "width=30%") + room(BlankSheets::tr("Unit"), "width=20%") +
         room(BlankSheets::tr("Day and time"), "width=22%") + room(BlankSheets::tr("Assessor"), "width=28%") +
         "</tr></table>";
}

QString marks_heading() {
  QString out = "<tr>" + cell("", "width=5%") + cell("");
  for (const QString& each : {BlankSheets::tr("shown"), BlankSheets::tr("when asked"),
                              BlankSheets::tr("not shown"), BlankSheets::tr("again")})
    out += "<td width=9% align=center><small>" + each + "</small></td>";
  return out + "</tr>";
}

QString line_row(const SheetLine& line, int number) {
  const QString said = escaped(line.text);
  QString text = line.critical ? "<b>" + said + "</b>" : said;
  if (!line.says.empty()) text += "<br><small>" + escaped(line.says) + "</small>";
  if (line.measure)
    text += "<br><small>" + asked_words(*line.measure).toHtmlEscaped() + "<br>" +
            BlankSheets::tr("measured: __________   by marks of: __________").toHtmlEscaped() + "</small>";
  return "<tr>" + cell(QString::number(number)) + cell(text) + cell("") + cell("") + cell("") + cell("") +
         "</tr>";
}

QString lines_table(const Sheet& sheet) {
  QString out;
  int number = 0;
  for (const SheetSection& section : sheet.sections) {
    out += "<p><b>" + escaped(section.name) + "</b></p>";
    out += "<table width=100% border=1 cellspacing=0 cellpadding=24>" + marks_heading();
    for (const SheetLine& line : section.lines) out += line_row(line, ++number);
    out += "</table><p></p>";
  }
  return out;
}

QString at_the_end() {
  QStringList outcomes;
  for (const Outcome each : {Outcome::passed, Outcome::failed, Outcome::stopped})
    outcomes << outcome_words(each);
  return "<table width=100% border=1 cellspacing=0 cellpadding=30><tr>" +
         room(BlankSheets::tr("Result, put a ring around one: %1").arg(outcomes.join(" · ")), "width=50%") +
         room(BlankSheets::tr("What stays open, aids used; never a medical reason"), "width=50%") +
         "</tr><tr>" + room(BlankSheets::tr("Member: I was shown this machine's cautions"), "width=50%") +
         room(BlankSheets::tr("Assessor: this is what I watched"), "width=50%") + "</tr></table><p>" +
         BlankSheets::tr(
             "Mark between cuts, never while stock is moving. A critical line (heavy) that was shown only "
             "when asked is "
             "shown again, unasked, before a pass. Nothing counts before a manager has entered this paper, "
             "by its "
             "number.")
             .toHtmlEscaped() +
         "</p>";
}

}  // namespace

QString new_form_number() {
  static const QString signs = QStringLiteral("23456789ABCDEFGHJKMNPQRSTVWXYZ");
  QString out;
  for (int i = 0; i < 6; ++i)
    out += signs[QRandomGenerator::system()->bounded(static_cast<int>(signs.size()))];
  return out;
}

BlankSheet blank_sheet(const Session& session, const Sheet& sheet, const QString& form, PaperSize size) {
  const QString title = sheet.title.empty() ? target_label(sheet.machine_class) : plain(sheet.title);
  const QString code = ledger_code(session);
  BlankSheet out{form,
                 {BlankSheets::tr("Run sheet: %1").arg(title),
                  BlankSheets::tr("%1 · sheet revision %2 · paper number %3")
                      .arg(plain(session.store().details().name), QString::number(sheet.revision), form),
                  BlankSheets::tr("Paper number %1").arg(form),
                  code.isEmpty() ? code : BlankSheets::tr("Ledger %1").arg(code), size, false, false},
                 {}};
  out.laid = lay_out_text(out.text, who_and_when() + "<p></p>" + lines_table(sheet) + at_the_end());
  return out;
}

Expected<QString> print_blank_sheet(Session& session, const Sheet& sheet) {
  const BlankSheet blank = blank_sheet(session, sheet, new_form_number(), paper_size());
  return print_laid(session, BlankSheets::tr("Run sheet %1").arg(blank.form), blank.text, blank.laid,
                    blank.form);
}

}  // namespace wm::app
