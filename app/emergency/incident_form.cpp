#include "app/emergency/incident_form.h"

#include <QGridLayout>

#include "app/emergency/block.h"
#include "app/emergency/units_list.h"
#include "app/hours/moment.h"
#include "app/hours/reading.h"
#include "app/words/words.h"
#include "core/rulebook/checkouts.h"

namespace wm::app {

namespace {

constexpr int lines_to_tell = 3;

tl::unexpected<Problem> missing(QWidget* field, const QString& what, const QString& remedy) {
  field->setFocus();
  return mistyped(QStringLiteral("choice"), what, remedy);
}

}  // namespace

IncidentForm::IncidentForm(Session& session, QWidget* parent)
    : QFrame(parent),
      session_(session),
      costs_(new QLabel),
      there_(new ThoseThere(session)),
      machine_(new QComboBox),
      severity_(new QComboBox),
      time_(new QLineEdit),
      day_(new DateField(tr("today"))),
      what_(new QPlainTextEdit) {
  machine_->setObjectName("incident_machine");
  machine_->setPlaceholderText(tr("choose a machine"));
  severity_->setObjectName("severity");
  severity_->setPlaceholderText(tr("choose"));
  severity_->addItem(tr("1, the gravest"), 1);
  severity_->addItem(tr("2, grave"), 2);
  severity_->addItem(tr("3, slight"), 3);
  severity_->addItem(tr("4, a near miss"), db::near_miss);
  severity_->setCurrentIndex(-1);
  time_->setObjectName("incident_time");
  time_->setPlaceholderText(tr("now"));
  day_->setObjectName("incident_day");
  what_->setObjectName("what_happened");
  what_->setTabChangesFocus(true);
  what_->setMinimumHeight(what_->fontMetrics().lineSpacing() * lines_to_tell + 14);
  costs_->setObjectName("what_it_costs");
  costs_->setWordWrap(true);
  Block block(tr("Record what happened"), this);
  block.column->addWidget(there_);
  block.column->addWidget(where_and_when());
  block.column->addWidget(costs_);
  block.field(tr("What happened, without names: it stays when somebody's details are erased"), what_);
  block.column->setStretchFactor(what_, 8);
  auto* button = new KeyButton(tr("Record it"), Qt::CTRL | Qt::Key_3);
  button->setObjectName("record_incident");
  block.finish(button);
  setFocusProxy(there_);
  connect(button, &KeyButton::clicked, this, &IncidentForm::record);
  connect(there_, &ThoseThere::hurt_changed, this, &IncidentForm::hurt_changed);
  for (QComboBox* box : {machine_, severity_})
    connect(box, &QComboBox::currentIndexChanged, this, &IncidentForm::say_costs);
  connect(day_, &DateField::refused, this, &IncidentForm::tell_problem);
}

QWidget* IncidentForm::where_and_when() {
  auto* box = new QWidget;
  auto* grid = new QGridLayout(box);
  grid->setContentsMargins(0, 0, 0, 0);
  int column = 0;
  for (QComboBox* each : {machine_, severity_}) {  // as wide as there is room, not as its longest line
    each->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    each->setMinimumContentsLength(10);
  }
  const auto add = [&](const QString& words, QWidget* field, int stretch) {
    auto* one = new QVBoxLayout;
    one->setSpacing(4);
    Block::field(words, field, one);
    grid->addLayout(one, 0, column);
    grid->setColumnStretch(column++, stretch);
  };
  add(tr("At which machine"), machine_, 5);
  add(tr("How grave"), severity_, 3);
  add(tr("At what time"), time_, 2);
  add(tr("On which day"), day_, 3);
  return box;
}

void IncidentForm::refresh(const ShopNow& shop) {
  shop_ = shop;
  list_units(*machine_, shop);
  day_->set_today(session_.zone().day(session_.now()));
  say_costs();
}

void IncidentForm::choose(const MachineId& unit) { choose_unit(*machine_, unit); }

TargetName IncidentForm::target() const {
  const auto unit = shop_.units.find(unit_in(*machine_));
  return unit == shop_.units.end() ? TargetName() : unit->second.machine_class;
}

/// What the rules take away after it, and who may enter it.
QString IncidentForm::costs() const {
  if (severity_->currentIndex() < 0)
    return tr("A near miss costs nobody anything, and nobody has to be named for it: record every one.");
  if (severity() == db::near_miss)
    return tr("A near miss takes nothing away from anybody. Name who was there, or nobody.");
  QStringList said;
  const Rulebook* book = session_.decider().in_force(session_.now());
  if (book && target().empty())
    said << tr("Choose the machine: its rules say whether somebody has to be named.");
  else if (book && severity() <= renewed_after_severity(*book, target()))
    said << tr(
        "By the rules whoever was working is checked out again after this, so name them. Who was hurt, "
        "supervised or saw it loses nothing by it.");
  else
    said << tr("By the rules nobody loses anything by this. Name who was there, or nobody.");
  if (session_.role() == db::Role::desk)
    said << tr("An instructor or a manager records this: let them sit down here; what is typed stays.");
  return said.join(' ');
}

void IncidentForm::say_costs() { costs_->setText(costs()); }

Expected<db::RecordIncident> IncidentForm::read() {
  auto parts = there_->parts();
  if (!parts) return tl::make_unexpected(parts.error());
  const QString choose = tr("Choose it from the list");
  if (machine_->currentIndex() < 0) return missing(machine_, tr("No machine is chosen"), choose);
  if (severity_->currentIndex() < 0) return missing(severity_, tr("It is not said how grave it was"), choose);
  const QString what = what_->toPlainText().trimmed();
  if (what.isEmpty()) return missing(what_, tr("It is not said what happened"), tr("Say it in a few words"));
  return db::RecordIncident{
      target(),          unit_in(*machine_), severity(), std::move(parts->people), std::move(parts->unnamed),
      what.toStdString()};
}

void IncidentForm::record() {
  auto incident = read();
  if (!incident) return emit tell_problem(incident.error());
  const auto at = read_moment(session_, *day_, *time_);
  if (!at) return emit tell_problem(at.error());
  const auto done = session_.commit(*incident, *at);
  if (!done) return emit tell_problem(done.error());
  const Instant happened = done->entries.front().at;
  clear();
  emit recorded({std::move(*incident), happened, done->shifts});
}

void IncidentForm::clear() {
  there_->clear();
  for (QComboBox* box : {machine_, severity_}) box->setCurrentIndex(-1);
  time_->clear();
  day_->set_day({});
  what_->clear();
}

}  // namespace wm::app
