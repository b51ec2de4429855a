#include "app/figures/marked_twice.h"

#include <map>

#include "app/sheets/sheet_book.h"
#include "core/sheet/result.h"
#include "core/sheet/typed.h"
#include "db/journal/subject.h"

namespace wm::app {

namespace {

/// A second assessor marks every line; the first may have measured one and left its mark to that.
std::vector<Mark> first_marks(SheetBook& book, const db::SheetMarks& marks) {
  const Sheet* sheet = book.revision(marks.sheet, marks.sheet_revision);
  return sheet ? first_seen(*sheet, marks.marks, by_line(*sheet, marks.measured)) : marks.marks;
}

}  // namespace

std::vector<MarkedTwice> marked_twice(Session& session) {
  SheetBook book(session);
  std::map<RecordId, MarkedTwice> by_checkout;
  const auto counts = [&session](const db::Entry* entry) { return entry && session.counts(*entry); };
  for (const db::Entry* entry : session.store().of_kind("marks")) {
    const auto* marks = db::as<db::SheetMarks>(entry->fact);
    if (counts(entry) && counts(session.entry(marks->checkout)))
      by_checkout[marks->checkout] = {marks->sheet, marks->sheet_revision, {first_marks(book, *marks)}};
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
