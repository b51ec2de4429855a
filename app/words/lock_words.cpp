#include "app/words/lock_words.h"

#include "app/words/record_words.h"
#include "app/words/tr.h"
#include "app/words/words.h"

namespace wm::app {

bool has_padlock(const db::Tag& tag) { return !QString::fromStdString(tag.padlock).trimmed().isEmpty(); }

QString padlock_words(const std::string& padlock) {
  const QString said = QString::fromStdString(padlock).trimmed();
  if (said.isEmpty()) return Words::tr("no padlock noted");
  return said.contains(Words::tr("padlock"), Qt::CaseInsensitive) ? said : Words::tr("padlock %1").arg(said);
}

QString tag_number_words(const std::string& tag) {
  return tag.empty() ? Words::tr("without a number", "a tag") : QString::fromStdString(tag);
}

QString whose_lock_words(const db::LockOn& lock, const NameOf& name_of) {
  return lock.whose.empty() ? Words::tr("not known: from the shop's older records", "who put a padlock on")
                            : name_of(lock.whose);
}

QString key_words(const db::LockOn& lock, const NameOf& name_of) {
  return lock.tag.key_holder.empty() ? Words::tr("nobody noted", "who holds a key")
                                     : name_of(lock.tag.key_holder);
}

QString tag_words(const db::LockOn& lock, const NameOf& name_of) {
  const QString tag = tag_number_words(lock.tag.tag), padlock = padlock_words(lock.tag.padlock);
  return has_padlock(lock.tag) ? Words::tr("tag %1, %2, key with %3", "tag, padlock, who holds the key")
                                     .arg(tag, padlock, key_words(lock, name_of))
                               : Words::tr("tag %1, %2", "tag, padlock").arg(tag, padlock);
}

QString lock_words(const db::LockOn& lock, const NameOf& name_of, const Zone& zone) {
  const QString by = lock.whose.empty() ? Words::tr("who put it on is not known")
                                        : Words::tr("put on by %1").arg(name_of(lock.whose));
  return Words::tr("out of service since %1, %2; %3: %4", "day, who put it on, its tag and padlock, why")
      .arg(short_day(lock.since, zone), by, tag_words(lock, name_of), said_words(lock.tag.reason));
}

}  // namespace wm::app
