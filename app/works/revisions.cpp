#include "app/works/revisions.h"

namespace wm::app {

Revision revision_of(const IssuedRevision& one, const Published& published, const std::string& item) {
  const auto from = published.find({item, one.work->revision});
  return {one.record, one.at, *one.work, from == published.end() ? std::nullopt : std::optional(from->second),
          false};
}

QString revision_id(const Revision& revision) {
  return QString::fromStdString(revision.text.name) + '/' + QString::number(revision.text.revision);
}

}  // namespace wm::app
