#include "app/hours/hours_book.h"

#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <set>

#include "app/hours/tr.h"
#include "app/words/hours_words.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

QString short_weekday(int day) { return QLocale().standaloneDayName(day + 1, QLocale::ShortFormat); }

/// What one weekday has, in order of time.
QString hours_on(const std::vector<std::pair<int, db::DayPart>>& week, int day) {
  std::vector<db::DayPart> parts;
  for (const auto& [on, part] : week)
    if (on == day) parts.push_back(part);
  std::ranges::sort(parts, {}, &db::DayPart::from_minute);
  return parts_words(parts);
}

template <class F>
void add_people(const Session& session, std::string_view kind, std::set<PersonId>& people) {
  for (const Said<F>& each : said_of<F>(session, kind))
    if (!each.fact.person.empty()) people.insert(session.joined(each.fact.person));
}

}  // namespace

std::vector<PersonId> assessing(Session& session) {
  std::set<PersonId> people;
  add_people<db::Hours>(session, "hours", people);
  add_people<db::OtherHours>(session, "other_hours", people);
  add_people<db::Break>(session, "break", people);
  add_people<db::TakesOn>(session, "takes_on", people);
  add_people<db::Busy>(session, "busy", people);
  if (const Rulebook* rulebook = session.decider().in_force(session.present()))
    for (const TargetName& target : targets_of(*rulebook))
      for (const PersonId& each : session.decider().assessors(target, session.present())) people.insert(each);
  std::vector<PersonId> out(people.begin(), people.end());
  std::ranges::stable_sort(out, {}, [&](const PersonId& id) { return person_name(session.person(id)); });
  return out;
}

int lasts(const Session& session, const std::string& machine_class) {
  int minutes = 60;
  for (const auto& each : said_of<db::Lasts>(session, "lasts"))
    if (each.fact.machine_class == machine_class) minutes = each.fact.minutes;
  return minutes;
}

QString week_words(const std::vector<std::pair<int, db::DayPart>>& week) {
  QStringList out;
  for (int day = 0; day < 7;) {
    const QString hours = hours_on(week, day);
    int last = day;
    while (last < 6 && hours_on(week, last + 1) == hours) ++last;
    if (!hours.isEmpty()) {
      const QString days =
          last == day ? short_weekday(day)
                      : HoursWords::tr("%1–%2", "weekdays").arg(short_weekday(day), short_weekday(last));
      out << HoursWords::tr("%1 %2", "weekdays, hours").arg(days, hours);
    }
    day = last + 1;
  }
  return out.join(QStringLiteral("; "));
}

QString week_words(const std::vector<Said<db::WeekHours>>& week, db::Doing doing) {
  std::vector<std::pair<int, db::DayPart>> out;
  for (const auto& each : week)
    if (each.fact.doing == doing)
      out.emplace_back(each.fact.weekday, db::DayPart{each.fact.from_minute, each.fact.to_minute});
  return week_words(out);
}

QString week_words(const std::vector<Said<db::Hours>>& week) {
  std::vector<std::pair<int, db::DayPart>> out;
  for (const auto& each : week)
    out.emplace_back(each.fact.weekday, db::DayPart{each.fact.from_minute, each.fact.to_minute});
  return week_words(out);
}

}  // namespace wm::app
