#include "app/people/group_entry.h"

#include <QLabel>

#include "app/desk/items.h"
#include "app/people/birth_dates.h"
#include "app/words/listing.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

/// A list in a form: as tall as so many rows.
QListWidget* rows_of_text(const char* name, int rows) {
  auto* made = new QListWidget;
  made->setObjectName(name);
  made->setFixedHeight(rows * 26);
  made->setWordWrap(true);
  made->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  made->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);  // what is above it has always the same width
  made->setResizeMode(QListView::Adjust);
  return made;
}

/// As high as its words take: a list by itself leaves out the item's padding, and cuts the last of them.
void add_line(QListWidget& list, const QString& words) {
  constexpr int padding = 40, apart = 6;
  const QRect room(0, 0, std::max(100, list.viewport()->width() - padding), QWIDGETSIZE_MAX);
  const int height = list.fontMetrics().boundingRect(room, Qt::TextWordWrap, words).height();
  (new QListWidgetItem(words, &list))->setSizeHint({0, height + apart});
}

}  // namespace

GroupEntry::GroupEntry(Session& session, QWidget* parent)
    : Form(tr("A group that had a lesson"), tr("Enter all of it"), parent),
      session_(session),
      known_(known_people(session)) {
  add_names();
  add_lesson();
  add_instructors();
  summary_ = say({});
  summary_->setObjectName("group_summary");
  lines_ = rows_of_text("group_lines", 8);
  lines_->setSelectionMode(QAbstractItemView::NoSelection);
  add_field(tr("What will happen, line by line"), lines_);
  say(tr("All of it is entered, or nothing. It counts for the revision that is taught now, from now on."));
  preview();
}

void GroupEntry::add_names() {
  names_ = new QPlainTextEdit;
  names_->setObjectName("group_names");
  names_->setTabChangesFocus(true);
  names_->setFixedHeight(150);
  names_->setPlaceholderText(tr(
      "One name a line: Kim Aoki; or Aoki, Kim; or a number, with or without a name. A + before it: somebody "
      "else of that name"));
  add_field(tr("Who was there"), names_);
  connect(names_, &QPlainTextEdit::textChanged, this, &GroupEntry::preview);
}

void GroupEntry::add_lesson() {
  const Rulebook* book = session_.decider().in_force(session_.now());
  const Items items = book ? items_of(*book) : Items();
  std::vector<std::pair<QString, QString>> lessons, papers{{QString(), tr("no paper")}};
  for (const std::string& each : items.lessons)
    lessons.emplace_back(QString::fromStdString(each), item_label(each));
  for (const std::string& each : items.documents)
    papers.emplace_back(QString::fromStdString(each), item_label(each));
  lesson_ = choice(tr("Which lesson"), "group_lesson", lessons);
  lesson_->setPlaceholderText(tr("choose"));
  lesson_->setCurrentIndex(lessons.size() == 1 ? 0 : -1);
  paper_ = choice(tr("Paper that each has signed, and you have seen"), "group_paper", papers);
  until_ = new DateField(tr("no end"));
  until_->setObjectName("group_until");
  until_->set_today(session_.zone().day(session_.now()));
  add_field(tr("The paper is good through"), until_);
  connect(lesson_, &QComboBox::currentIndexChanged, this, &GroupEntry::preview);
}

void GroupEntry::add_instructors() {
  instructors_ = rows_of_text("group_instructors", 4);
  for (const db::Person& person : session_.people()) {
    const auto role = session_.role_of(person.id);
    if (!role || *role < db::Role::instructor || session_.joined(person.id) != person.id) continue;
    auto* item = new QListWidgetItem(person_name(person), instructors_);
    item->setData(Qt::UserRole, QString::fromStdString(person.id));
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item->setCheckState(Qt::Unchecked);
  }
  add_field(tr("Who instructed (space marks them)"), instructors_);
  connect(instructors_, &QListWidget::itemChanged, this, &GroupEntry::preview);
}

db::GroupForm GroupEntry::typed() const {
  db::GroupForm form;
  form.names = names_->toPlainText().toStdString();
  form.lesson = lesson_->currentData().toString().toStdString();
  form.revision = published_revision(session_, form.lesson);
  form.document = paper_->currentData().toString().toStdString();
  form.until = until_->typed();
  for (int i = 0; i < instructors_->count(); ++i)
    if (instructors_->item(i)->checkState() == Qt::Checked)
      form.instructors.push_back(instructors_->item(i)->data(Qt::UserRole).toString().toStdString());
  return form;
}

QString GroupEntry::line_words(const db::GroupLine& line) const {
  if (line.problem)
    return tr("%1: %2", "what was typed, what is wrong")
        .arg(QString::fromStdString(line.typed), problem_sentence(*line.problem));
  const QString name = person_name(line.person);
  if (line.fate == db::LineFate::entered) {
    const QString said = tr("%1: new, will be entered").arg(name);
    const QString near = line.another ? QString() : near_words(line.person);
    return near.isEmpty() ? said
                          : tr("%1. Look first whether this is %2", "what will happen, who").arg(said, near);
  }
  const QString here =
      line.person.number.empty()
          ? tr("%1: here already").arg(name)
          : tr("%1: here already, number %2").arg(name, QString::fromStdString(line.person.number));
  return line.had_lesson ? tr("%1; had this lesson before").arg(here) : here;
}

/// Those here whose names differ by a slip, or are written the other way round; nothing where there is none.
QString GroupEntry::near_words(const db::Person& entered) const {
  QStringList near;
  for (const LikelyDouble& each : likely_doubles(entered, {}, known_)) {
    const auto here = session_.person(each.person);
    if (!here || session_.joined(each.person) != each.person) continue;
    near << (here->number.empty()
                 ? person_name(here)
                 : tr("%1, number %2").arg(person_name(here), QString::fromStdString(here->number)));
  }
  return or_list(near);
}

QString GroupEntry::summary(const db::GroupPlan& plan) const {
  QString said = tr("%1 names: %2 here already, %3 new, %4 wrong.")
                     .arg(plan.lines.size())
                     .arg(plan.found)
                     .arg(plan.entered)
                     .arg(plan.bad);
  if (plan.most) said += ' ' + tr("With these instructors the rules allow %n people.", nullptr, *plan.most);
  return said;
}

void GroupEntry::preview() {
  if (!lines_ || !summary_) return;
  const db::GroupPlan plan = session_.plan_group(typed());
  summary_->setText(summary(plan));
  lines_->clear();
  for (const bool bad : {true, false})  // what is wrong first
    for (std::size_t i = 0; i < plan.lines.size(); ++i)
      if (const db::GroupLine& line = plan.lines[i]; (line.fate == db::LineFate::bad) == bad)
        add_line(
            *lines_,
            tr("%1. %2", "a line's number, what will happen").arg(QString::number(i + 1), line_words(line)));
}

Expected<db::Committed> GroupEntry::enter() {
  if (lesson_->currentIndex() < 0)
    return tl::unexpected(Problem{"lesson", tr("It is not said which lesson").toStdString(),
                                  tr("Choose it from the list").toStdString()});
  if (!until_->is_good())
    return tl::unexpected(Problem{"until", tr("The last day is no date").toStdString(),
                                  tr("Type it as 25 Nov 2026, or leave it empty").toStdString()});
  const db::GroupPlan plan = session_.plan_group(typed());
  for (const db::GroupLine& line : plan.lines)
    if (line.problem) return tl::make_unexpected(*line.problem);
  if (plan.actions.empty())
    return tl::unexpected(Problem{"names", tr("Nobody is named").toStdString(),
                                  tr("Type or paste the names, one a line").toStdString()});
  done_ = tr("%1 people had the lesson: %2. New here: %3.", "count, lesson, count")
              .arg(plan.lines.size())
              .arg(lesson_->currentText())
              .arg(plan.entered);
  return session_.commit_all(plan.actions);
}

}  // namespace wm::app
