#pragma once
// What revisions of every kind of work have in common: when they were issued, which counts, and their order.
#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "app/lists/issued.h"

namespace wm::app {

struct Revision {
  RecordId record;
  Instant issued;
  db::Issued text;
  std::optional<Instant> from;  // since when it counts, or from when it will; nothing: not published
  bool in_force = false;        // at the session's present: the greatest of its name that has begun
};

/// One that was issued; `item`: what its publication names.
Revision revision_of(const IssuedRevision& one, const Published& published, const std::string& item);
/// "guards/2": its place in a list, and in a text's drafts.
QString revision_id(const Revision& revision);

/// By name, the newest first, and which of each name is in force.
template <class R>
void put_in_order(std::vector<R>& revisions, Instant present) {
  std::ranges::sort(revisions, [](const R& a, const R& b) {
    return a.text.name != b.text.name ? a.text.name < b.text.name : a.text.revision > b.text.revision;
  });
  const std::string* done = nullptr;
  for (R& each : revisions) {
    each.in_force = each.from && *each.from <= present && !(done && *done == each.text.name);
    if (each.in_force) done = &each.text.name;
  }
}

/// The one in force, else the newest that was issued; null where none of that name was. In order.
template <class R>
const R* current_of(const std::vector<R>& revisions, const std::string& name) {
  const R* newest = nullptr;
  for (const R& each : revisions) {
    if (each.text.name != name) continue;
    if (each.in_force) return &each;
    if (!newest) newest = &each;
  }
  return newest;
}

/// The highest revision of that name that was issued, 0 for none.
template <class R>
int highest_issued(const std::vector<R>& revisions, const std::string& name) {
  int highest = 0;
  for (const R& each : revisions)
    if (each.text.name == name) highest = std::max(highest, each.text.revision);
  return highest;
}

}  // namespace wm::app
