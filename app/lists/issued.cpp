#include "app/lists/issued.h"

#include <algorithm>

#include "db/journal/subject.h"

namespace wm::app {
std::vector<IssuedRevision> all_issued(const Session& session, db::Work work) {
  std::vector<IssuedRevision> out;
  for (const db::Entry* entry : session.store().of_kind("issued")) {
    const auto* issued = db::as<db::Issued>(entry->fact);
    if (session.counts(*entry) && issued->work == work)
      out.push_back({entry->id, entry->at, entry->entered_by, issued});
  }
  return out;
}

std::vector<IssuedRevision> revisions_of(const Session& session, db::Work work, const std::string& name) {
  std::vector<IssuedRevision> all = all_issued(session, work);
  std::erase_if(all, [&](const IssuedRevision& one) { return one.work->name != name; });
  return all;
}

std::vector<IssuedRevision> latest_issued(const Session& session, db::Work work) {
  std::map<std::string, IssuedRevision> latest;
  for (const IssuedRevision& one : all_issued(session, work)) latest[one.work->name] = one;
  std::vector<IssuedRevision> out;
  for (const auto& [name, one] : latest) out.push_back(one);
  return out;
}

Published published_in(const Session& session) {
  Published published;
  for (const db::Entry* entry : session.store().of_kind("publish")) {
    const auto* publish = session.counts(*entry) ? db::as<Publish>(entry->fact) : nullptr;
    if (publish == nullptr) continue;
    const auto [there, added] = published.try_emplace({publish->item, publish->revision}, entry->at);
    if (!added) there->second = std::min(there->second, entry->at);
  }
  return published;
}

std::optional<IssuedRevision> lesson_text(const Session& session, const std::string& name) {
  const Published published = published_in(session);
  std::optional<IssuedRevision> out;
  for (const IssuedRevision& each : revisions_of(session, db::Work::lesson, name)) {
    const auto found = published.find({name, each.work->revision});
    if (found == published.end() || found->second <= session.present()) out = each;
  }
  return out;
}

QByteArray bytes_of(const db::Enclosure& enclosure) {
  return QByteArray::fromBase64(QByteArray::fromStdString(enclosure.base64));
}

}  // namespace wm::app
