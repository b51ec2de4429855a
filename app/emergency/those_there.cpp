#include "app/emergency/those_there.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "app/emergency/block.h"
#include "app/theme/theme.h"
#include "app/widgets/role_label.h"
#include "app/words/record_words.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

// Who was hurt comes first: with it, whom to call is shown.
constexpr std::array order = {Part::hurt, Part::operating, Part::supervising, Part::saw};

}  // namespace

ThoseThere::ThoseThere(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), who_(new PersonBox(session)), rows_(new QVBoxLayout) {
  who_->field()->setObjectName("incident_person");
  auto* unnamed = new KeyButton(tr("Somebody not named"), Qt::CTRL | Qt::Key_4);
  unnamed->setObjectName("incident_unnamed");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* top = new QHBoxLayout;
  auto* left = new QVBoxLayout;
  left->setSpacing(4);
  Block::field(tr("&Who was there: a name and Enter, one after the other"), who_, left);
  top->addLayout(left, 1);
  auto* right = new QVBoxLayout;
  right->setSpacing(4);
  right->addWidget(role_label("quiet"));  // so that the button is beside the field
  right->addWidget(unnamed);
  right->addStretch(1);
  top->addLayout(right);
  top->setContentsMargins(0, 0, 0, 0);
  rows_->setSpacing(2);
  column->addLayout(top);
  column->addLayout(rows_);
  setFocusProxy(who_);
  connect(who_, &PersonBox::chosen, this, [this] {
    const auto person = who_->person();
    who_->set_person({});
    add(person);
  });
  connect(unnamed, &KeyButton::clicked, this, [this] { add(std::nullopt); });
}

ThoseThere::Line& ThoseThere::line_of(const std::optional<PersonId>& person) {
  if (person)
    for (Line& line : lines_)
      if (line.person == person) return line;
  Line& line = lines_.emplace_back();
  line.person = person;
  line.name = person ? person_name(session_.store().person(*person)) : tr("Somebody not named");
  line.row = new QWidget;
  line.row->setObjectName(QStringLiteral("there_%1").arg(lines_.size() - 1));
  auto* both = new QVBoxLayout(line.row);
  both->setContentsMargins(0, 4, 0, 0);
  both->setSpacing(0);
  both->addLayout(first_of(line));
  both->addLayout(ticks_of(line));
  rows_->addWidget(line.row);
  return line;
}

QLayout* ThoseThere::first_of(Line& line) {
  auto* name = role_label("", line.name);
  name->setFont(type(TypeSize::body, true));
  auto* out = new QPushButton(tr("Leave out"));
  out->setProperty("role", "plain");
  out->setAccessibleName(tr("Leave %1 out").arg(line.name));
  connect(out, &QPushButton::clicked, this, [this, at = line.row] { take_out(at); });
  auto* row = new QHBoxLayout;
  row->addWidget(name, 1);
  row->addWidget(out);
  return row;
}

/// Below the name: beside it they would be wider than a small window.
QLayout* ThoseThere::ticks_of(Line& line) {
  auto* row = new QHBoxLayout;
  row->setSpacing(14);
  for (std::size_t i = 0; i < order.size(); ++i) {
    auto* tick = line.ticks[i] = new QCheckBox(part_words(order[i]));
    tick->setMinimumHeight(row_height() - 6);
    tick->setAccessibleName(tr("%1 %2", "a person, was hurt").arg(line.name, part_words(order[i])));
    row->addWidget(tick);
  }
  row->addStretch(1);
  connect(line.ticks.front(), &QCheckBox::toggled, this, &ThoseThere::tell_hurt);
  return row;
}

void ThoseThere::add(const std::optional<PersonId>& person) { line_of(person).ticks.front()->setFocus(); }

void ThoseThere::add_hurt(const PersonId& person) {
  QCheckBox* const tick = line_of(person).ticks.front();
  if (tick->isChecked())
    tell_hurt();  // asked for once more
  else
    tick->setChecked(true);
}

void ThoseThere::take_out(QWidget* row) {
  std::erase_if(lines_, [row](const Line& line) { return line.row == row; });
  row->hide();
  row->deleteLater();
  who_->setFocus();
  tell_hurt();
}

void ThoseThere::tell_hurt() {
  std::vector<PersonId> hurt;
  for (const Line& line : lines_)
    if (line.person && line.ticks.front()->isChecked()) hurt.push_back(*line.person);
  emit hurt_changed(hurt);
}

Expected<ThoseThere::Parts> ThoseThere::parts() {
  if (!who_->field()->text().trimmed().isEmpty()) {
    who_->setFocus();
    return tl::make_unexpected(
        Problem{"person", tr("“%1” is typed, and nobody is chosen").arg(who_->field()->text()).toStdString(),
                tr("Choose from the list with Enter, or empty the field").toStdString()});
  }
  Parts found;
  for (const Line& line : lines_) {
    bool any = false;
    for (std::size_t i = 0; i < order.size(); ++i) {
      if (!line.ticks[i]->isChecked()) continue;
      any = true;
      if (line.person)
        found.people.push_back({*line.person, order[i]});
      else
        found.unnamed.push_back(order[i]);
    }
    if (any) continue;
    line.ticks.front()->setFocus();
    return tl::make_unexpected(
        Problem{"part", tr("It is not said what part they had: %1").arg(line.name).toStdString(),
                tr("Tick at least one, or leave them out").toStdString()});
  }
  return found;
}

void ThoseThere::clear() {
  for (const Line& line : lines_) {
    line.row->hide();
    line.row->deleteLater();
  }
  lines_.clear();
  who_->set_person({});
}

}  // namespace wm::app
