// The forms of the page Hours.
#include "app/diary/bookings.h"
#include "app/hours/hours_book.h"
#include "app/hours/hours_page.h"
#include "app/hours/reading.h"
#include "app/hours/weekly.h"
#include "app/widgets/date_field.h"
#include "app/words/hours_words.h"
#include "app/words/words.h"
#include "core/diary/wall.h"

namespace wm::app {
namespace {

using Choices = std::vector<std::pair<QString, QString>>;

/// One weekday, or several at once: their numbers as the value.
Choices weekdays() {
  Choices out;
  for (int day = 0; day < 7; ++day) out.emplace_back(QString::number(day), weekday_words(day));
  out.emplace_back("01234", HoursPage::tr("Monday to Friday"));
  out.emplace_back("0123456", HoursPage::tr("every day"));
  return out;
}

struct Span {
  QLineEdit *from, *to;
};
Span span_fields(Form& form) {
  const auto [from, to] = form.two_lines(HoursPage::tr("From"), "from", HoursPage::tr("To"), "to");
  return {from, to};
}
Expected<db::DayPart> read_span(const Span& span) {
  const auto from = read_minute(span.from->text()), to = read_minute(span.to->text());
  if (from && to) return db::DayPart{*from, *to};
  return mistyped(HoursPage::tr("hours"), HoursPage::tr("That is no time of day"),
                  HoursPage::tr("Type it as 17:30 or 5:30 pm"));
}

DateField* day_field(Form& form, const Session& session, const QString& words, const char* name,
                     const QString& empty) {
  auto* out = new DateField(empty);
  out->setObjectName(name);
  out->set_today(session.zone().day(session.now()));
  form.add_field(words, out);
  return out;
}
Expected<Day> read_day_of(const DateField& field) {
  if (const auto day = field.typed()) return *day;
  return mistyped(HoursPage::tr("day"), HoursPage::tr("That is no date"),
                  HoursPage::tr("Type it as 25 Nov 2026"));
}
/// One day where the second field is empty.
Expected<std::pair<Day, Day>> read_days(const DateField& first, const DateField& last) {
  const auto from = read_day_of(first);
  if (!from) return tl::make_unexpected(from.error());
  if (last.text().trimmed().isEmpty()) return std::pair(*from, *from);
  return read_day_of(last).map([&](Day through) { return std::pair(*from, through); });
}

QString number_of(const std::optional<int>& value) { return value ? QString::number(*value) : QString(); }

/// Enters one record for each weekday, all or none.
Expected<db::Committed> enter_each(Session& session, const QString& days,
                                   const std::function<db::ShopFact(int)>& fact) {
  std::vector<db::Action> actions;
  for (const QChar each : days) actions.emplace_back(db::EnterShopFact{fact(each.digitValue())});
  return session.commit_all(std::move(actions));
}

}  // namespace

void HoursPage::add_week_hours() {
  auto* form = new Form(tr("Weekly hours of the shop"), tr("Add these hours"));
  QComboBox* doing = form->choice(tr("What"), "doing",
                                  {{"open", tr("The shop is open")}, {"staffed", tr("Somebody is on duty")}});
  QComboBox* day = form->choice(tr("Every"), "weekday", weekdays());
  const Span span = span_fields(*form);
  QLineEdit* adults = form->line(tr("Adults on duty at once"), "adults", "1");
  form->say(
      tr("A one-on-one is booked only while the shop is open and somebody is on duty. Somebody under 18 is "
         "booked only while two adults are in: with two on duty, or one more in by their own hours."));
  run_form(form, tr("Hours of the shop added."),
           [this, doing, day, span, adults]() -> Expected<db::Committed> {
             const auto part = read_span(span);
             if (!part) return tl::make_unexpected(part.error());
             const auto count = read_number(adults->text(), tr("adults"));
             if (!count) return tl::make_unexpected(count.error());
             const db::Doing what = doing->currentIndex() == 0 ? db::Doing::open : db::Doing::staffed;
             return enter_each(session(), day->currentData().toString(), [&](int on) {
               return db::WeekHours{what, on, part->from_minute, part->to_minute, count->value_or(1)};
             });
           });
}

void HoursPage::add_other_hours(const PersonId& person) {
  const bool shop = person.empty();
  const QString name = shop ? QString() : name_of(session(), person);
  auto* form = new Form(shop ? tr("Close it, or other hours") : tr("%1: away, or other hours").arg(name),
                        tr("Enter it"));
  auto* first = day_field(*form, session(), tr("First day"), "first", tr("which day"));
  auto* last = day_field(*form, session(), tr("Last day"), "last", tr("the same day"));
  QLineEdit* parts = form->line(tr("Hours on each of these days"), "parts");
  parts->setPlaceholderText(shop ? tr("closed; or 12:00-14:00, 17:00-20:00")
                                 : tr("away; or 12:00-14:00, 17:00-20:00"));
  QComboBox* doing =
      shop ? form->choice(tr("What"), "doing",
                          {{"open", tr("The shop is open")}, {"staffed", tr("Somebody is on duty")}})
           : nullptr;
  QLineEdit* adults = shop ? form->line(tr("Adults on duty at once"), "adults", "1") : nullptr;
  QLineEdit* why = form->line(tr("Why (may stay empty)"), "why");
  form->say(tr("These hours take the place of the week's on those days; without any there are none."));
  run_form(form, shop ? tr("The shop's hours on those days are entered.") : tr("Entered for %1.").arg(name),
           [=, this]() -> Expected<db::Committed> {
             const auto days = read_days(*first, *last);
             if (!days) return tl::make_unexpected(days.error());
             const auto hours = read_parts(parts->text());
             if (!hours) return tl::make_unexpected(hours.error());
             const auto count = read_number(adults ? adults->text() : QString(), tr("adults"));
             if (!count) return tl::make_unexpected(count.error());
             const bool duty = doing && doing->currentIndex() == 1;
             return enter(db::OtherHours{person, duty ? db::Doing::staffed : db::Doing::open, days->first,
                                         days->second, *hours, count->value_or(1),
                                         why->text().simplified().toStdString()});
           });
}

void HoursPage::add_upkeep() {
  auto* form = new Form(tr("Maintenance of a unit"), tr("Enter it"));
  Choices machines;
  for (const Unit& unit : units(session()))
    machines.emplace_back(QString::fromStdString(unit.id), unit_label(units(session()), unit.id));
  QComboBox* machine = form->choice(tr("Unit"), "machine", machines);
  auto* first = day_field(*form, session(), tr("First day"), "first", tr("which day"));
  auto* last = day_field(*form, session(), tr("Last day"), "last", tr("the same day"));
  const Span span = span_fields(*form);
  QLineEdit* why = form->line(tr("Why (may stay empty)"), "why");
  form->say(
      tr("Nothing is booked on it from the first time on the first day to the second on the last. This "
         "puts nothing out of service: that is done at the machine, with a padlock and a tag."));
  run_form(form, tr("Maintenance entered."), [=, this]() -> Expected<db::Committed> {
    const auto days = read_days(*first, *last);
    if (!days) return tl::make_unexpected(days.error());
    const auto part = read_span(span);
    if (!part) return tl::make_unexpected(part.error());
    return enter(db::Upkeep{machine->currentData().toString().toStdString(),
                            on_wall(session().zone(), days->first, part->from_minute),
                            on_wall(session().zone(), days->second, part->to_minute),
                            why->text().simplified().toStdString()});
  });
}

void HoursPage::set_rules() {
  const auto now = last_of(said_of<db::DiaryRules>(session(), "diary_rules")).value_or(db::DiaryRules{});
  auto* form = new Form(tr("How the shop books"), tr("Book like this from now on"));
  QLineEdit* wait = form->line(tr("Longest wait, in days"), "longest_wait", number_of(now.longest_wait));
  QLineEdit* hold = form->line(tr("A time is held, in hours"), "hold_hours", number_of(now.hold_hours));
  QLineEdit* often = form->line(tr("Not come so many times"), "not_come", number_of(now.not_come));
  QLineEdit* within = form->line(tr("within so many days"), "not_come_days", number_of(now.not_come_days));
  QLineEdit* rest =
      form->line(tr("is booked again after so many days"), "rest_days", number_of(now.rest_days));
  form->say(
      tr("Whoever has waited longer comes first when everyone is fitted. What stays empty is no rule."));
  run_form(form, tr("How the shop books is entered."), [=, this]() -> Expected<db::Committed> {
    db::DiaryRules rules;
    const std::pair<QLineEdit*, std::optional<int> db::DiaryRules::*> fields[] = {
        {wait, &db::DiaryRules::longest_wait},
        {hold, &db::DiaryRules::hold_hours},
        {often, &db::DiaryRules::not_come},
        {within, &db::DiaryRules::not_come_days},
        {rest, &db::DiaryRules::rest_days}};
    for (const auto& [field, member] : fields) {
      const auto number = read_number(field->text(), field->accessibleName());
      if (!number) return tl::make_unexpected(number.error());
      rules.*member = *number;
    }
    return enter(rules);
  });
}

void HoursPage::set_length(const std::string& machine_class) {
  const QString name = class_label(machine_class);
  auto* form = new Form(tr("A one-on-one on %1").arg(name), tr("Book it like this"));
  QLineEdit* minutes = form->line(tr("How long it lasts, in minutes or as 1:30"), "minutes",
                                  QString::number(lasts(session(), machine_class)));
  form->say(tr("What is booked already stays as it is."));
  run_form(form, tr("How long a one-on-one on %1 lasts is entered.").arg(name),
           [=, this]() -> Expected<db::Committed> {
             const auto read = read_minutes(minutes->text(), tr("length"));
             if (!read) return tl::make_unexpected(read.error());
             if (!*read)
               return mistyped(tr("length"), tr("It does not say how long"), tr("Type minutes, or 1:30"));
             return enter(db::Lasts{machine_class, **read});
           });
}

void HoursPage::add_person_hours(const PersonId& person, bool pause) {
  const QString name = name_of(session(), person);
  auto* form = new Form(pause ? tr("A break of %1").arg(name) : tr("When is %1 usually in?").arg(name),
                        pause ? tr("Add this break") : tr("Add these hours"));
  QComboBox* day = form->choice(tr("Every"), "weekday", weekdays());
  const Span span = span_fields(*form);
  run_form(form, pause ? tr("A break of %1 added.").arg(name) : tr("Hours of %1 added.").arg(name),
           [=, this]() -> Expected<db::Committed> {
             const auto part = read_span(span);
             if (!part) return tl::make_unexpected(part.error());
             return enter_each(session(), day->currentData().toString(), [&](int on) -> db::ShopFact {
               if (pause) return db::Break{person, on, part->from_minute, part->to_minute};
               return db::Hours{person, on, part->from_minute, part->to_minute};
             });
           });
}

void HoursPage::set_takes_on(const PersonId& person) {
  const QString name = name_of(session(), person);
  const auto now =
      last_of(said_of<db::TakesOn>(session(), "takes_on", person)).value_or(db::TakesOn{person, {}, {}, {}});
  auto* form = new Form(tr("What %1 takes on").arg(name), tr("Book like this from now on"));
  QLineEdit* longest =
      form->line(tr("Longest day, in minutes or as 4:00"), "longest_day", number_of(now.longest_day));
  QLineEdit* stretch = form->line(tr("At most on end"), "stretch", number_of(now.stretch));
  QLineEdit* rest = form->line(tr("then a break of"), "rest", number_of(now.rest));
  form->say(tr("What stays empty is no limit. What is booked already stays, and counts."));
  run_form(form, tr("What %1 takes on is entered.").arg(name), [=, this]() -> Expected<db::Committed> {
    db::TakesOn takes{person, {}, {}, {}};
    const std::pair<QLineEdit*, std::optional<int> db::TakesOn::*> fields[] = {
        {longest, &db::TakesOn::longest_day}, {stretch, &db::TakesOn::stretch}, {rest, &db::TakesOn::rest}};
    for (const auto& [field, member] : fields) {
      const auto minutes = read_minutes(field->text(), field->accessibleName());
      if (!minutes) return tl::make_unexpected(minutes.error());
      takes.*member = *minutes;
    }
    return enter(takes);
  });
}

}  // namespace wm::app
