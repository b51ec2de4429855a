#pragma once
// What is said of a lock that is on a machine, wherever it is said.
#include <QString>
#include <functional>

#include "core/time/zone.h"
#include "db/floor.h"

namespace wm::app {

using NameOf = std::function<QString(const PersonId&)>;

/// Whether a padlock is noted: where none was put on there is no key to it either.
bool has_padlock(const db::Tag& tag);
/// "padlock 5" from "5"; as it is where it says so itself; "no padlock" from nothing.
QString padlock_words(const std::string& padlock);
/// "T-31", or that there is none.
QString tag_number_words(const std::string& tag);
/// A name, or that it is not known, which only what was taken in from older records can be.
QString whose_lock_words(const db::LockOn& lock, const NameOf& name_of);
/// A name, or that nobody is noted.
QString key_words(const db::LockOn& lock, const NameOf& name_of);
/// "tag T-31, padlock 5, key with Tom Ryde"; no key where there is no padlock.
QString tag_words(const db::LockOn& lock, const NameOf& name_of);
/// "out of service since Sat 21 Nov, put on by Tom Ryde; tag T-31, padlock 5, key with Tom Ryde: belt slips"
QString lock_words(const db::LockOn& lock, const NameOf& name_of, const Zone& zone);

}  // namespace wm::app
