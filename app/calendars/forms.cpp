#include "app/calendars/forms.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QStandardPaths>

#include "app/calendars/tr.h"
#include "app/diary/bookings.h"
#include "app/print/own_file.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"
#include "core/calendar/busy.h"

namespace wm::app {
namespace {

constexpr int days_taken = 400;
constexpr qint64 most_bytes_read = 8'000'001;  // one more than is taken

Problem problem(const QString& where, const QString& what, const QString& remedy) {
  return {where.toStdString(), what.toStdString(), remedy.toStdString()};
}

/// A button beside a field that opens the system's own window to choose with.
void add_chooser(Form* form, const QString& words, const std::function<QString()>& ask, QLineEdit* field) {
  auto* choose = new KeyButton(words, QKeySequence("Ctrl+O"));
  choose->setObjectName("choose");
  QObject::connect(choose, &QPushButton::clicked, form, [ask, field] {
    if (const QString chosen = ask(); !chosen.isEmpty()) field->setText(chosen);
  });
  form->add(choose);
}

/// The files that were written.
Expected<QStringList> save(Session& session, const Whose& whose, const QString& folder) {
  const QString path = QDir(folder).filePath(as_file_name(whose_words(session, whose)));
  QStringList out{path + ".ics"};
  if (const auto kept = write_own_file(out[0], published(session, whose), true); !kept)
    return tl::unexpected(kept.error());
  const std::string off = called_off(session, whose);
  if (off.empty()) return out;
  out << path + CalendarWords::tr("-called-off", "the end of a file's name") + ".ics";
  return write_own_file(out[1], off, true).map([&] { return out; });
}

Expected<std::string> read_file(const QString& path) {
  QFile file(path);
  if (!file.open(QFile::ReadOnly))
    return tl::unexpected(problem(CalendarWords::tr("file"), CalendarWords::tr("It can't be opened"),
                                  CalendarWords::tr("Choose a calendar that is there")));
  return file.read(most_bytes_read).toStdString();
}

}  // namespace

QString mistakes_words(const std::vector<Problem>& mistakes) {
  constexpr std::size_t most = 4;
  QStringList out;
  for (std::size_t i = 0; i < std::min(most, mistakes.size()); ++i)
    out << CalendarWords::tr("%1: %2", "where in the file; what is wrong, and what to do")
               .arg(QString::fromStdString(mistakes[i].where), problem_sentence(mistakes[i]));
  if (mistakes.size() > most) out << CalendarWords::tr("And %1 mistakes more.").arg(mistakes.size() - most);
  out << CalendarWords::tr("Nothing was taken in.");
  return out.join('\n');
}

Form* save_calendar_form(Session& session, const Whose& whose, const Tell& done) {
  auto* form = new Form(CalendarWords::tr("One-on-ones of %1 as a calendar").arg(whose_words(session, whose)),
                        CalendarWords::tr("Write the file"));
  form->say(CalendarWords::tr(
      "The file is iCalendar, which other calendars take in. Taken in again later it brings what was moved "
      "up to date; what was called off is marked so, and stands in a second file for calendars that take it "
      "out by that. Both have names in them: give them to nobody whom they do not concern."));
  QLineEdit* folder = form->line(CalendarWords::tr("Folder"), "folder",
                                 QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
  add_chooser(
      form, CalendarWords::tr("Choose the folder"),
      [form, folder] {
        return QFileDialog::getExistingDirectory(form, CalendarWords::tr("A folder for the file"),
                                                 folder->text());
      },
      folder);
  QObject::connect(form, &Form::saved, form, [form, folder, &session, whose, done] {
    const QString where = folder->text().trimmed();
    if (where.isEmpty() || !QFileInfo(where).isDir())
      return form->show_problem(problem(CalendarWords::tr("folder"),
                                        CalendarWords::tr("There is no such folder"),
                                        CalendarWords::tr("Choose one that is there")));
    const auto written = save(session, whose, where);
    if (!written) return form->show_problem(written.error());
    done(CalendarWords::tr("Written: %1.").arg(written->join(CalendarWords::tr(" and ", "between files"))));
  });
  return form;
}

Form* take_calendar_form(Session& session, const PersonId& person, const Tell& done) {
  const QString name = name_of(session, person);
  auto* form = new Form(CalendarWords::tr("When %1 is busy").arg(name), CalendarWords::tr("Take it in"));
  form->say(CalendarWords::tr("Choose an iCalendar file that %1 saved. The times at which they are busy are "
                              "kept, for %2 days from "
                              "now, in place of those taken in before; with what they are busy is not.")
                .arg(name)
                .arg(days_taken));
  QLineEdit* file = form->line(CalendarWords::tr("File"), "file");
  add_chooser(
      form, CalendarWords::tr("Choose the file"),
      [form] {
        return QFileDialog::getOpenFileName(form, CalendarWords::tr("A calendar"), {},
                                            CalendarWords::tr("Calendars (*.ics)"));
      },
      file);
  QObject::connect(form, &Form::saved, form, [form, file, &session, person, name, done] {
    const auto text = read_file(file->text().trimmed());
    if (!text) return form->show_problem(text.error());
    const Interval within{session.now(), session.now() + std::int64_t{86400} * days_taken};
    const auto times = calendar::read_busy(*text, session.zone(), within);
    if (!times) return form->show_problem(mistakes_words(times.error()));
    db::Busy busy{person, within.from, within.to, {}};
    for (const Interval& each : *times) busy.parts.push_back({each.from, each.to});
    const std::size_t count = busy.parts.size();
    if (const auto entered = session.commit(db::EnterShopFact{std::move(busy)}); !entered)
      return form->show_problem(entered.error());
    done(CalendarWords::tr("Busy times of %1 taken in: %2.").arg(name).arg(count));
  });
  return form;
}

}  // namespace wm::app
