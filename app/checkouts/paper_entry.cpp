#include "app/checkouts/paper_entry.h"

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>
#include <cstdlib>

#include "app/checkouts/result_words.h"
#include "app/checkouts/sheet_view.h"
#include "app/diary/bookings.h"
#include "app/hours/moment.h"
#include "app/hours/reading.h"
#include "app/hours/weekly.h"
#include "app/theme/theme.h"
#include "app/widgets/key_button.h"
#include "app/words/labels.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

tl::unexpected<Problem> missing(QWidget* field, const QString& where, const QString& what,
                                const QString& remedy) {
  field->setFocus();
  return mistyped(where, what, remedy);
}

QLabel* add(QVBoxLayout* down, const QString& words, QWidget* field, QWidget* named = nullptr) {
  auto* name = new QLabel(words);
  name->setProperty("role", "quiet");
  QWidget* const cursor = named ? named : field;
  name->setBuddy(cursor);
  cursor->setAccessibleName(QString(words).remove('&'));
  down->addWidget(name);
  down->addWidget(field);
  return name;
}

/// The check-out of that member whose sheet was the same, on the same unit, on that day; of several the one
/// nearest in time. Null where there is none.
const db::Entry* performance(const Session& session, const PersonId& member, const Sheet& sheet,
                             const MachineId& unit, Instant at) {
  const db::Entry* nearest = nullptr;
  for (const db::Entry* entry : session.store().of_kind("marks")) {
    const auto& marks = *db::as<db::SheetMarks>(entry->fact);
    const db::Entry* signed_one = session.entry(marks.checkout);
    const auto* checkout = signed_one && !signed_one->voided ? db::as<Checkout>(signed_one->fact) : nullptr;
    if (!checkout || entry->voided || session.joined(checkout->person) != session.joined(member) ||
        marks.machine != unit || marks.sheet != sheet.name || marks.sheet_revision != sheet.revision ||
        session.zone().day(signed_one->at) != session.zone().day(at))
      continue;
    const auto away = [&](const db::Entry& one) { return std::abs(one.at.seconds - at.seconds); };
    if (!nearest || away(*signed_one) < away(*nearest)) nearest = signed_one;
  }
  return nearest;
}

}  // namespace

PaperEntry::PaperEntry(Session& session, SheetBook& book, QWidget* parent)
    : QWidget(parent),
      session_(session),
      book_(book),
      form_(new QLineEdit),
      time_(new QLineEdit),
      restrictions_(new QLineEdit),
      note_(new QLineEdit),
      sheet_(new QComboBox),
      unit_(new QComboBox),
      outcome_(new QComboBox),
      member_(new PersonBox(session)),
      assessor_(new PersonBox(session)),
      second_(new PersonBox(session)),
      day_(new DateField(tr("day", "on which it was"))),
      countersigned_(new QCheckBox(tr("The &member signed the paper too"))),
      apart_(new QCheckBox(tr("A second assessor's, mar&ked apart"))),
      said_(new QLabel),
      how_(new QLabel),
      lines_(new SheetView) {
  auto* across = new QHBoxLayout(this);
  across->setContentsMargins(18, 14, 18, 12);
  across->setSpacing(18);
  across->addWidget(fields(), 3);
  across->addWidget(paper(), 7);
  connect(form_, &QLineEdit::editingFinished, this, &PaperEntry::choose_printed);
  connect(sheet_, &QComboBox::currentIndexChanged, this, &PaperEntry::show_sheet);
  connect(lines_, &SheetView::marked, this, &PaperEntry::show_kind);
  connect(day_, &DateField::day_changed, this, &PaperEntry::show_kind);
  connect(time_, &QLineEdit::editingFinished, this, &PaperEntry::show_kind);
}

QWidget* PaperEntry::fields() {
  auto* box = new QWidget;
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(3);
  auto* heading = new QLabel(tr("From a paper"));
  heading->setProperty("role", "large");
  down->addWidget(heading);
  form_->setObjectName("form");
  form_->setMaxLength(12);
  form_->setPlaceholderText(tr("at the foot of the paper"));
  add(down, tr("&Number of the paper"), form_);
  apart_->setObjectName("paper_apart");
  down->addWidget(apart_);
  connect(apart_, &QCheckBox::toggled, this, &PaperEntry::show_kind);
  add(down, tr("Run &sheet"), sheet_);
  sheet_->setObjectName("paper_sheet");
  lines_->setObjectName("paper_lines");
  add(down, tr("Membe&r"), member_, member_->field());
  member_->field()->setObjectName("paper_member");
  add(down, tr("&Unit"), unit_);
  unit_->setObjectName("paper_unit");
  auto* when = new QWidget;
  auto* beside = new QHBoxLayout(when);
  beside->setContentsMargins(0, 0, 0, 0);
  day_->setObjectName("paper_day");
  time_->setObjectName("paper_time");
  time_->setPlaceholderText(tr("17:30", "a time as it is typed"));
  time_->setAccessibleName(tr("At what time"));
  beside->addWidget(day_, 3);
  beside->addWidget(time_, 2);
  add(down, tr("&Day and time"), when, day_);
  add(down, tr("&Assessor, who signed the paper"), assessor_, assessor_->field());
  assessor_->field()->setObjectName("paper_assessor");
  of_two_ = {add(down, tr("Second assessor, &who signed it too"), second_, second_->field()), second_};
  second_->field()->setObjectName("paper_second");
  outcome_->setObjectName("paper_outcome");
  of_the_first_ = {add(down, tr("Resu&lt"), outcome_), outcome_, countersigned_, restrictions_};
  for (const Outcome each : {Outcome::passed, Outcome::failed, Outcome::stopped})
    outcome_->addItem(outcome_words(each), static_cast<int>(each));
  countersigned_->setObjectName("paper_countersigned");
  down->addWidget(countersigned_);
  restrictions_->setObjectName("paper_restrictions");
  of_the_first_.push_back(
      add(down, tr("Restrictions, a semi&colon between; never a medical reason"), restrictions_));
  note_->setObjectName("paper_note");
  add(down, tr("N&otes"), note_);
  down->addStretch(1);
  return box;
}

QWidget* PaperEntry::paper() {
  auto* box = new QWidget;
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  how_->setProperty("role", "quiet");
  how_->setWordWrap(true);
  said_->setObjectName("paper_said");
  said_->setWordWrap(true);
  said_->setFont(type(TypeSize::body, true));
  down->addWidget(how_);
  down->addWidget(lines_, 1);
  down->addWidget(said_);
  auto* across = new QHBoxLayout;
  auto* leave = new KeyButton(tr("Back to the one-on-ones"), QKeySequence("Esc"));
  auto* enter = new KeyButton(tr("Enter this paper"), Qt::CTRL | Qt::Key_Return, true);
  enter->setObjectName("enter_paper");
  across->addStretch(1);
  across->addWidget(leave);
  across->addWidget(enter);
  down->addLayout(across);
  connect(leave, &QPushButton::clicked, this, &PaperEntry::left);
  connect(enter, &QPushButton::clicked, this, &PaperEntry::enter);
  return box;
}

void PaperEntry::begin() {
  for (QLineEdit* field : {form_, time_, restrictions_, note_}) field->clear();
  for (PersonBox* box : {member_, assessor_, second_}) box->set_person(std::nullopt);
  day_->set_today(session_.zone().day(session_.now()));
  day_->set_day(std::nullopt);
  outcome_->setCurrentIndex(-1);
  countersigned_->setChecked(false);
  apart_->setChecked(false);
  fill_sheets();
  form_->setFocus();
}

void PaperEntry::fill_sheets() {
  sheet_->clear();
  sheets_ = book_.on_paper();
  for (std::size_t i = 0; i < sheets_.size(); ++i) {
    const Sheet& one = *sheets_[i];
    const QString title =
        one.title.empty() ? class_label(one.machine_class) : QString::fromStdString(one.title);
    sheet_->addItem(tr("%1, revision %2").arg(title).arg(one.revision), static_cast<int>(i));
  }
  sheet_->setCurrentIndex(-1);
  show_sheet();
}

const Sheet* PaperEntry::sheet() const {
  return sheet_->currentIndex() < 0 ? nullptr
                                    : sheets_[static_cast<std::size_t>(sheet_->currentData().toInt())];
}

void PaperEntry::choose_printed() {
  for (const db::Entry* entry : session_.store().of_kind("printed")) {
    const auto& printed = *db::as<db::Printed>(entry->fact);
    if (printed.form != number() || printed.sheet.empty()) continue;
    const auto found = std::ranges::find_if(sheets_, [&](const Sheet* sheet) {
      return sheet->name == printed.sheet && sheet->revision == printed.sheet_revision;
    });
    if (found != sheets_.end() && *found != sheet())
      sheet_->setCurrentIndex(sheet_->findData(static_cast<int>(found - sheets_.begin())));
  }
}

void PaperEntry::show_sheet() {
  unit_->clear();
  const Sheet* chosen = sheet();
  lines_->show_sheet(chosen, {});
  show_kind();
  const std::vector<Unit> all = units(session_);
  for (const Unit& unit : all)
    if (chosen && unit.machine_class == chosen->machine_class)
      unit_->addItem(unit_label(all, unit.id), QString::fromStdString(unit.id));
  unit_->setCurrentIndex(unit_->count() == 1 ? 0 : -1);
}

bool PaperEntry::asks_for_two() const {
  if (!sheet() || apart_->isChecked()) return false;
  const auto day = day_->typed();
  const int minute = read_minute(time_->text().trimmed()).value_or(12 * 60);
  const Instant at = day ? session_.zone().start(*day) + std::int64_t{60} * minute : session_.now();
  return session_.two_check_out(sheet()->machine_class, at);
}

void PaperEntry::show_kind() {
  lines_->set_first_only(apart_->isChecked());
  how_->setText(
      apart_->isChecked()
          ? tr("Mark the first showing of each line as it is marked on the paper.  1 shown · 2 shown "
               "when asked · 3 not shown · 0 no mark. The paper says who signed it; the journal says "
               "who typed it. Keep the paper.")
          : tr("Mark each line as it is marked on the paper.  1 shown · 2 shown when asked · 3 not "
               "shown · 0 no mark · M the measure. The paper says who signed it; the journal says "
               "who typed it. Keep the paper."));
  const bool two = asks_for_two();
  for (QWidget* each : of_two_) each->setVisible(two);
  for (QWidget* each : of_the_first_) each->setVisible(!apart_->isChecked());
  said_->setText(!sheet() ? tr("Choose which run sheet the paper is.")
                 : apart_->isChecked()
                     ? tr("It changes nothing in what the member may use; it tells how far assessors agree.")
                     : result_words(lines_->result()));
}

/// As it was printed, however it was typed.
std::string PaperEntry::number() const { return form_->text().trimmed().toUpper().toStdString(); }

Expected<void> PaperEntry::check_paper() {
  const QString choose = tr("Choose it from the list");
  if (number().empty())
    return missing(form_, tr("number"), tr("The number of the paper is missing"),
                   tr("It stands at the foot of each page"));
  if (!sheet()) return missing(sheet_, tr("run sheet"), tr("No run sheet is chosen"), choose);
  if (!member_->person())
    return missing(member_->field(), tr("member"), tr("Nobody is chosen"),
                   tr("Type a part of the name, then Enter"));
  if (unit_->currentIndex() < 0) return missing(unit_, tr("unit"), tr("No unit is chosen"), choose);
  if (!assessor_->person())
    return missing(assessor_->field(), tr("assessor"), tr("It is missing who signed the paper"),
                   tr("Type a part of the name, then Enter"));
  return {};
}

Expected<db::EnterPaperSheet> PaperEntry::read() {
  if (auto fine = check_paper(); !fine) return tl::make_unexpected(fine.error());
  const Sheet* of = sheet();
  db::EnterPaperSheet out;
  out.form = number();
  if (outcome_->currentIndex() < 0)
    return missing(outcome_, tr("result"), tr("No result is chosen"), tr("Choose it from the list"));
  const auto measured = lines_->measured();
  if (!measured) return tl::make_unexpected(measured.error());
  db::SignCheckout& sheet = out.sheet;
  const auto outcome = static_cast<Outcome>(outcome_->currentData().toInt());
  if (!may_sign(lines_->result(), outcome))
    return missing(
        lines_, tr("result"),
        tr("The marks do not come to %1: %2").arg(outcome_words(outcome), result_words(lines_->result())),
        tr("Look at the paper again"));
  sheet.checkout = {*member_->person(), of->checkout, of->revision, outcome, *assessor_->person()};
  sheet.machine = unit_->currentData().toString().toStdString();
  sheet.sheet = of->name;
  sheet.sheet_revision = of->revision;
  sheet.marks = lines_->on_sheet().marks;
  sheet.again = lines_->on_sheet().again;
  sheet.measured = *measured;
  sheet.restrictions = restrictions_in(restrictions_->text());
  if (asks_for_two()) {
    if (!second_->person())
      return missing(second_->field(), tr("second assessor"),
                     tr("Two assessors sign a check-out on this machine, and one is named"),
                     tr("Type a part of the second one's name, then Enter"));
    sheet.second = db::SecondAssessor{*second_->person(), {}};
  }
  if (countersigned_->isChecked()) sheet.countersign = db::Countersign{db::Hand::paper, {}};
  return out;
}

Expected<db::ScoredApart> PaperEntry::read_apart(Instant at) {
  const Sheet& of = *sheet();
  const db::Entry* signed_one =
      performance(session_, *member_->person(), of, unit_->currentData().toString().toStdString(), at);
  if (!signed_one)
    return missing(
        day_, tr("day"),
        tr("No check-out of %1 on this sheet and unit was signed that day")
            .arg(name_of(session_, *member_->person())),
        tr("Look at the paper again; where the first assessor's is a paper too, enter that one first"));
  return db::ScoredApart{signed_one->id, *assessor_->person(),     of.name,
                         of.revision,    lines_->on_sheet().marks, number()};
}

std::optional<Instant> PaperEntry::moment() {
  const auto at = read_moment(session_, *day_, *time_);
  if (!at) {
    emit tell_problem(at.error());
    return std::nullopt;
  }
  if (!*at) {
    day_->setFocus();
    emit tell_problem({tr("day").toStdString(), tr("It is missing when it was").toStdString(),
                       tr("Type the day and the time that stand on the paper").toStdString()});
  }
  return *at;
}

void PaperEntry::enter_apart(Instant at) {
  auto apart = read_apart(at);
  if (!apart) return emit tell_problem(apart.error());
  const QString who = name_of(session_, apart->assessor), form = QString::fromStdString(apart->form);
  const QString whose = name_of(session_, *member_->person());
  const auto done =
      session_.commit(db::EnterShopFact{*std::move(apart)}, at, note_->text().trimmed().toStdString(), true);
  if (!done) return emit tell_problem(done.error());
  emit tell(
      tr("Paper %1 entered: marked apart by %2; what %3 may use stays as it was.").arg(form, who, whose));
  begin();
}

void PaperEntry::enter() {
  if (apart_->isChecked()) {
    if (auto fine = check_paper(); !fine) return emit tell_problem(fine.error());
    if (const auto at = moment()) enter_apart(*at);
    return;
  }
  auto paper = read();
  if (!paper) return emit tell_problem(paper.error());
  const auto at = moment();
  if (!at) return;
  const QString name = name_of(session_, paper->sheet.checkout.person);
  const QString outcome = outcome_words(paper->sheet.checkout.outcome);
  const QString form = QString::fromStdString(paper->form);
  const PersonId person = paper->sheet.checkout.person;
  const TargetName target = sheet()->machine_class;
  const Rungs before = rungs_on(session_, person, target);
  const auto done = session_.commit(*std::move(paper), *at, note_->text().trimmed().toStdString(), true);
  if (!done) return emit tell_problem(done.error());
  emit tell(tr("Paper %1 entered: the check-out of %2 was %3.").arg(form, name, outcome) + ' ' +
            changed_words(session_, person, target, before));
  begin();
}

}  // namespace wm::app
