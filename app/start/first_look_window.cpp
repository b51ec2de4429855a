#include "app/start/first_look_window.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "app/lists/answer_reader.h"
#include "app/widgets/person_search.h"
#include "app/words/answer_parts.h"
#include "app/words/listed_name.h"
#include "app/words/words.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

constexpr std::size_t most_found = 50;

QLabel* wrapped_label(const char* role) {
  auto* label = new QLabel;
  label->setProperty("role", role);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

AnswerReader reader_for(const db::FirstLook& look, const std::vector<db::Entry>& entries,
                        const PersonId& person) {
  const auto details = [&look](const PersonId& id) -> std::optional<db::Person> {
    const auto found = std::ranges::find(look.people(), id, &db::Person::id);
    return found == look.people().end() ? std::nullopt : std::optional(*found);
  };
  AnswerReader reader;
  reader.name_of = [details](const PersonId& id) { return person_name(details(id)); };
  reader.record_of = [&entries](const RecordId& id) {
    const auto found = std::ranges::find(entries, id, &db::Entry::id);
    return found == entries.end() ? nullptr : &*found;
  };
  reader.person = person;
  reader.called = called(details(person));
  reader.zone = look.zone();
  reader.now = look.now();
  for (const db::Entry& entry : entries)
    if (const auto* birth = db::as<Birth>(entry.fact))
      reader.birthdays.add(look.joined(birth->person), birth->born);
  return reader;
}

}  // namespace

FirstLookWindow::FirstLookWindow(db::FirstLook look)
    : look_(std::move(look)),
      search_(new QLineEdit),
      found_(new QListWidget),
      name_(wrapped_label("large")),
      answers_(wrapped_label("")),
      cover_(new EmergencyCover(*this, [this] { return look_.emergency_call(); })) {
  std::ranges::copy_if(look_.people(), std::back_inserter(people_),
                       [this](const db::Person& p) { return look_.joined(p.id) == p.id; });
  setWindowTitle(tr("%1 – Witnessmark").arg(QString::fromStdString(look_.details().name)));
  resize(1366, 768);
  search_->setObjectName("search");
  search_->setPlaceholderText(tr("name, nickname or number"));
  search_->setAccessibleName(search_->placeholderText());
  search_->setMinimumHeight(38);
  search_->installEventFilter(this);
  found_->setObjectName("found");
  found_->setSpacing(4);
  found_->setAccessibleName(tr("People found"));
  name_->setObjectName("name");
  answers_->setObjectName("answers");
  answers_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  lay_out();
  connect(search_, &QLineEdit::textChanged, this, &FirstLookWindow::list);
  connect(found_, &QListWidget::currentRowChanged, this, &FirstLookWindow::show_person);
  list();
  search_->setFocus();
}

QWidget* FirstLookWindow::banner() {
  auto* banner = new QFrame;
  banner->setProperty("role", "banner");
  auto* words = wrapped_label("");
  words->setText(
      tr("The shop's records are being read. Look somebody up meanwhile. Who is here, what is out of service "
         "and "
         "all else follow by themselves. Nothing can be entered before that."));
  auto* row = new QHBoxLayout(banner);
  row->setContentsMargins(20, 8, 20, 8);
  row->addWidget(words, 1);
  row->addWidget(cover_->button());
  return banner;
}

void FirstLookWindow::lay_out() {
  auto* left = new QVBoxLayout;
  left->setSpacing(10);
  left->addWidget(search_);
  left->addWidget(found_, 1);
  auto* scrolled = new QScrollArea;
  scrolled->setWidgetResizable(true);
  scrolled->setFrameShape(QFrame::NoFrame);
  scrolled->setWidget(answers_);
  auto* caution_words = wrapped_label("quiet");
  caution_words->setText(caution());
  auto* right = new QVBoxLayout;
  right->setSpacing(10);
  right->addWidget(name_);
  right->addWidget(scrolled, 1);
  right->addWidget(caution_words);
  auto* both = new QHBoxLayout;
  both->setContentsMargins(22, 18, 20, 14);
  both->setSpacing(24);
  both->addLayout(left, 2);
  both->addLayout(right, 3);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(banner());
  column->addLayout(both, 1);
}

bool FirstLookWindow::eventFilter(QObject* watched, QEvent* event) {
  if (watched != search_ || event->type() != QEvent::KeyPress || found_->count() == 0) return false;
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (key != Qt::Key_Down && key != Qt::Key_Up) return false;
  const int row = found_->currentRow() + (key == Qt::Key_Down ? 1 : -1);
  found_->setCurrentRow(std::clamp(row, 0, found_->count() - 1));
  return true;
}

void FirstLookWindow::list() {
  const QSignalBlocker quiet(found_);
  found_->clear();
  const QString typed = search_->text().trimmed();
  for (const db::Person& person :
       typed.isEmpty() ? std::vector<db::Person>() : find_people(people_, typed, most_found)) {
    auto* item = new QListWidgetItem(listed_name(person), found_);
    item->setData(Qt::UserRole, QString::fromStdString(person.id));
  }
  found_->setCurrentRow(found_->count() > 0 ? 0 : -1);
  show_person();
}

void FirstLookWindow::show_person() {
  const QListWidgetItem* item = found_->currentItem();
  person_ = item ? std::optional(item->data(Qt::UserRole).toString().toStdString()) : std::nullopt;
  name_->setText(item                        ? item->text()
                 : search_->text().isEmpty() ? tr("Who is at the desk?")
                                             : tr("Nobody of that name"));
  answers_->clear();
  if (!person_) return;
  const auto all = sentences_of(*person_);
  answers_->setText(all ? all->join("\n\n") : problem_sentence(all.error()));
}

Expected<QStringList> FirstLookWindow::sentences_of(const PersonId& person) {
  const auto answers = look_.answers_for(person);
  if (!answers) return tl::unexpected(answers.error());
  const Rulebook* rulebook = answers->decider->in_force(look_.now());
  if (!rulebook) return QStringList{tr("No rulebook is in force: nobody may use anything.")};
  const AnswerReader reader = reader_for(look_, *answers->entries, person);
  Restrictions restrictions;
  for (const db::Entry& entry : *answers->entries)
    if (!entry.voided) restrictions.add(entry);
  QStringList all;
  for (const TargetName& target : targets_of(*rulebook)) {
    const StandingAnswer standing = answers->decider->standing(person, target, look_.now());
    const QString sentence =
        standing_sentence(target, standing, conditions_of(rulebook, target),
                          restrictions.on(*answers->decider, person, target, look_.now()), reader);
    const QString next = standing.suspensions.empty() ? next_sentence(standing, reader) : QString();
    all << (sentence + ' ' + next).trimmed();
  }
  return all;
}

}  // namespace wm::app
