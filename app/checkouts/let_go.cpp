#include "app/checkouts/let_go.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/checkouts/result_words.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct LetGo {
  Q_DECLARE_TR_FUNCTIONS(Checkouts)
};

bool is_open(const std::vector<db::OpenSheet>& all, const RecordId& id) {
  return std::ranges::any_of(all, [&](const db::OpenSheet& open) { return open.id == id; });
}

QString signed_words(const Session& session, const Checkout& checkout, Instant at) {
  return LetGo::tr("was signed on %1 by %2: %3", "a day, an assessor, a result")
      .arg(long_day(at, session.zone()), name_of(session, checkout.assessor),
           outcome_words(checkout.outcome));
}

/// The check-out that a sheet in hand was signed as.
std::optional<QString> signed_as(const Session& session, const RecordId& opened) {
  for (const db::Entry* entry : session.store().of_kind("marks")) {
    const auto* marks = db::as<db::SheetMarks>(entry->fact);
    if (entry->voided || marks->opened != opened) continue;
    const db::Entry* checkout = session.entry(marks->checkout);
    if (const auto* said = checkout ? db::as<Checkout>(checkout->fact) : nullptr)
      return signed_words(session, *said, checkout->at);
  }
  return std::nullopt;
}

/// What was said when the sheet was put by last, which the store has.
db::SheetPutBy put_by(const Session& session, const RecordId& opened) {
  db::SheetPutBy last;
  for (const db::Entry* entry : session.store().of_kind("sheet_put_by"))
    if (const auto* said = db::as<db::SheetPutBy>(entry->fact); !entry->voided && said->opened == opened)
      last = *said;
  return last;
}

/// "line 5, not shown, the second time shown, measured “0.99 in”"; empty where nothing stands there.
QString line_words(const OnSheet& on_sheet, std::size_t line, bool changed_here) {
  const auto mark_at = [line](const std::vector<Mark>& marks) {
    return line < marks.size() ? marks[line] : Mark::none;
  };
  const QString typed = line < on_sheet.typed.size() ? on_sheet.typed[line].measure.trimmed() : QString();
  const Mark first = mark_at(on_sheet.marks), again = mark_at(on_sheet.again);
  if (!changed_here && first == Mark::none && typed.isEmpty()) return {};
  QStringList said{LetGo::tr("line %1").arg(line + 1)};
  if (first != Mark::none || typed.isEmpty()) said << mark_words(first);
  if (again != Mark::none) said << LetGo::tr("the second time %1", "a mark").arg(mark_words(again));
  if (!typed.isEmpty()) said << LetGo::tr("measured “%1”", "as it was typed").arg(typed);
  return said.join(LetGo::tr(", ", "between what is said of a line"));
}

}  // namespace

QString sheet_words(const Session& session, const OneOnOne& one) {
  return LetGo::tr("The run sheet of %1, %2", "a person, a unit")
      .arg(name_of(session, one.person), unit_label(units(session), one.machine));
}

std::optional<QString> became_of(const Session& session, const Draft& draft, const OneOnOne* one) {
  if (draft.apart()) return std::nullopt;
  if (draft.opened.empty()) {
    if (!one || !one->signed_as) return std::nullopt;
    const db::Entry* checkout = one->signed_sheet ? session.entry(one->signed_sheet->checkout) : nullptr;
    const Instant booked = one->when ? one->when->from : session.now();
    return signed_words(session, *one->signed_as, checkout ? checkout->at : booked);
  }
  const std::vector<db::OpenSheet> all = session.store().open_sheets();
  const db::Entry* opened = session.entry(draft.opened);
  if (!opened || is_open(all, draft.opened)) return std::nullopt;
  if (opened->voided) return LetGo::tr("was struck out on %1").arg(long_day(*opened->voided, session.zone()));
  if (auto said = signed_as(session, draft.opened)) return said;
  const auto newer = std::ranges::find_if(all, [&](const db::OpenSheet& open) {
    return session.joined(open.sheet.person) == session.joined(draft.one.person) &&
           class_of(open.sheet.target) == class_of(draft.one.target) && open.sheet.sheet == draft.sheet;
  });
  if (newer != all.end())
    return LetGo::tr("gave way to another that was begun on %1").arg(long_day(newer->since, session.zone()));
  return LetGo::tr("was left for more than %n days, so what was shown is shown again, on a new one", "",
                   db::days_in_hand);
}

QString not_sent_words(const Session& session, const Draft& draft) {
  QStringList lines, typed;
  for (std::size_t line = 0; line < draft.on_sheet.marks.size(); ++line) {
    const bool here = draft.unsent.contains(static_cast<int>(line) + 1);
    if (!here && !draft.apart()) continue;
    if (const QString said = line_words(draft.on_sheet, line, here); !said.isEmpty()) lines << said;
  }
  const db::SheetPutBy known = put_by(session, draft.opened);
  if (restrictions_in(draft.restrictions) != known.restrictions) typed << draft.restrictions.trimmed();
  if (draft.note.trimmed() != QString::fromStdString(known.note)) typed << draft.note.trimmed();
  typed.removeAll({});
  QStringList said;
  const QString between = LetGo::tr("; ", "between lines of a sheet");
  if (!lines.isEmpty()) said << LetGo::tr("Marked here and not sent: %1.").arg(lines.join(between));
  if (!typed.isEmpty()) said << LetGo::tr("Typed here and not sent: %1.").arg(typed.join(between));
  return said.join(' ');
}

}  // namespace wm::app
