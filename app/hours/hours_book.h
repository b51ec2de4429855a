#pragma once
// Hours, and how the shop books, as the journal has them at the session's dates.
#include <QString>
#include <optional>
#include <vector>

#include "app/session.h"
#include "db/journal/subject.h"

namespace wm::app {

template <class F>
struct Said {
  RecordId id;
  F fact;
};

/// Those of a kind that count, in order.
template <class F>
std::vector<Said<F>> said_of(const Session& session, std::string_view kind) {
  std::vector<Said<F>> out;
  for (const db::Entry* entry : session.store().of_kind(kind))
    if (session.counts(*entry)) out.push_back({entry->id, *db::as<F>(entry->fact)});
  return out;
}
/// Those of one person, and of entries joined to theirs.
template <class F>
std::vector<Said<F>> said_of(const Session& session, std::string_view kind, const PersonId& person) {
  std::vector<Said<F>> out = said_of<F>(session, kind);
  std::erase_if(out, [&](const Said<F>& each) {
    return each.fact.person.empty() || session.joined(each.fact.person) != person;
  });
  return out;
}
template <class F>
std::optional<F> last_of(const std::vector<Said<F>>& all) {
  return all.empty() ? std::nullopt : std::optional(all.back().fact);
}

/// Whoever assesses something now, or has said hours of any kind; by name.
std::vector<PersonId> assessing(Session& session);
/// How long a one-on-one on a class lasts, in minutes; an hour where nothing is said.
int lasts(const Session& session, const std::string& machine_class);
/// "Mon–Fri 12:00–20:00; Sat 10:00–16:00": days with the same hours together.
QString week_words(const std::vector<std::pair<int, db::DayPart>>& week);
QString week_words(const std::vector<Said<db::WeekHours>>& week, db::Doing doing);
QString week_words(const std::vector<Said<db::Hours>>& week);

}  // namespace wm::app
