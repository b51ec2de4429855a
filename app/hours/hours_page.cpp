#include "app/hours/hours_page.h"

#include <algorithm>
#include <set>

#include "app/calendars/forms.h"
#include "app/diary/bookings.h"
#include "app/hours/hours_book.h"
#include "app/hours/weekly.h"
#include "app/lists/record_reader.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_search.h"
#include "app/words/hours_words.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

const QString shop_row = QStringLiteral("shop"), duty_row = QStringLiteral("duty"),
              rules_row = QStringLiteral("rules");

std::set<std::string> classes_of(const Session& session) {
  std::set<std::string> out;
  for (const Unit& unit : units(session)) out.insert(unit.machine_class);
  return out;
}

QString rest_of(const QString& id) { return id.section(' ', 1); }

}  // namespace

HoursPage::HoursPage(Session& session, QWidget* parent)
    : ListPage(session, tr("a name, a machine, closed"), {{tr("What"), 250}, {tr("When"), 0}}, parent) {}

bool HoursPage::manages() const { return session().role() == db::Role::manager && !session().known(); }

bool HoursPage::speaks_for(const PersonId& person) const {
  const bool instructs = session().role() == db::Role::instructor && !session().known();
  return manages() || (instructs && session().seated() && session().joined(session().seated()->id) == person);
}

void HoursPage::open(const Place& place) {
  panel_->close_form();
  if (!place.person.empty()) {
    search_->clear();
    list_->choose("person " + QString::fromStdString(session().joined(place.person)));
  }
  search_->setFocus(Qt::OtherFocusReason);
  search_->selectAll();
}

ListRow HoursPage::row(const QString& id, const QString& what, const QString& when,
                       const QString& quiet) const {
  return {id, {{what, {}}, {when, quiet}}, false};
}

std::vector<ListRow> HoursPage::shop_rows() {
  const auto week = said_of<db::WeekHours>(session(), "week_hours");
  const QString open = week_words(week, db::Doing::open), duty = week_words(week, db::Doing::staffed);
  const auto rules = last_of(said_of<db::DiaryRules>(session(), "diary_rules"));
  return {row(shop_row, tr("The shop is open"), open.isEmpty() ? tr("no hours entered: at all hours") : open),
          row(duty_row, tr("Somebody is on duty"),
              duty.isEmpty() ? tr("no hours entered: whenever it is open") : duty),
          row(rules_row, tr("How the shop books"),
              hours_sentence(rules.value_or(db::DiaryRules{}), record_reader(session())))};
}

/// Closures, other hours of the shop's and maintenance, as long as they are not over.
std::vector<ListRow> HoursPage::other_rows() {
  std::vector<ListRow> out;
  const RecordReader reader = record_reader(session());
  const Day today = session().zone().day(session().present());
  for (const auto& each : said_of<db::OtherHours>(session(), "other_hours"))
    if (each.fact.person.empty() && each.fact.last >= today)
      out.push_back(row("record " + QString::fromStdString(each.id),
                        each.fact.parts.empty() ? tr("Closed") : tr("Other hours"),
                        hours_sentence(each.fact, reader)));
  for (const auto& each : said_of<db::Upkeep>(session(), "upkeep"))
    if (each.fact.to > session().present())
      out.push_back(row("record " + QString::fromStdString(each.id), tr("Maintenance"),
                        hours_sentence(each.fact, reader)));
  return out;
}

std::vector<ListRow> HoursPage::person_rows() {
  std::vector<ListRow> out;
  const RecordReader reader = record_reader(session());
  for (const PersonId& person : assessing(session())) {
    const QString week = week_words(said_of<db::Hours>(session(), "hours", person));
    QStringList quiet;
    for (const auto& each : said_of<db::OtherHours>(session(), "other_hours", person))
      if (each.fact.last >= session().zone().day(session().present()))
        quiet
            << (each.fact.parts.empty()
                    ? tr("away %1", "days").arg(days_span(each.fact.first, each.fact.last, session().zone()))
                    : tr("other hours %1", "days")
                          .arg(days_span(each.fact.first, each.fact.last, session().zone())));
    if (const auto takes = last_of(said_of<db::TakesOn>(session(), "takes_on", person)))
      quiet << takes_on_words(*takes);
    if (const auto busy = last_of(said_of<db::Busy>(session(), "busy", person)))
      quiet << tr("busy times from a calendar: %1").arg(busy->parts.size());
    out.push_back(row("person " + QString::fromStdString(person), reader.name_of(person),
                      week.isEmpty() ? tr("no hours entered: never offered") : week, quiet.join("; ")));
  }
  return out;
}

std::vector<ListRow> HoursPage::class_rows() {
  std::vector<ListRow> out;
  for (const std::string& each : classes_of(session()))
    out.push_back(row("class " + QString::fromStdString(each),
                      tr("One-on-one: %1", "a machine").arg(class_label(each)),
                      length_of_time(lasts(session(), each))));
  return out;
}

std::vector<ListRow> HoursPage::rows(const QString& typed) {
  std::vector<ListRow> out;
  const TypedWords wanted(typed);
  for (auto part :
       {&HoursPage::shop_rows, &HoursPage::other_rows, &HoursPage::person_rows, &HoursPage::class_rows})
    for (ListRow& each : (this->*part)()) {
      QString all;
      for (const ListCell& cell : each.cells) all += cell.text + ' ' + cell.quiet + ' ';
      if (wanted.in(all)) out.push_back(std::move(each));
    }
  count_->setText(manages() ? tr("The Diary offers times by these hours.")
                            : tr("The Diary offers times by these hours. A manager enters them."));
  return out;
}

void HoursPage::said_line(const QString& words, const RecordId& record, bool may) {
  panel_->paragraph(words);
  if (!may) return;
  panel_
      ->button(tr("Strike this out"), {},
               [this, record, words] {
                 report(session().commit(db::StrikeOutRecord{record, tr("no longer so").toStdString()}),
                        tr("Struck out: %1").arg(words));
               })
      ->setObjectName("strike");
}

void HoursPage::describe(const QString& id) {
  panel_->start();
  if (id.startsWith("person ")) {
    describe_person(rest_of(id).toStdString());
  } else if (id.startsWith("class ")) {
    describe_class(rest_of(id).toStdString());
  } else if (id.startsWith("record ")) {
    const db::Entry* entry = session().entry(rest_of(id).toStdString());
    panel_->heading(tr("Other than every week"));
    if (entry) said_line(record_sentence(*entry, record_reader(session())), entry->id, manages());
  } else {
    describe_shop();
  }
  if (manages()) shop_actions();
  panel_->quiet(tr("Hours give nobody permission for anything; they say when a one-on-one can be booked."));
}

void HoursPage::describe_shop() {
  const RecordReader reader = record_reader(session());
  panel_->heading(tr("The shop's hours"));
  auto week = said_of<db::WeekHours>(session(), "week_hours");
  std::ranges::stable_sort(week, {}, [](const auto& each) {
    return std::tuple(each.fact.doing, each.fact.weekday, each.fact.from_minute);
  });
  if (week.empty())
    panel_->paragraph(
        tr("No hours are entered yet: one-on-ones are offered whenever somebody who assesses is in."));
  for (const auto& each : week) said_line(hours_sentence(each.fact, reader), each.id, manages());
}

void HoursPage::describe_person(const PersonId& person) {
  const RecordReader reader = record_reader(session());
  panel_->heading(reader.name_of(person));
  const bool own = speaks_for(person);
  bool some = false;
  for (const HoursLine& each : hours_of(session(), person)) {
    said_line(tr("%1, %2", "weekday, hours").arg(weekday_words(each.hours.weekday), hours_words(each.hours)),
              each.id, manages());
    some = true;
  }
  if (!some) panel_->paragraph(tr("No hours are entered: the Diary offers no time with them."));
  for (const auto& each : said_of<db::Break>(session(), "break", person))
    said_line(hours_sentence(each.fact, reader), each.id, manages());
  for (const auto& each : said_of<db::OtherHours>(session(), "other_hours", person))
    if (each.fact.last >= session().zone().day(session().present()))
      said_line(hours_sentence(each.fact, reader), each.id, manages());
  if (const auto takes = last_of(said_of<db::TakesOn>(session(), "takes_on", person)))
    panel_->paragraph(hours_sentence(*takes, reader));
  if (const auto busy = last_of(said_of<db::Busy>(session(), "busy", person)))
    panel_->paragraph(hours_sentence(*busy, reader));
  panel_->section(tr("What can be done"));
  if (own) person_actions(person);
  panel_
      ->button(tr("Save one-on-ones as a calendar"), QKeySequence("Ctrl+Shift+K"),
               [this, person] {
                 show_own_form(
                     [&](const Tell& done) { return save_calendar_form(session(), OfPerson{person}, done); });
               })
      ->setObjectName("calendar");
}

void HoursPage::describe_class(const std::string& machine_class) {
  panel_->heading(class_label(machine_class));
  panel_->paragraph(tr("A one-on-one on it lasts %1.", "a length of time")
                        .arg(length_of_time(lasts(session(), machine_class))));
  if (manages())
    panel_
        ->button(tr("Change how long"), QKeySequence("Ctrl+G"),
                 [this, machine_class] { set_length(machine_class); })
        ->setObjectName("length");
}

void HoursPage::person_actions(const PersonId& person) {
  if (manages()) {
    panel_
        ->button(tr("Add weekly hours"), QKeySequence("Ctrl+T"),
                 [this, person] { add_person_hours(person, false); })
        ->setObjectName("hours");
    panel_
        ->button(tr("Add a break"), QKeySequence("Ctrl+B"),
                 [this, person] { add_person_hours(person, true); })
        ->setObjectName("break");
    panel_->button(tr("What they take on"), QKeySequence("Ctrl+G"), [this, person] { set_takes_on(person); })
        ->setObjectName("takes_on");
  }
  panel_
      ->button(tr("Away, or other hours"), QKeySequence("Ctrl+Shift+A"),
               [this, person] { add_other_hours(person); })
      ->setObjectName("away");
  panel_
      ->button(tr("Take in when they are busy"), QKeySequence("Ctrl+I"),
               [this, person] {
                 show_own_form([&](const Tell& done) { return take_calendar_form(session(), person, done); });
               })
      ->setObjectName("take_in");
}

void HoursPage::shop_actions() {
  panel_->section(tr("The shop"));
  panel_->button(tr("Add weekly hours of the shop"), QKeySequence::New, [this] { add_week_hours(); })
      ->setObjectName("new");
  panel_
      ->button(tr("Close it, or other hours"), QKeySequence("Ctrl+Shift+O"), [this] { add_other_hours({}); })
      ->setObjectName("other");
  panel_->button(tr("Maintenance of a unit"), QKeySequence("Ctrl+M"), [this] { add_upkeep(); })
      ->setObjectName("upkeep");
  panel_->button(tr("How the shop books"), QKeySequence("Ctrl+R"), [this] { set_rules(); })
      ->setObjectName("rules");
}

Expected<db::Committed> HoursPage::enter(db::ShopFact fact) {
  return session().commit(db::EnterShopFact{std::move(fact)});
}

}  // namespace wm::app
