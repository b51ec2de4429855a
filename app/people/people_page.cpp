#include "app/people/people_page.h"

#include <QCollator>
#include <QStackedWidget>
#include <algorithm>

#include "app/calendars/forms.h"
#include "app/hours/weekly.h"
#include "app/lists/record_reader.h"
#include "app/people/birth_dates.h"
#include "app/people/import_view.h"
#include "app/people/person_form.h"
#include "app/people/pin_form.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_box.h"
#include "app/widgets/person_search.h"
#include "app/words/listed_name.h"
#include "app/words/words.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

QString words(const std::string& text) { return QString::fromStdString(text); }

/// Everybody by family name, for when nothing is typed.
std::vector<db::Person> by_family_name(std::vector<db::Person> people) {
  QCollator order;
  const auto key = [&order](const db::Person& p) { return order.sortKey(listed_name(p)); };
  std::vector<std::pair<QCollatorSortKey, db::Person>> keyed;
  for (db::Person& person : people) keyed.emplace_back(key(person), std::move(person));
  std::ranges::stable_sort(keyed, [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<db::Person> sorted;
  for (auto& [name, person] : keyed) sorted.push_back(std::move(person));
  return sorted;
}

}  // namespace

PeoplePage::PeoplePage(Session& session, QWidget* parent)
    : ListPage(session, tr("name, nickname or number"),
               {{tr("Name"), 0}, {tr("Called"), 150}, {tr("Number"), 110}, {tr("At the desk as"), 130}},
               parent),
      may_go_(new QCheckBox(tr("Details that may &go"))) {
  connect(list_, &ListView::opened, this, [this](const QString& id) { go_to(id.toStdString()); });
  may_go_->setObjectName("may_go");
  filters_->addWidget(may_go_);
  connect(may_go_, &QCheckBox::toggled, this, &PeoplePage::refresh);
}

void PeoplePage::open(const Place& place) {
  panel_->close_form();
  if (place.item == "visitor") return enter_visitor();
  if (!place.person.empty()) {
    search_->clear();
    list_->choose(words(session().store().joined(place.person)));
  }
  search_->setFocus(Qt::OtherFocusReason);
  search_->selectAll();
}

/// Whose details the rulebook no longer asks to keep: for managers, who may erase them.
void PeoplePage::refresh() {
  const bool manager = session().role() == db::Role::manager;
  may_go_->setVisible(manager);
  if (!manager) may_go_->setChecked(false);
  const std::int64_t last = session().store().last_commit();
  if (may_go_->isChecked() && last != gone_at_) {
    go_ = session().may_go();
    gone_at_ = last;
  }
  ListPage::refresh();
}

const db::MayGo* PeoplePage::may_go(const PersonId& person) const {
  const auto found = std::ranges::find(go_, person, &db::MayGo::person);
  return found == go_.end() ? nullptr : &*found;
}

std::vector<ListRow> PeoplePage::rows(const QString& typed) {
  std::vector<db::Person> people = session().people();
  const auto found =
      typed.isEmpty() ? by_family_name(std::move(people)) : find_people(people, typed, people.size());
  std::vector<ListRow> rows;
  for (const db::Person& person : found) {
    if (session().joined(person.id) != person.id) continue;
    if (may_go_->isChecked() && !may_go(person.id)) continue;
    const auto role = session().role_of(person.id);
    rows.push_back({words(person.id),
                    {{listed_name(person), {}},
                     {words(person.nickname), {}},
                     {words(person.number), {}},
                     {role ? role_words(role) : QString(), {}}},
                    false});
  }
  count_->setText(typed.isEmpty() ? tr("People: %1").arg(rows.size()) : tr("Found: %1").arg(rows.size()));
  return rows;
}

void PeoplePage::describe(const QString& id) {
  panel_->start();
  const auto person = session().person(id.toStdString());
  if (person) {
    details(*person);
    joined_entries(person->id);
    pauses(*person);
    appointments(*person);
    weekly_hours(*person);
    quizzes_sat(person->id);
    close_ones(*person);
    actions(*person);
  } else {
    panel_->heading(typed().isEmpty() ? tr("Nobody here yet") : tr("Nobody of that name"));
  }
  panel_->section(tr("Somebody else"));
  panel_->button(tr("New person"), QKeySequence::New, [this] { enter_new(); })->setObjectName("new");
  visitors();
  if (session().role() == db::Role::manager)
    panel_->button(tr("Take in a CSV file"), QKeySequence("Ctrl+I"), [this] { take_in_file(); })
        ->setObjectName("import");
  if (may_go_->isChecked()) visitors_names();
}

void PeoplePage::details(const db::Person& person) {
  panel_->heading(person_name(person));
  if (!person.number.empty()) panel_->quiet(tr("Number %1").arg(words(person.number)));
  panel_->line(tr("Called"), words(person.nickname));
  panel_->line(tr("Card"), words(person.card));
  panel_->line(tr("Phone"), words(person.phone));
  panel_->line(tr("Email"), words(person.email));
  panel_->line(tr("In an emergency"), words(person.emergency_contact));
  panel_->line(tr("At the desk as"), role_words(session().role_of(person.id)));
  if (const db::MayGo* gone = may_go_->isChecked() ? may_go(person.id) : nullptr)
    panel_->paragraph(
        tr("The last record that names this person is of %1. By the rulebook the details may be "
           "blanked since %2.")
            .arg(long_day(gone->last, session().zone()), long_day(gone->since, session().zone())));
}

/// Other entries that count as this person's; each join can be struck out.
void PeoplePage::joined_entries(const PersonId& person) {
  const RecordReader reader = record_reader(session());
  bool first = true;
  for (const db::Entry& entry : session().store().entries()) {
    const auto* fact = std::get_if<db::ShopFact>(&entry.fact);
    const auto* join = fact && session().counts(entry) ? std::get_if<db::Join>(fact) : nullptr;
    if (!join || session().joined(join->keep) != person) continue;
    if (first) panel_->section(tr("Entries joined to this one"));
    first = false;
    panel_->paragraph(
        tr("%1, joined on %2").arg(reader.name_of(join->other), short_day(entry.recorded, session().zone())));
    if (session().role() != db::Role::manager) continue;
    panel_
        ->button(
            tr("Strike this join out"), {},
            [this, id = entry.id] {
              auto* form = new Form(tr("Strike the join out"), tr("Strike out"));
              auto* reason = form->line(tr("Why"), "reason");
              run_form(form, tr("Struck out: they are two people again."), [this, id, reason] {
                return session().commit(db::StrikeOutRecord{id, reason->text().simplified().toStdString()});
              });
            })
        ->setObjectName("strike_join");
  }
}

/// Each leads to its record in the journal, where it can be shown again as it was sat.
void PeoplePage::quizzes_sat(const PersonId& person) {
  bool first = true;
  for (const db::Entry& entry : session().store().entries()) {
    const auto* sat = db::as<db::AttemptSat>(entry.fact);
    if (!sat || !session().counts(entry) || session().joined(sat->person) != person) continue;
    const db::Entry* result = session().entry(sat->quiz);
    const auto* quiz = result ? db::as<Quiz>(result->fact) : nullptr;
    if (!quiz) continue;
    if (first) panel_->section(tr("Quizzes sat"));
    first = false;
    panel_
        ->button(tr("%1, %2: %3 of %4 right", "which quiz, day, marks")
                     .arg(item_label(quiz->quiz), short_day(entry.at, session().zone()))
                     .arg(quiz->correct)
                     .arg(quiz->total),
                 {},
                 [this, record = entry.id] {
                   emit go({"journal", {}, {}, {}, record, {}});
                 })
        ->setObjectName("quiz_sat");
  }
}

/// The Diary offers times with somebody only while they are usually in.
void PeoplePage::weekly_hours(const db::Person& person) {
  const auto lines = hours_of(session(), person.id);
  if (!lines.empty()) panel_->section(tr("Usually in"));
  for (const HoursLine& line : lines) {
    panel_->line(weekday_words(line.hours.weekday), hours_words(line.hours));
    if (session().role() != db::Role::manager) continue;
    const QString what =
        tr("%1 %2", "weekday, hours").arg(weekday_words(line.hours.weekday), hours_words(line.hours));
    panel_
        ->button(tr("No longer in on %1").arg(what), {},
                 [this, id = line.id, what] {
                   report(session().commit(db::StrikeOutRecord{id, tr("no longer in then").toStdString()}),
                          tr("The Diary no longer counts on %1.").arg(what));
                 })
        ->setObjectName("end_hours");
  }
}

void PeoplePage::add_hours(const db::Person& person) {
  auto* form = new Form(tr("When is %1 usually in?").arg(person_name(person)), tr("Add these hours"));
  std::vector<std::pair<QString, QString>> days;
  for (int day = 0; day < 7; ++day) days.emplace_back(QString::number(day), weekday_words(day));
  QComboBox* day = form->choice(tr("Every"), "weekday", days);
  const auto [from, to] = form->two_lines(tr("From"), "from", tr("To"), "to");
  form->say(
      tr("The Diary offers one-on-ones in these hours, with whoever may assess the machine then. They "
         "give nobody permission for anything."));
  run_form(
      form, tr("Hours of %1 added.").arg(person_name(person)),
      [this, id = person.id, day, from = from, to = to]() -> Expected<db::Committed> {
        const auto begin = read_minute(from->text()), end = read_minute(to->text());
        if (!begin || !end)
          return tl::unexpected(Problem{tr("hours").toStdString(), tr("That is no time of day").toStdString(),
                                        tr("Type it as 17:30 or 5:30 pm").toStdString()});
        return session().commit(db::EnterShopFact{db::Hours{id, day->currentData().toInt(), *begin, *end}});
      });
}

/// What cannot be taken back is asked for in letters: the name, typed.
void PeoplePage::blank(const db::Person& person) {
  const QString name = person_name(person);
  auto* form = new Form(tr("Blank the details of %1").arg(name), tr("Blank them for good"));
  form->say(
      tr("Names, number, card, phone, mail, emergency contact, PIN, birth date and the notes on their "
         "records go, and nobody can bring them back. The records stay, so that the shop can still say "
         "what was decided and why, but no longer about whom."));
  QLineEdit* typed = form->line(tr("Type the name to go on: %1").arg(name), "typed_name");
  run_form(
      form, tr("The details are blanked."), [this, id = person.id, name, typed]() -> Expected<db::Committed> {
        if (folded(typed->text().simplified()) != folded(name))
          return tl::unexpected(Problem{tr("name").toStdString(), tr("That is another name").toStdString(),
                                        tr("Type it as it stands above, or leave it").toStdString()});
        return session().commit(db::BlankPerson{id});
      });
}

void PeoplePage::actions(const db::Person& person) {
  panel_->section(tr("What can be done"));
  panel_->button(tr("Open at the desk"), QKeySequence("Ctrl+O"), [this, id = person.id] { go_to(id); })
      ->setObjectName("desk");
  panel_
      ->button(tr("Save one-on-ones as a calendar"), QKeySequence("Ctrl+Shift+K"),
               [this, id = person.id] {
                 show_own_form(
                     [&](const Tell& done) { return save_calendar_form(session(), OfPerson{id}, done); });
               })
      ->setObjectName("calendar");
  panel_->button(tr("Correct details"), QKeySequence("Ctrl+G"), [this, person] { correct(person); })
      ->setObjectName("correct");
  const bool self = session().seated() && session().seated()->id == person.id;
  if (self || session().role() == db::Role::manager)
    panel_->button(tr("Choose a PIN"), QKeySequence("Ctrl+Shift+P"), [this, person] { choose_pin(person); })
        ->setObjectName("pin");
  if (session().role() == db::Role::manager) manager_actions(person);
}

void PeoplePage::manager_actions(const db::Person& person) {
  panel_->button(tr("Role at the desk"), QKeySequence("Ctrl+R"), [this, person] { give_role(person); })
      ->setObjectName("role");
  panel_->button(tr("Appoint to assess"), QKeySequence("Ctrl+Shift+A"), [this, person] { appoint(person); })
      ->setObjectName("appoint");
  panel_->button(tr("Pause"), QKeySequence("Ctrl+Shift+S"), [this, person] { pause(person); })
      ->setObjectName("pause");
  panel_->button(tr("Join another entry"), QKeySequence("Ctrl+J"), [this, person] { join(person); })
      ->setObjectName("join");
  panel_->button(tr("Add weekly hours"), QKeySequence("Ctrl+T"), [this, person] { add_hours(person); })
      ->setObjectName("hours");
  panel_
      ->button(tr("Give out all that is held"), QKeySequence("Ctrl+Shift+G"),
               [this, person] { give_out(person); })
      ->setObjectName("give_out");
  panel_->button(tr("Blank the details"), QKeySequence("Ctrl+Shift+B"), [this, person] { blank(person); })
      ->setObjectName("blank");
}

void PeoplePage::enter_new() {
  auto* form = new PersonForm(known_people(session()), std::nullopt, session().zone().day(session().now()));
  connect(form, &PersonForm::take_double, this, [this](const PersonId& person) {
    panel_->close_form();
    search_->clear();
    list_->choose(words(session().store().joined(person)));
  });
  connect(form, &Form::saved, this, [this, form] {
    if (const auto mistake = form->mistake()) return form->show_problem(*mistake);
    const auto done = session().commit(db::EnterPerson{form->person(), form->born()});
    if (!done) return form->show_problem(done.error());
    const QString name = person_name(form->person());
    panel_->close_form();
    search_->clear();
    refresh();
    list_->choose(words(done->person));
    emit tell(tr("%1 entered.").arg(name));
  });
  panel_->show_form(form);
}

void PeoplePage::correct(const db::Person& person) {
  auto* form = new PersonForm(known_people(session()), person, session().zone().day(session().now()));
  run_form(form, tr("Details of %1 corrected.").arg(person_name(person)),
           [this, form]() -> Expected<db::Committed> {
             if (const auto mistake = form->mistake()) return tl::unexpected(*mistake);
             return session().commit(db::CorrectPerson{form->person()});
           });
}

void PeoplePage::join(const db::Person& person) {
  auto* form = new Form(tr("Join another entry"), tr("Join"));
  auto* other = new PersonBox(session(), [id = person.id](const db::Person& p) { return p.id != id; });
  other->setObjectName("other");
  form->say(tr("%1 stays. All that is recorded of the other entry counts as theirs. It can be struck out.")
                .arg(person_name(person)));
  form->add_field(tr("The other entry of this person"), other);
  run_form(form, tr("Joined: two entries, one person."),
           [this, other, keep = person.id]() -> Expected<db::Committed> {
             if (!other->person())
               return tl::unexpected(Problem{tr("other entry").toStdString(),
                                             tr("Nobody is chosen yet").toStdString(),
                                             tr("Type part of a name and choose with Enter").toStdString()});
             return session().commit(db::EnterShopFact{db::Join{keep, *other->person()}});
           });
}

void PeoplePage::give_role(const db::Person& person) {
  auto* form = new Form(tr("Role at the desk"), tr("Give this role"));
  std::vector<std::pair<QString, QString>> roles{{"-1", role_words(std::nullopt)}};
  for (const db::Role role :
       {db::Role::desk, db::Role::instructor, db::Role::manager, db::Role::quiz_station})
    roles.emplace_back(QString::number(static_cast<int>(role)), role_words(role));
  QComboBox* box = form->choice(tr("%1 sits down as").arg(person_name(person)), "role_choice", roles);
  const auto now = session().store().role_of(person.id);
  box->setCurrentIndex(box->findData(QString::number(now ? static_cast<int>(*now) : -1)));
  form->say(tr("The role says what may be entered at the desk. It is no permission at a machine."));
  run_form(form, tr("Role of %1 changed.").arg(person_name(person)), [this, box, id = person.id] {
    const int chosen = box->currentData().toInt();
    const auto role = chosen < 0 ? std::nullopt : std::optional(static_cast<db::Role>(chosen));
    return session().commit(db::EnterShopFact{db::RoleGiven{id, role}});
  });
}

void PeoplePage::choose_pin(const db::Person& person) {
  auto* form = new PinForm(person.id, person_name(person));
  run_form(form, tr("PIN of %1 chosen.").arg(person_name(person)),
           [this, form] { return form->choose(session()); });
}

void PeoplePage::take_in_file() {
  auto* view = new ImportView(session());
  const auto leave = [this, view] {
    views_->removeWidget(view);
    view->deleteLater();
    put_cursor_back();
  };
  connect(view, &ImportView::left, this, leave);
  connect(view, &ImportView::done, this, [this, leave](const QString& said) {
    leave();
    refresh();
    emit tell(said);
  });
  views_->addWidget(view);
  views_->setCurrentWidget(view);
  view->take_cursor();
}

void PeoplePage::go_to(const PersonId& person) { emit go({"desk", person, {}, {}, {}}); }

}  // namespace wm::app
