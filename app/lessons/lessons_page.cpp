#include "app/lessons/lessons_page.h"

#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

#include "app/lessons/lesson_needs.h"
#include "app/lessons/lesson_reader.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_search.h"
#include "app/words/labels.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

QString words(const std::string& text) { return QString::fromStdString(text); }

/// Whose record of that item this is, and of which revision; nothing where it is of something else.
std::optional<std::pair<PersonId, int>> record_of(const db::Entry& entry, const std::string& name) {
  const auto* fact = entry.voided ? nullptr : std::get_if<Fact>(&entry.fact);
  if (!fact) return std::nullopt;
  const auto* lesson = std::get_if<Lesson>(fact);
  if (lesson && lesson->lesson == name) return std::pair(lesson->person, lesson->revision);
  const auto* quiz = std::get_if<Quiz>(fact);
  if (quiz && quiz->quiz == name) return std::pair(quiz->person, quiz->revision);
  const auto* checkout = std::get_if<Checkout>(fact);
  if (checkout && checkout->checkout == name) return std::pair(checkout->person, checkout->revision);
  return std::nullopt;
}

}  // namespace

LessonsPage::LessonsPage(Session& session, QWidget* parent)
    : ListPage(session, tr("a lesson, a quiz, a check-out"),
               {{tr("Name"), 0}, {tr("What"), 180}, {tr("Revision"), 90}, {tr("Since"), 150}}, parent),
      reader_(new LessonReader) {
  auto* paper = new QFrame;
  paper->setProperty("role", "paper");
  auto* down = new QVBoxLayout(paper);
  down->setContentsMargins(0, 0, 0, 0);
  down->addWidget(reader_);
  auto* room = new QWidget;
  auto* around = new QVBoxLayout(room);
  around->setContentsMargins(22, 18, 22, 14);
  around->addWidget(paper);
  views_->addWidget(room);
  connect(reader_, &LessonReader::left, this, &LessonsPage::leave_reader);
  connect(reader_, &LessonReader::read_through, this, &LessonsPage::record_gone_through);
  connect(reader_, &LessonReader::tell_problem, this, &Page::tell_problem);
}

void LessonsPage::refresh() {
  read_items();
  ListPage::refresh();
}

void LessonsPage::open(const Place&) {
  panel_->close_form();
  views_->setCurrentIndex(0);
  search_->setFocus(Qt::OtherFocusReason);
  search_->selectAll();
}

/// What the rulebook asks for, and whatever else was ever published.
void LessonsPage::read_items() {
  items_.clear();
  if (const Rulebook* rulebook = session().decider().in_force(session().present())) {
    const Items asked = items_of(*rulebook);
    for (const std::string& name : asked.lessons) items_[name].kinds << tr("lesson");
    for (const std::string& name : asked.quizzes) items_[name].kinds << tr("quiz");
    for (const std::string& name : asked.checkouts) items_[name].kinds << tr("check-out");
  }
  for (const db::Entry& entry : session().store().entries()) {
    const auto* fact = session().counts(entry) ? std::get_if<Fact>(&entry.fact) : nullptr;
    const auto* publish = fact ? std::get_if<Publish>(fact) : nullptr;
    if (publish) items_[publish->item].published.push_back({publish->revision, entry.at, words(entry.note)});
  }
  for (auto& [name, item] : items_)
    std::ranges::stable_sort(item.published, {}, [](const Publication& p) { return p.at; });
}

/// The greatest that has begun: what an earlier day brought counts no less for being older.
const LessonsPage::Publication* LessonsPage::now(const Item& item) const {
  const Publication* greatest = nullptr;
  for (const Publication& each : item.published)
    if (each.at <= session().present() && (!greatest || each.revision > greatest->revision)) greatest = &each;
  return greatest;
}

std::vector<ListRow> LessonsPage::rows(const QString& typed) {
  const TypedWords wanted(typed);
  std::vector<ListRow> rows;
  for (const auto& [name, item] : items_) {
    const QString label = item_label(name), kinds = item.kinds.join(tr(", "));
    if (!wanted.in(label + ' ' + kinds)) continue;
    const Publication* taught = now(item);
    const bool ahead = !item.published.empty() && item.published.back().at > session().present();
    rows.push_back(
        {words(name),
         {{label, {}},
          {kinds, kinds.isEmpty() ? tr("not asked for now") : QString()},
          {taught ? QString::number(taught->revision) : tr("none"), {}},
          {taught ? short_day(taught->at, session().zone()) : QString(),
           ahead ? tr("next on %1").arg(short_day(item.published.back().at, session().zone())) : QString()}},
         false});
  }
  count_->setText(tr("Names: %1").arg(rows.size()));
  return rows;
}

void LessonsPage::describe(const QString& id) {
  panel_->start();
  const auto found = items_.find(id.toStdString());
  if (found == items_.end())
    return panel_->heading(items_.empty() ? tr("The rulebook asks for none yet") : tr("None of that name"));
  const auto& [name, item] = *found;
  panel_->heading(item_label(name));
  panel_->quiet(item.kinds.isEmpty() ? tr("The rulebook in force does not ask for it.")
                                     : tr("The rulebook asks for it as: %1.").arg(item.kinds.join(tr(", "))));
  const Publication* taught = now(item);
  panel_->paragraph(taught ? tr("Revision %1 counts.").arg(taught->revision)
                           : tr("No revision is published: every one counts."));
  const bool lesson = item.kinds.contains(tr("lesson"));
  if (lesson) describe_text(name, item);
  if (session().role() || (lesson && lesson_text(session(), name))) panel_->section(tr("What can be done"));
  if (lesson) text_actions(name);
  if (session().role() == db::Role::manager)
    panel_->button(tr("Publish a revision"), QKeySequence::New, [this, chosen = name] { publish(chosen); })
        ->setObjectName("publish");
  if (!item.published.empty()) panel_->section(tr("Published"));
  for (auto each = item.published.rbegin(); each != item.published.rend(); ++each)
    panel_->line(short_day(each->at, session().zone()),
                 each->note.isEmpty()
                     ? tr("revision %1").arg(each->revision)
                     : tr("revision %1: %2", "a number, what is new").arg(each->revision).arg(each->note));
}

int LessonsPage::with_earlier_only(const std::string& name, int revision) const {
  std::map<PersonId, int> greatest;
  for (const db::Entry& entry : session().store().entries())
    if (const auto record = session().counts(entry) ? record_of(entry, name) : std::nullopt) {
      int& has = greatest[session().store().joined(record->first)];
      has = std::max(has, record->second);
    }
  return static_cast<int>(
      std::ranges::count_if(greatest, [&](const auto& p) { return p.second < revision; }));
}

int LessonsPage::next_revision(const std::string& name) const {
  int last = 0;
  if (const auto found = items_.find(name); found != items_.end())
    for (const Publication& each : found->second.published) last = std::max(last, each.revision);
  for (const IssuedRevision& each : revisions_of(session(), db::Work::lesson, name))
    last = std::max(last, each.work->revision);
  return last + 1;
}

QString LessonsPage::effect_words(const std::string& name, int revision, Instant at) const {
  const Record supposed{"supposed", at, session().now(), {}, Publish{name, revision}};
  const std::vector<Shift> shifts = session().current().if_taken(supposed);
  std::set<PersonId> people;
  for (const Shift& shift : shifts) people.insert(shift.person);
  const QString earlier =
      tr("People who have it in an earlier revision: %1.").arg(with_earlier_only(name, revision));
  if (people.empty()) return earlier + ' ' + tr("Nobody would have to do it again for their standing.");
  return earlier + ' ' + tr("Without it they fall back, people: %1. How long they have:").arg(people.size()) +
         '\n' + again_words(shifts, session()).join('\n');
}

void LessonsPage::publish(const std::string& name) {
  const int last = next_revision(name) - 1;
  auto* form = new Form(tr("Publish %1").arg(item_label(name)), tr("Publish it"));
  auto* revision = form->line(tr("Revision"), "revision", QString::number(last + 1));
  auto* from = new DateField(tr("now"));
  from->setObjectName("from_day");
  from->set_today(session().zone().day(session().now()));
  form->add_field(tr("Counts from"), from);
  auto* news = form->line(tr("What is new in it"), "news");
  QLabel* effect = form->say({});
  effect->setObjectName("effect");
  const auto show_effect = [this, effect, from, revision, name] {
    const Instant at = from->typed() ? session().zone().start(*from->typed()) : session().now();
    effect->setText(effect_words(name, revision->text().trimmed().toInt(), std::max(at, session().now())));
  };
  connect(from, &QLineEdit::textChanged, form, show_effect);
  connect(revision, &QLineEdit::textChanged, form, show_effect);
  show_effect();
  run_form(form, tr("Published."), [this, name, revision, from, news]() -> Expected<db::Committed> {
    bool number = false;
    const int chosen = revision->text().trimmed().toInt(&number);
    if (!number || chosen < 1)
      return tl::unexpected(Problem{tr("revision").toStdString(), tr("That is no revision").toStdString(),
                                    tr("Type a whole number, such as 3").toStdString()});
    if (!from->is_good())
      return tl::unexpected(Problem{tr("day").toStdString(), tr("That is no day").toStdString(),
                                    tr("Type it as 2026-12-01, or leave it empty for now").toStdString()});
    const auto at = from->typed() ? std::optional(session().zone().start(*from->typed())) : std::nullopt;
    const auto when = at && *at > session().now() ? at : std::nullopt;
    return session().commit(db::EnterFact{Publish{name, chosen}}, when,
                            news->text().simplified().toStdString());
  });
}

}  // namespace wm::app
