#include "app/desk/print_missing.h"

#include "app/desk/tr.h"
#include "app/print/html_paper.h"
#include "app/print/printed.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

QString ledger_words(const Session& session) {
  const QString code = ledger_code(session);
  return code.isEmpty() ? code : DeskWords::tr("Ledger %1.", "a code of letters and figures").arg(code);
}

}  // namespace

QString answer_sheet(const Session& session, const QString& name, const DeskAnswer& answer,
                     const QString& next) {
  QString html = QStringLiteral("<p>%1</p><h2>%2</h2><h3>%3</h3>")
                     .arg(QString::fromStdString(session.store().details().name).toHtmlEscaped(),
                          name.toHtmlEscaped(), answer.sentence.toHtmlEscaped());
  if (!answer.since.isEmpty()) html += QStringLiteral("<p>%1</p>").arg(answer.since.toHtmlEscaped());
  html += QStringLiteral("<p><b>%1</b></p>").arg(answer.needs_title.toHtmlEscaped());
  for (const NeedLine& need : answer.needs)
    html += QStringLiteral("<p style='margin-left:%1px'>%2 %3<br><small>%4</small></p>")
                .arg(20 * need.depth)
                .arg(need.holds ? QStringLiteral("☑") : QStringLiteral("☐"), need.what.toHtmlEscaped(),
                     need.detail.toHtmlEscaped());
  for (const QString& line : answer.way + QStringList{next})
    if (!line.isEmpty()) html += QStringLiteral("<p>%1</p>").arg(line.toHtmlEscaped());
  html += QStringLiteral("<p><small>%1 %2<br>%3</small></p>")
              .arg(DeskWords::tr("As known on %1.")
                       .arg(long_day(session.known().value_or(session.now()), session.zone())),
                   ledger_words(session).toHtmlEscaped(), caution().toHtmlEscaped());
  return html;
}

Expected<QString> print_answer(Session& session, const QString& name, const DeskAnswer& answer,
                               const QString& next) {
  return print_html(session, name, DeskWords::tr("Answer for %1").arg(name),
                    answer_sheet(session, name, answer, next))
      .map([&](const QString& path) {
        return path.isEmpty() ? DeskWords::tr("Printed for %1.").arg(name)
                              : DeskWords::tr("No printer is set up; written to %1.").arg(path);
      });
}

}  // namespace wm::app
