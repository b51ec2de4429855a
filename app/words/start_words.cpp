#include "app/words/start_words.h"

#include "app/words/condition_words.h"
#include "app/words/listing.h"
#include "app/words/lock_words.h"
#include "app/words/standing_words.h"
#include "app/words/tr.h"

namespace wm::app {

namespace {

constexpr int most_names = 3;

QString lockout_sentence(const RecordId& lockout, const StartReader& start) {
  const AnswerReader& reader = start.reader;
  const db::Entry* entry = reader.record_of(lockout);
  if (!entry) return Words::tr("The machine is out of service.");
  const QString since = reader.day(entry->at);
  const db::LockOn* lock = start.lock_of(lockout);
  const PersonId whose = lock ? lock->whose : entry->entered_by;
  const QString by = whose.empty() ? QString() : reader.name_of(whose);
  QStringList said;
  said << (by.isEmpty() ? Words::tr("The machine is out of service since %1.").arg(since)
                        : Words::tr("The machine is out of service since %1, put by %2.").arg(since, by));
  if (lock && !(lock->tag == db::Tag{lockout, {}, {}, {}, {}})) {
    const QString tag = tag_number_words(lock->tag.tag);
    said << (has_padlock(lock->tag) && !lock->tag.key_holder.empty()
                 ? Words::tr("Tag %1, key with %2.").arg(tag, reader.name_of(lock->tag.key_holder))
                 : Words::tr("Tag %1.").arg(tag));
  }
  // As the store's table of who may enter what has it.
  said << (by.isEmpty()
               ? Words::tr("A manager can take the padlock off.")
               : Words::tr("%1 can take the padlock off; a manager can once it was tried to reach %1.")
                     .arg(by));
  return said.join(' ');
}

QString too_few(const MayStart& may) {
  QStringList needed;
  for (const Condition& condition : may.conditions)
    if (std::holds_alternative<Buddy>(condition)) needed << condition_words(condition);
  needed.removeDuplicates();
  if (needed.isEmpty()) return Words::tr("Too few others are present.");
  return Words::tr("Too few others are present: it may be used while %1.").arg(and_list(needed));
}

QString no_supervisor(const StartReader& start) {
  QStringList names = start.could_supervise();
  const QString nobody = Words::tr("Nobody is here and free who can supervise.");
  if (names.isEmpty()) return nobody + ' ' + Words::tr("Nobody else in the shop could, either.");
  if (names.size() > most_names) {
    names = names.mid(0, most_names);
    names << Words::tr("somebody else");
  }
  return nobody + ' ' + Words::tr("%1 could.", "people").arg(or_list(names));
}

QString hindrance_sentence(Hindrance hindrance, const MayStart& may, const StartReader& start) {
  switch (hindrance) {
    case Hindrance::barred:
      return Words::tr("%1 may not use it yet.").arg(start.reader.called);
    case Hindrance::buddy:
      return too_few(may);
    case Hindrance::locked_out: {
      QStringList locks;
      for (const RecordId& lockout : may.lockouts) locks << lockout_sentence(lockout, start);
      return locks.isEmpty() ? Words::tr("The machine is out of service.") : locks.join(' ');
    }
    case Hindrance::no_supervisor:
      return no_supervisor(start);
    case Hindrance::staffed:
      return Words::tr("No staff are in: somebody else on duty has to come in first.");
  }
  return {};
}

}  // namespace

QStringList hindrance_sentences(const MayStart& may, const StartReader& start) {
  QStringList sentences;
  for (const Hindrance each : may.because) sentences << hindrance_sentence(each, may, start);
  return sentences;
}

QString may_start_sentence(const MayStart& may, Rung standing, const QStringList& restrictions,
                           const AnswerReader& reader) {
  if (!may.may) return {};
  QStringList names;
  for (const PersonId& id : may.can_supervise) names << reader.name_of(id);
  QStringList said{standing == Rung::independent
                       ? Words::tr("%1 may start it now.").arg(reader.called)
                       : Words::tr("Here now who can supervise: %1.").arg(and_list(names))};
  if (!restrictions.isEmpty()) said << restricted_sentence(restrictions);
  return said.join(' ');
}

}  // namespace wm::app
