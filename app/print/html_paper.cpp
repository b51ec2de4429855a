#include "app/print/html_paper.h"

#include <QCoreApplication>
#include <QDir>
#include <QPrinter>
#include <QPrinterInfo>
#include <QStandardPaths>
#include <QTextDocument>

#include "app/print/own_file.h"
#include "app/print/paper_words.h"

namespace wm::app {
namespace {

struct HtmlPaper {
  Q_DECLARE_TR_FUNCTIONS(HtmlPaper)
};

QString pdf_path(const QString& name) {
  const QDir folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
  folder.mkpath(".");
  return folder.filePath(as_file_name(name) + ".pdf");
}

}  // namespace

Expected<QString> print_laid(Session& session, const QString& file_name, const PaperText& text,
                             const LaidText& laid, const std::optional<Numbered>& blank) {
  QString path;
  if (QPrinterInfo::defaultPrinter().isNull()) {
    path = pdf_path(file_name);
    if (const auto pages = write_pdf(path, text, laid.pages, laid.draw); !pages)
      return tl::unexpected(pages.error());
  } else {
    QPrinter printer(QPrinter::HighResolution);
    set_up(printer, text);
    if (!paint_paper(printer, text, laid.pages, laid.draw))
      return tl::unexpected(Problem{printer.printerName().toStdString(),
                                    HtmlPaper::tr("The printer did not take the paper").toStdString(),
                                    HtmlPaper::tr("See whether it is on").toStdString()});
  }
  const auto noted =
      note_printed(session, text.title, laid.pages, paper_words(text, laid.pages, laid.draw), blank);
  if (!noted) return tl::unexpected(noted.error());
  return path;
}

Expected<QString> print_html(Session& session, const QString& file_name, const QString& title,
                             const QString& html) {
  QTextDocument document;
  document.setHtml(html);
  QPrinter printer(QPrinter::HighResolution);
  const QString path = QPrinterInfo::defaultPrinter().isNull() ? pdf_path(file_name) : QString();
  if (!path.isEmpty()) {
    QFile::remove(path);  // so that what is there afterwards is this one
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(path);
  }
  document.print(&printer);
  if (!path.isEmpty() && !QFileInfo::exists(path))
    return tl::unexpected(
        Problem{"print", HtmlPaper::tr("The sheet could not be written to %1").arg(path).toStdString(),
                HtmlPaper::tr("See whether that folder can be written to").toStdString()});
  if (auto noted = note_printed(session, title, document.pageCount(), document.toPlainText()); !noted)
    return tl::unexpected(noted.error());
  return path;
}

}  // namespace wm::app
