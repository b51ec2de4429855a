#include "app/lists/answer_reader.h"

#include "app/words/labels.h"

namespace wm::app {

namespace {

/// Every date that was entered, those struck out too: a wrong one may be nearly right.
Birthdays birthdays(const Session& session) {
  Birthdays all;
  for (const auto& [person, born] : session.store().births()) all.add(person, born);
  return all;
}

}  // namespace

AnswerReader answer_reader(Session& session, const PersonId& person) {
  AnswerReader reader;
  reader.name_of = [&session](const PersonId& id) { return person_name(session.person(id)); };
  reader.record_of = [&session](const RecordId& id) { return session.entry(id); };
  reader.person = session.store().joined(person);
  reader.called = called(session.person(person));
  reader.zone = session.zone();
  reader.now = session.at();
  reader.birthdays = birthdays(session);
  return reader;
}

Restrictions restrictions(const Session& session) { return restrictions(session, session.known()); }

QStringList restricted_now(Session& session, const PersonId& person, const TargetName& target) {
  return restrictions(session, std::nullopt)
      .on(session.decider(std::nullopt), session.store().joined(person), target, session.now());
}

Restrictions restrictions(const Session& session, std::optional<Instant> known) {
  Restrictions all;
  for (const db::Entry* entry : session.store().of_kind("restriction"))
    if (known ? entry->recorded <= *known && !(entry->voided && *entry->voided <= *known) : !entry->voided)
      all.add(*entry);
  return all;
}

QString called(const std::optional<db::Person>& person) {
  if (person && !person->nickname.empty()) return QString::fromStdString(person->nickname);
  if (person && !person->given.empty()) return QString::fromStdString(person->given);
  return person_name(person);
}

}  // namespace wm::app
