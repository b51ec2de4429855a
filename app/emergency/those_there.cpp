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

constexpr int name_width = 170;
// Who was hurt comes first: with it, whom to call is shown.
constexpr std::array order = {Part::hurt, Part::operating, Part::supervising, Part::saw};

}  // namespace

ThoseThere::ThoseThere(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      who_(new PersonBox(session)),
      rows_(new QVBoxLayout),
      contacts_(new QLabel) {
  who_->field()->setObjectName("incident_person");
  auto* unnamed = new KeyButton(tr("Somebody not named"), Qt::CTRL | Qt::Key_4);
  unnamed->setObjectName("incident_unnamed");
  contacts_->setObjectName("emergency_contacts");
  contacts_->setWordWrap(true);
  contacts_->setFont(type(TypeSize::body, true));
  contacts_->setTextInteractionFlags(Qt::TextSelectableByMouse);
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
  column->addWidget(contacts_);
  setFocusProxy(who_);
  connect(who_, &PersonBox::chosen, this, [this] {
    const auto person = who_->person();
    who_->set_person({});
    add(person);
  });
  connect(unnamed, &KeyButton::clicked, this, [this] { add(std::nullopt); });
  refresh();
}

// Somebody who is there already is not added twice: their boxes get the cursor.
void ThoseThere::add(const std::optional<PersonId>& person) {
  if (person)
    for (const Line& line : lines_)
      if (line.person == person) return line.ticks.front()->setFocus();
  Line line;
  line.person = person;
  line.name = person ? person_name(session_.store().person(*person)) : tr("Somebody not named");
  line.row = new QWidget;
  auto* row = new QHBoxLayout(line.row);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(14);
  auto* name = new QLabel(line.name);
  name->setMinimumWidth(name_width);
  row->addWidget(name, 1);
  for (std::size_t i = 0; i < order.size(); ++i) {
    auto* tick = line.ticks[i] = new QCheckBox(part_words(order[i]));
    tick->setMinimumHeight(row_height() - 6);
    tick->setAccessibleName(tr("%1 %2", "a person, was hurt").arg(line.name, part_words(order[i])));
    connect(tick, &QCheckBox::toggled, this, &ThoseThere::refresh);
    row->addWidget(tick);
  }
  auto* out = new QPushButton(tr("Leave out"));
  out->setProperty("role", "plain");
  out->setAccessibleName(tr("Leave %1 out").arg(line.name));
  connect(out, &QPushButton::clicked, this, [this, at = line.row] { take_out(at); });
  row->addWidget(out);
  rows_->addWidget(line.row);
  line.row->setObjectName(QStringLiteral("there_%1").arg(lines_.size()));
  lines_.push_back(line);
  line.ticks.front()->setFocus();
}

void ThoseThere::take_out(QWidget* row) {
  std::erase_if(lines_, [row](const Line& line) { return line.row == row; });
  row->hide();
  row->deleteLater();
  who_->setFocus();
  refresh();
}

QString ThoseThere::contact(const Line& line) const {
  // As the page People shows it: to whoever sits at this desk.
  if (!session_.role()) return tr("Sit down with your PIN to read whom to call for %1.").arg(line.name);
  const auto person = session_.person(*line.person);
  if (!person || person->emergency_contact.empty())
    return tr("Nobody is entered whom to call for %1 in an emergency.").arg(line.name);
  return tr("In an emergency, for %1: %2", "who, whom to call")
      .arg(line.name, QString::fromStdString(person->emergency_contact));
}

void ThoseThere::refresh() {
  QStringList all;
  for (const Line& line : lines_)
    if (line.person && line.ticks.front()->isChecked()) all << contact(line);
  contacts_->setText(all.join('\n'));
  contacts_->setVisible(!all.isEmpty());
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
  while (!lines_.empty()) take_out(lines_.back().row);
  who_->set_person({});
}

}  // namespace wm::app
