#include "app/figures/figures_paper.h"

#include "app/figures/agreed_words.h"
#include "app/figures/figure_words.h"
#include "app/figures/figures_views.h"
#include "app/figures/group_table.h"
#include "app/print/paper_words.h"
#include "app/print/printed.h"
#include "app/print/text_paper.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct FiguresPaper {
  Q_DECLARE_TR_FUNCTIONS(wm::app::FiguresPaper)
};

QString paragraph(const QString& words) { return QStringLiteral("<p>%1</p>").arg(words.toHtmlEscaped()); }
QString small_print(const QString& words) {
  return QStringLiteral("<p><small>%1</small></p>").arg(words.toHtmlEscaped());
}
QString table_cell(const QString& words, bool heavy, bool right) {
  const QString text = words.toHtmlEscaped();
  return QStringLiteral("<td align=\"%1\">%2</td>")
      .arg(right ? "right" : "left", heavy ? "<b>" + text + "</b>" : text);
}

QString groups_html(const teach::BankFigures& bank) {
  QString rows = "<tr><td></td>";
  for (const QString& title : group_titles()) rows += table_cell(title, true, true);
  rows += "</tr>";
  for (const GroupRow& group : group_rows(bank)) {
    rows += "<tr>" + table_cell(group.name, false, false);
    for (const QString& words : group.cells) rows += table_cell(words, false, true);
    rows += "</tr>";
  }
  return "<table width=\"100%\" cellpadding=\"30\">" + rows + "</table>";
}

/// `look`: null where nothing is odd about it.
QString question_html(const teach::BankFigures& bank, const teach::QuestionFigures& figures,
                      const teach::LookAt* look) {
  const teach::Wording* wording = shown_wording(teach::question_of(bank, figures.question, figures.revision));
  QString html = QStringLiteral("<p><b>%1</b><br><small>%2, %3</small></p>")
                     .arg(wording ? QString::fromStdString(wording->text).toHtmlEscaped() : QString(),
                          QString::fromStdString(figures.topic).toHtmlEscaped(),
                          QString::fromStdString(figures.question) + revision_words(figures.revision));
  if (look)
    for (const teach::Reason& reason : look->reasons)
      html += paragraph(doubt_sentence(reason, figures, wording));
  QString rows;
  for (std::size_t i = 0; i < figures.choices.size(); ++i) {
    const teach::ChoiceFigures& choice = figures.choices[i];
    rows += "<tr>" + table_cell(choice.right ? FiguresPaper::tr("right") : QString(), false, false) +
            table_cell(choice_words(wording, i), choice.right, false) +
            table_cell(FiguresPaper::tr("%1, %2", "how often, a percentage")
                           .arg(choice.chosen)
                           .arg(share_words(choice.chosen, figures.asked)),
                       false, true) +
            "</tr>";
  }
  if (!rows.isEmpty()) html += "<table cellpadding=\"20\">" + rows + "</table>";
  return html + small_print(question_sentence(figures));
}

QString bank_html(const teach::BankFigures& bank) {
  QString html = QStringLiteral("<h2>%1</h2>").arg(item_label(bank.bank).toHtmlEscaped());
  html += paragraph(attempts_sentence(bank));
  if (bank.all.people == 0) return html;
  html += groups_html(bank);
  for (const QString& words : missing_sentences(bank)) html += small_print(words);
  for (const teach::QuestionFigures* each : in_order_of_bank(bank))
    html += question_html(bank, *each, nullptr);
  return html;
}

QString agreed_html(const std::vector<SheetAgreed>& sheets) {
  QString html = QStringLiteral("<h2>%1</h2>").arg(FiguresPaper::tr("Assessors who differ").toHtmlEscaped());
  for (const QString& words : agreed_explanations(sheets)) html += small_print(words);
  for (const SheetAgreed& sheet : sheets) {
    html += QStringLiteral("<p><b>%1</b></p>").arg(agreed_title(sheet).toHtmlEscaped());
    html += paragraph(agreed_sentence(sheet.all));
    for (const LineAgreed& line : sheet.lines)
      html += small_print(FiguresPaper::tr("%1. %2", "a line, how far they agree")
                              .arg(agreed_line(line), agreed_sentence(line.agreed)));
  }
  return html;
}

QString html_of(const std::vector<teach::BankFigures>& banks, const std::vector<SheetAgreed>& sheets) {
  QString html =
      QStringLiteral("<h2>%1</h2>").arg(FiguresPaper::tr("Questions to look at first").toHtmlEscaped());
  for (const teach::LookIn& in : teach::look_first(banks))
    if (in.look->reasons.front().doubt < teach::Doubt::tells_nothing)
      html += question_html(*in.bank, in.look->figures, in.look);
  for (const QString& words : group_explanations()) html += small_print(words);
  for (const teach::BankFigures& bank : banks) html += bank_html(bank);
  html += agreed_html(sheets);
  return html;
}

/// Laid out, with its words for the journal.
struct Laid {
  PaperText text;
  LaidText pages;
  Expected<void> note(Session& session) const {
    return note_printed(session, text.title, pages.pages, paper_words(text, pages.pages, pages.draw));
  }
};

Laid lay_out(Session& session, const std::vector<teach::BankFigures>& banks,
             const std::vector<SheetAgreed>& sheets, const QString& summary, PaperSize size) {
  const Instant known = session.known().value_or(session.now());
  const QString code = ledger_code(session);
  PaperText text{
      FiguresPaper::tr("Figures of the quizzes"),
      QString::fromStdString(session.store().details().name) + ". " + summary,
      FiguresPaper::tr("As known on %1, %2. It shows which answers are right.")
          .arg(long_day(known, session.zone()), clock_time(known, session.zone())),
      code.isEmpty() ? code : FiguresPaper::tr("Ledger %1", "a code of letters and figures").arg(code), size};
  LaidText pages = lay_out_text(text, html_of(banks, sheets));
  return {std::move(text), std::move(pages)};
}

}  // namespace

Expected<int> write_figures_pdf(Session& session, const std::vector<teach::BankFigures>& banks,
                                const std::vector<SheetAgreed>& sheets, const QString& summary,
                                const QString& path, PaperSize size) {
  const Laid laid = lay_out(session, banks, sheets, summary, size);
  const auto written = write_pdf(path, laid.text, laid.pages.pages, laid.pages.draw);
  if (!written) return written;
  return laid.note(session).map([&] { return *written; });
}

Expected<void> print_figures(Session& session, const std::vector<teach::BankFigures>& banks,
                             const std::vector<SheetAgreed>& sheets, const QString& summary,
                             QPrinter& printer, PaperSize size) {
  const Laid laid = lay_out(session, banks, sheets, summary, size);
  set_up(printer, laid.text);
  if (!paint_paper(printer, laid.text, laid.pages.pages, laid.pages.draw))
    return tl::unexpected(
        Problem{printer.printerName().toStdString(),
                FiguresPaper::tr("The printer did not take the figures.").toStdString(),
                FiguresPaper::tr("See whether it is on, or save a PDF and print that.").toStdString()});
  return laid.note(session);
}

}  // namespace wm::app
