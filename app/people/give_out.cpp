// Giving somebody all that the shop holds about them: a paper to read, and a file for another program.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStandardPaths>

#include "app/people/people_page.h"
#include "app/people/person_paper.h"
#include "app/print/own_file.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"
#include "core/time/text.h"
#include "db/export/person_export.h"

namespace wm::app {
namespace {

/// A file's name that says whose it is and when it was made, whatever the name has in it.
QString file_name(const Session& session, const PersonId& person) {
  QString name = person_paper_name(session, person) + '-' +
                 QString::fromStdString(to_text(session.zone().day(session.now())));
  static const QRegularExpression others("[^\\w]+", QRegularExpression::UseUnicodePropertiesOption);
  return name.replace(others, "-");
}

}  // namespace

void PeoplePage::give_out(const db::Person& person) {
  const QString name = person_name(person);
  auto* form = new Form(tr("All that is held about %1").arg(name), tr("Write both files"));
  form->say(
      tr("Two files are written: a PDF to read or print, with details, what may be used and why, and every "
         "record; and the same as JSON, with which the records can be shown to be in the ledger. They hold "
         "birth date and notes: give them to %1 and to nobody else.")
          .arg(name));
  auto* folder =
      form->line(tr("Folder"), "folder", QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
  auto* choose = new KeyButton(tr("Choose the folder"), QKeySequence("Ctrl+O"));
  choose->setObjectName("choose");
  connect(choose, &QPushButton::clicked, form, [this, folder] {
    const QString chosen =
        QFileDialog::getExistingDirectory(this, tr("A folder for the files"), folder->text());
    if (!chosen.isEmpty()) folder->setText(chosen);
  });
  form->add(choose);
  connect(form, &Form::saved, this, [this, form, folder, id = person.id] {
    const QString where = folder->text().trimmed();
    if (where.isEmpty() || !QFileInfo(where).isDir())
      return form->show_problem(Problem{tr("folder").toStdString(),
                                        tr("There is no such folder").toStdString(),
                                        tr("Choose one that is there").toStdString()});
    const auto written = write_out(id, where);
    if (!written) return form->show_problem(written.error());
    panel_->close_form();
    emit tell(tr("Written: %1. Give both files to nobody else.").arg(*written));
  });
  panel_->show_form(form);
}

Expected<QString> PeoplePage::write_out(const PersonId& person, const QString& folder) {
  const QString path = QDir(folder).filePath(file_name(session(), person));
  const auto json = db::export_person(session().store(), person);
  if (!json) return tl::unexpected(json.error());
  if (const auto kept = write_own_file(path + ".json", *json, true); !kept)
    return tl::unexpected(kept.error());
  return write_person_pdf(session(), person, path + ".pdf", paper_size()).map([&path](int) {
    return tr("%1 and %2").arg(path + ".pdf", path + ".json");
  });
}

}  // namespace wm::app
