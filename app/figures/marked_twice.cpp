#include "app/figures/marked_twice.h"

#include <map>

#include "app/sheets/sheet_book.h"
#include "db/journal/subject.h"

namespace wm::app {

std::vector<MarkedTwice> marked_twice(Session& session) {
  SheetBook book(session);
  std::map<RecordId, MarkedTwice> by_checkout;
  const auto counts = [&session](const db::Entry* entry) { return entry && session.counts(*entry); };
  for (const db::Entry* entry : session.store().of_kind("marks")) {
    const auto* marks = db::as<db::SheetMarks>(entry->fact);
    if (counts(entry) && counts(session.entry(marks->checkout)))
      by_checkout[marks->checkout] = {marks->sheet, marks->sheet_revision, {marks->marks}};
  }
  for (const db::Entry* entry : session.store().of_kind("scored_apart")) {
    const auto* scored = db::as<db::ScoredApart>(entry->fact);
    const auto of = by_checkout.find(scored->checkout);
    if (counts(entry) && of != by_checkout.end()) of->second.by.push_back(scored->marks);
  }
  std::vector<MarkedTwice> out;
  for (auto& [checkout, marked] : by_checkout)
    if (marked.by.size() > 1) {
      if (const Sheet* sheet = book.revision(marked.sheet, marked.revision))
        for (const SheetLine* line : lines_of(*sheet)) marked.words.push_back(line->text);
      out.push_back(std::move(marked));
    }
  return out;
}

}  // namespace wm::app
