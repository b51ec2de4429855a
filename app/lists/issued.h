#pragma once
// What the shop teaches and tests by, revision by revision, as it was issued and as known.
#include <QByteArray>
#include <map>
#include <string>
#include <vector>

#include "app/session.h"

namespace wm::app {

struct IssuedRevision {
  RecordId record;
  Instant at;
  PersonId by;
  const db::Issued* work = nullptr;  // good until something is entered
};

/// In order of their entry.
std::vector<IssuedRevision> all_issued(const Session& session, db::Work work);
/// Of one name, the latest last.
std::vector<IssuedRevision> revisions_of(const Session& session, db::Work work, const std::string& name);
/// The latest of each name, in order of names.
std::vector<IssuedRevision> latest_issued(const Session& session, db::Work work);

/// Each revision of what was published, with the moment from which it counts.
using Published = std::map<std::pair<std::string, int>, Instant>;
Published published_in(const Session& session);

/// The text of a lesson that can be gone through: the latest, but for one whose publication lies ahead.
std::optional<IssuedRevision> lesson_text(const Session& session, const std::string& name);

/// The file that an enclosure is.
QByteArray bytes_of(const db::Enclosure& enclosure);

}  // namespace wm::app
