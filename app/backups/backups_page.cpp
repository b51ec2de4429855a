#include "app/backups/backups_page.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QStackedWidget>
#include <algorithm>

#include "app/backups/backup_words.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_search.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

/// A path that may go on in the next line after each of its parts, so that a long name widens nothing.
QString breakable(const QString& path) {
  QString out;
  for (const QChar c : path) {
    out += c;
    if (QStringLiteral("/-_.").contains(c)) out += QChar(0x200B);
  }
  return out;
}

QString words(const std::string& text) { return QString::fromStdString(text); }

Problem problem(const QString& where, const QString& what, const QString& remedy) {
  return {where.toStdString(), what.toStdString(), remedy.toStdString()};
}

}  // namespace

BackupsPage::BackupsPage(Session& session, QWidget* parent)
    : ListPage(session, tr("day or file"),
               {{tr("Made"), 275}, {tr("File"), 0}, {tr("Size"), 100}, {tr("Entries"), 100}}, parent),
      restore_(new RestoreView(session)) {
  views_->addWidget(restore_);
  Backups& backups = session.backups();
  connect(&backups, &Backups::made, this, &BackupsPage::tell_made);
  connect(&backups, &Backups::failed, this, &Page::tell_problem);
  connect(restore_, &RestoreView::left, this, &BackupsPage::leave_restore);
}

/// Without a row nothing is chosen anew, and the panel says something all the same.
void BackupsPage::refresh() {
  ListPage::refresh();
  if (list_->rows().empty()) describe_again();
}

void BackupsPage::open(const Place&) {
  panel_->close_form();
  leave_restore();
  session().backups().look();
}

void BackupsPage::leave_restore() {
  views_->setCurrentIndex(0);
  put_cursor_back();
}

bool BackupsPage::by_manager() const { return session().role() == db::Role::manager; }

const db::BackupFile* BackupsPage::file(const QString& id) const {
  const auto& files = session().backups().files();
  const auto found = std::ranges::find(files, id.toStdString(), &db::BackupFile::path);
  return found == files.end() ? nullptr : &*found;
}

std::vector<ListRow> BackupsPage::rows(const QString& typed) {
  const TypedWords wanted(typed);
  const Zone& zone = session().zone();
  std::vector<ListRow> rows;
  for (const db::BackupFile& file : session().backups().files()) {
    const QString made =
        tr("%1, %2", "day, time").arg(long_day(file.made, zone), clock_time(file.made, zone));
    const QString name = QFileInfo(words(file.path)).fileName();
    if (!wanted.in(made + ' ' + name)) continue;
    rows.push_back({words(file.path),
                    {{made, {}},
                     {name, {}},
                     {QLocale().formattedDataSize(file.bytes, 1, QLocale::DataSizeSIFormat), {}},
                     {QLocale().toString(static_cast<qlonglong>(file.commits)), {}}},
                    false});
  }
  const QString& folder = session().backups().settings().folder;
  count_->setText(folder.isEmpty() ? QString()
                                   : tr("Backups: %1, in %2.").arg(QString::number(rows.size()), folder));
  return rows;
}

void BackupsPage::describe(const QString& id) {
  panel_->start();
  const db::BackupFile* chosen = file(id);
  if (chosen)
    describe_file(*chosen);
  else
    panel_->heading(session().backups().settings().folder.isEmpty() ? tr("No backups are made yet")
                                                                    : tr("No backup here"));
  const Backups& backups = session().backups();
  if (backups.problem()) panel_->paragraph(problem_sentence(*backups.problem()));
  panel_->section(tr("What can be done"));
  if (backups.making())
    panel_->paragraph(tr("A backup is being made."));
  else if (!backups.settings().folder.isEmpty() && session().seated())
    panel_->button(tr("Back up now"), QKeySequence("Ctrl+B"), [this] { session().backups().back_up_now(); })
        ->setObjectName("back_up");
  if (chosen && by_manager())
    panel_
        ->button(tr("Put this one back"), QKeySequence("Ctrl+R"),
                 [this, copy = *chosen] {
                   views_->setCurrentWidget(restore_);
                   restore_->ask(copy);
                 })
        ->setObjectName("put_back");
  describe_settings();
}

void BackupsPage::describe_file(const db::BackupFile& file) {
  const Zone& zone = session().zone();
  panel_->heading(
      tr("Backup of %1, %2", "day, time").arg(short_day(file.made, zone), clock_time(file.made, zone)));
  panel_->paragraph(tr("When it was made it was read back from the disk and found equal to the shop."));
  panel_->line(tr("File"), breakable(words(file.path)));
  panel_->line(tr("Size"), QLocale().formattedDataSize(file.bytes, 1, QLocale::DataSizeSIFormat));
  panel_->line(tr("Entries"), QLocale().toString(static_cast<qlonglong>(file.commits)));
}

void BackupsPage::describe_settings() {
  const BackupSettings& settings = session().backups().settings();
  panel_->section(tr("How they are made"));
  if (!settings.folder.isEmpty()) {
    panel_->line(tr("Folder"), breakable(settings.folder));
    panel_->line(tr("By itself"), backup_rhythm(settings.every_days));
    panel_->line(tr("The desk is told"), tr("after %n days without one", "", settings.remind_days));
    panel_->line(tr("Kept"), tr("the last of 7 days, 5 weeks and 12 months"));
  } else {
    panel_->paragraph(
        tr("A backup is a copy of the whole shop in a folder of your choice, checked when it is made."));
  }
  if (by_manager())
    panel_
        ->button(settings.folder.isEmpty() ? tr("Set up") : tr("Change this"), QKeySequence("Ctrl+T"),
                 [this] { set_up(); })
        ->setObjectName("set_up");
  else
    panel_->quiet(tr("A manager sets this up."));
}

void BackupsPage::tell_made(const db::BackupFile& file) {
  emit tell(tr("Backup made, read back and equal to the shop: %1.").arg(backup_file_words(file)));
}

void BackupsPage::set_up() {
  const BackupSettings& now = session().backups().settings();
  auto* form = new Form(tr("How backups are made"), tr("Keep this"));
  auto* folder = form->line(tr("Folder"), "folder", now.folder);
  auto* choose = new KeyButton(tr("Choose the folder"), QKeySequence("Ctrl+O"));
  choose->setObjectName("choose");
  connect(choose, &QPushButton::clicked, form, [this, folder] {
    const QString chosen =
        QFileDialog::getExistingDirectory(this, tr("A folder for backups"), folder->text());
    if (!chosen.isEmpty()) folder->setText(chosen);
  });
  form->add(choose);
  auto* every = form->choice(tr("By itself, while the program is open"), "every",
                             {{"1", backup_rhythm(1)}, {"7", backup_rhythm(7)}, {"0", backup_rhythm(0)}});
  every->setCurrentIndex(std::max(0, every->findData(QString::number(now.every_days))));
  auto* remind = form->line(tr("Days without one after which the desk is told"), "remind",
                            QString::number(now.remind_days));
  form->say(tr(
      "Best is another disk, in another room: where the fire is not. A backup holds everything that the shop "
      "knows of people; keep it as you keep their papers."));
  connect(form, &Form::saved, this, [this, form, folder, every, remind] {
    const auto settings =
        typed_settings(folder->text().trimmed(), every->currentData().toInt(), remind->text().trimmed());
    if (!settings) return form->show_problem(settings.error());
    panel_->close_form();
    session().backups().set(*settings);
    emit tell(tr("Backups go to %1 from now on.").arg(settings->folder));
  });
  panel_->show_form(form);
}

Expected<BackupSettings> BackupsPage::typed_settings(const QString& folder, int every,
                                                     const QString& remind) const {
  const QFileInfo place(folder);
  if (folder.isEmpty() || !place.isAbsolute() || !place.isDir())
    return tl::unexpected(
        problem(tr("folder"), tr("There is no such folder"), tr("Choose one that is there")));
  if (!place.isWritable())
    return tl::unexpected(problem(tr("folder"), tr("Nothing can be written into this folder"),
                                  tr("Choose another, or ask for the right to write to it")));
  bool number = false;
  const int days = remind.toInt(&number);
  if (!number || days < std::max(1, every + (every > 0)) || days > 366)
    return tl::unexpected(problem(tr("days"),
                                  tr("These days are fewer than lie between two backups, or no number"),
                                  tr("Type a number of days greater than that, up to 366")));
  return BackupSettings{QDir::cleanPath(folder), every, days};
}

}  // namespace wm::app
