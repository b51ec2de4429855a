#include "app/lists/issued.h"

#include <map>

#include "db/journal/subject.h"

namespace wm::app {
namespace {

template <class Take>
void each_issued(const Session& session, db::Work work, Take take) {
  for (const db::Entry& entry : session.store().entries()) {
    const auto* issued = session.counts(entry) ? db::as<db::Issued>(entry.fact) : nullptr;
    if (issued && issued->work == work) take(IssuedRevision{entry.id, entry.at, entry.entered_by, issued});
  }
}

}  // namespace

std::vector<IssuedRevision> revisions_of(const Session& session, db::Work work, const std::string& name) {
  std::vector<IssuedRevision> out;
  each_issued(session, work, [&](const IssuedRevision& one) {
    if (one.work->name == name) out.push_back(one);
  });
  return out;
}

std::vector<IssuedRevision> latest_issued(const Session& session, db::Work work) {
  std::map<std::string, IssuedRevision> latest;
  each_issued(session, work, [&](const IssuedRevision& one) { latest[one.work->name] = one; });
  std::vector<IssuedRevision> out;
  for (const auto& [name, one] : latest) out.push_back(one);
  return out;
}

}  // namespace wm::app
