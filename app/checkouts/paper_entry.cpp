#include "app/checkouts/paper_entry.h"

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

#include "app/checkouts/result_words.h"
#include "app/checkouts/sheet_view.h"
#include "app/diary/bookings.h"
#include "app/hours/moment.h"
#include "app/hours/reading.h"
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

void add(QVBoxLayout* down, const QString& words, QWidget* field, QWidget* named = nullptr) {
  auto* name = new QLabel(words);
  name->setProperty("role", "quiet");
  QWidget* const cursor = named ? named : field;
  name->setBuddy(cursor);
  cursor->setAccessibleName(QString(words).remove('&'));
  down->addWidget(name);
  down->addWidget(field);
}

}  // namespace

PaperEntry::PaperEntry(Session& session, const std::vector<Sheet>& sheets, QWidget* parent)
    : QWidget(parent),
      session_(session),
      sheets_(sheets),
      form_(new QLineEdit),
      time_(new QLineEdit),
      restrictions_(new QLineEdit),
      note_(new QLineEdit),
      sheet_(new QComboBox),
      unit_(new QComboBox),
      outcome_(new QComboBox),
      member_(new PersonBox(session)),
      assessor_(new PersonBox(session)),
      day_(new DateField(tr("day", "on which it was"))),
      countersigned_(new QCheckBox(tr("The &member signed the paper too"))),
      said_(new QLabel),
      lines_(new SheetView) {
  auto* across = new QHBoxLayout(this);
  across->setContentsMargins(18, 14, 18, 12);
  across->setSpacing(18);
  across->addWidget(fields(), 3);
  across->addWidget(paper(), 7);
  connect(sheet_, &QComboBox::currentIndexChanged, this, &PaperEntry::show_sheet);
  connect(lines_, &SheetView::marked, this, [this] { said_->setText(result_words(lines_->result())); });
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
  outcome_->setObjectName("paper_outcome");
  add(down, tr("Resu&lt"), outcome_);
  for (const Outcome each : {Outcome::passed, Outcome::failed, Outcome::stopped})
    outcome_->addItem(outcome_words(each), static_cast<int>(each));
  countersigned_->setObjectName("paper_countersigned");
  down->addWidget(countersigned_);
  restrictions_->setObjectName("paper_restrictions");
  add(down, tr("Restrictions, a semi&colon between; never a medical reason"), restrictions_);
  note_->setObjectName("paper_note");
  add(down, tr("N&otes"), note_);
  down->addStretch(1);
  return box;
}

QWidget* PaperEntry::paper() {
  auto* box = new QWidget;
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  auto* how = new QLabel(
      tr("Mark each line as it is marked on the paper.  1 shown · 2 shown when asked · 3 not shown · "
         "0 no mark · M the measure. The paper says who signed it; the journal says who typed it. "
         "Keep the paper. What a second assessor marked apart on paper is not taken in: they mark it here, "
         "on its day, with their own PIN."));
  how->setProperty("role", "quiet");
  how->setWordWrap(true);
  said_->setObjectName("paper_said");
  said_->setWordWrap(true);
  said_->setFont(type(TypeSize::body, true));
  down->addWidget(how);
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
  for (PersonBox* box : {member_, assessor_}) box->set_person(std::nullopt);
  day_->set_today(session_.zone().day(session_.now()));
  day_->set_day(std::nullopt);
  outcome_->setCurrentIndex(-1);
  countersigned_->setChecked(false);
  fill_sheets();
  form_->setFocus();
}

void PaperEntry::fill_sheets() {
  sheet_->clear();
  for (std::size_t i = 0; i < sheets_.size(); ++i) {
    const Sheet& one = sheets_[i];
    const QString title =
        one.title.empty() ? class_label(one.machine_class) : QString::fromStdString(one.title);
    sheet_->addItem(tr("%1, revision %2").arg(title).arg(one.revision), static_cast<int>(i));
  }
  sheet_->setCurrentIndex(-1);
  show_sheet();
}

const Sheet* PaperEntry::sheet() const {
  return sheet_->currentIndex() < 0 ? nullptr
                                    : &sheets_[static_cast<std::size_t>(sheet_->currentData().toInt())];
}

void PaperEntry::show_sheet() {
  unit_->clear();
  const Sheet* chosen = sheet();
  lines_->show_sheet(chosen, {});
  said_->setText(chosen ? result_words(lines_->result()) : tr("Choose which run sheet the paper is."));
  const std::vector<Unit> all = units(session_);
  for (const Unit& unit : all)
    if (chosen && unit.machine_class == chosen->machine_class)
      unit_->addItem(unit_label(all, unit.id), QString::fromStdString(unit.id));
  unit_->setCurrentIndex(unit_->count() == 1 ? 0 : -1);
}

Expected<db::EnterPaperSheet> PaperEntry::read() {
  const QString choose = tr("Choose it from the list");
  db::EnterPaperSheet out;
  out.form = form_->text().trimmed().toUpper().toStdString();
  if (out.form.empty())
    return missing(form_, tr("number"), tr("The number of the paper is missing"),
                   tr("It stands at the foot of each page"));
  const Sheet* of = sheet();
  if (!of) return missing(sheet_, tr("run sheet"), tr("No run sheet is chosen"), choose);
  if (!member_->person())
    return missing(member_->field(), tr("member"), tr("Nobody is chosen"),
                   tr("Type a part of the name, then Enter"));
  if (unit_->currentIndex() < 0) return missing(unit_, tr("unit"), tr("No unit is chosen"), choose);
  if (!assessor_->person())
    return missing(assessor_->field(), tr("assessor"), tr("It is missing who signed the paper"),
                   tr("Type a part of the name, then Enter"));
  if (outcome_->currentIndex() < 0) return missing(outcome_, tr("result"), tr("No result is chosen"), choose);
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
  if (countersigned_->isChecked()) sheet.countersign = db::Countersign{db::Hand::paper, {}};
  return out;
}

void PaperEntry::enter() {
  auto paper = read();
  if (!paper) return emit tell_problem(paper.error());
  const auto at = read_moment(session_, *day_, *time_);
  if (!at) return emit tell_problem(at.error());
  if (!*at) {
    day_->setFocus();
    return emit tell_problem({tr("day").toStdString(), tr("It is missing when it was").toStdString(),
                              tr("Type the day and the time that stand on the paper").toStdString()});
  }
  const QString name = name_of(session_, paper->sheet.checkout.person);
  const QString outcome = outcome_words(paper->sheet.checkout.outcome);
  const QString form = QString::fromStdString(paper->form);
  const auto done = session_.commit(*std::move(paper), *at, note_->text().trimmed().toStdString(), true);
  if (!done) return emit tell_problem(done.error());
  emit tell(tr("Paper %1 entered: the check-out of %2 was %3.").arg(form, name, outcome));
  begin();
}

}  // namespace wm::app
