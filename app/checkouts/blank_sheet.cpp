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

/// A name with room for a pencil below it.
QString room(const QString& name, const char* width, int lines = 1) {
  return cell("<small>" + name.toHtmlEscaped() + "</small>" + QString("<br>&nbsp;").repeated(lines), width);
}

QString between() { return QStringLiteral("<p>&nbsp;</p>"); }

QString who_and_when(bool two) {
  const auto width = [two](const char* one, const char* of_two) { return two ? of_two : one; };
  return "<table width=99% border=1 cellspacing=0 cellpadding=40><tr>" +
         room(BlankSheets::tr("Member"), width("width=30%", "width=24%")) +
         room(BlankSheets::tr("Unit"), width("width=20%", "width=14%")) +
         room(BlankSheets::tr("Day and time"), width("width=22%", "width=18%")) +
         room(BlankSheets::tr("Assessor"), width("width=28%", "width=22%")) +
         (two ? room(BlankSheets::tr("Second assessor"), "width=22%") : QString()) + "</tr></table>";
}

QString marks_heading() {
  QString out = "<tr>" + cell("", "width=5%") + cell("");
  for (const QString& each : {BlankSheets::tr("shown"), BlankSheets::tr("when asked"),
                              BlankSheets::tr("not shown"), BlankSheets::tr("again")})
    out += "<td width=9% align=center valign=bottom><small>" + each.toHtmlEscaped() + "</small></td>";
  return out + "</tr>";
}

QString line_row(const SheetLine& line, int number) {
  const QString said = escaped(line.text);
  QString text = line.critical ? "<b>" + said + "</b>" : said;
  if (!line.says.empty()) text += "<br><small>" + escaped(line.says) + "</small>";
  if (line.measure)
    text += "<br><small>" + asked_words(*line.measure).toHtmlEscaped() + "<br><br>" +
            BlankSheets::tr("measured: __________   by marks of: __________").toHtmlEscaped() + "</small>";
  return "<tr>" + cell(QString::number(number), "valign=middle") + cell(text, "valign=middle") + cell("") +
         cell("") + cell("") + cell("") + "</tr>";
}

/// The heading stands again on each page.
QString lines_table(const Sheet& sheet) {
  QString out =
      "<table width=99% border=1 cellspacing=0 cellpadding=45><thead>" + marks_heading() + "</thead>";
  int number = 0;
  for (const SheetSection& section : sheet.sections) {
    out += "<tr><td colspan=6 bgcolor=#eeeeee><b>" + escaped(section.name) + "</b></td></tr>";
    for (const SheetLine& line : section.lines) out += line_row(line, ++number);
  }
  return out + "</table>";
}

QString at_the_end(bool two) {
  QStringList outcomes;
  for (const Outcome each : {Outcome::passed, Outcome::failed, Outcome::stopped})
    outcomes << outcome_words(each);
  return "<table width=99% border=1 cellspacing=0 cellpadding=40><tr>" +
         room(BlankSheets::tr("Result, put a ring around one: %1").arg(outcomes.join(" · ")), "width=50%",
              2) +
         room(BlankSheets::tr("What stays open, aids used; never a medical reason"), "width=50%", 2) +
         "</tr><tr>" + room(BlankSheets::tr("Member: I was shown this machine's cautions"), "width=50%", 2) +
         room(BlankSheets::tr("Assessor: this is what I watched"), "width=50%", 2) +
         (two ? "</tr><tr>" + cell("", "width=50%") +
                    room(BlankSheets::tr("Second assessor: I watched it too, and say the same"), "width=50%",
                         2)
              : QString()) +
         "</tr></table><p style=\"margin-top:60px\">" +
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

QString blank_sheet_html(const Sheet& sheet, bool two) {
  return who_and_when(two) + between() + lines_table(sheet) + between() + at_the_end(two);
}

BlankSheet blank_sheet(Session& session, const Sheet& sheet, const QString& form, PaperSize size) {
  const QString title = sheet.title.empty() ? target_label(sheet.machine_class) : plain(sheet.title);
  const QString code = ledger_code(session);
  BlankSheet out{form,
                 {BlankSheets::tr("Run sheet: %1").arg(title),
                  BlankSheets::tr("%1 · sheet revision %2 · paper number %3")
                      .arg(plain(session.store().details().name), QString::number(sheet.revision), form),
                  BlankSheets::tr("Paper number %1").arg(form),
                  code.isEmpty() ? code : BlankSheets::tr("Ledger %1").arg(code), size, false, false},
                 {}};
  const bool two = session.two_check_out(sheet.machine_class, session.now());
  out.laid = lay_out_text(out.text, blank_sheet_html(sheet, two));
  return out;
}

Expected<QString> print_blank_sheet(Session& session, const Sheet& sheet) {
  const BlankSheet blank = blank_sheet(session, sheet, new_form_number(), paper_size());
  return print_laid(session, BlankSheets::tr("Run sheet %1").arg(blank.form), blank.text, blank.laid,
                    Numbered{blank.form, sheet.name, sheet.revision});
}

}  // namespace wm::app
