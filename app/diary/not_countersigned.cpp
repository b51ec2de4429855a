#include "app/diary/not_countersigned.h"

#include <algorithm>
#include <set>

#include "app/diary/bookings.h"

namespace wm::app {

std::vector<NotCountersigned> not_countersigned(const Session& session) {
  if (session.known()) return {};
  const Instant since = session.now() + -86400LL * days_to_countersign;
  // Nothing is entered before it happens, so what was entered earlier is of earlier.
  const auto lately = [&](std::string_view kind) {
    auto entries = session.store().of_kind(kind);
    entries.erase(entries.begin(), std::ranges::lower_bound(entries, since, {}, &db::Entry::recorded));
    return entries;
  };
  std::set<RecordId> said;
  for (const db::Entry* entry : lately("countersigned"))
    if (!entry->voided) said.insert(db::as<db::Countersigned>(entry->fact)->checkout);
  std::vector<NotCountersigned> out;
  for (const db::Entry* entry : lately("marks")) {
    const auto& marks = *db::as<db::SheetMarks>(entry->fact);
    if (entry->voided || entry->at < since || said.contains(marks.checkout)) continue;
    const db::Entry* signed_one = session.entry(marks.checkout);
    const auto* checkout = signed_one && !signed_one->voided ? db::as<Checkout>(signed_one->fact) : nullptr;
    if (checkout && checkout->outcome != Outcome::stopped)
      out.push_back({signed_one, checkout, &marks, class_of_unit(session, marks.machine)});
  }
  std::ranges::stable_sort(out, std::ranges::greater(),
                           [](const NotCountersigned& one) { return one.entry->at; });
  return out;
}

}  // namespace wm::app
