#include "app/checkouts/in_hand.h"

#include <algorithm>

#include "app/words/length_words.h"

namespace wm::app {
namespace {

/// What of a line is typed and can be understood.
std::optional<LineMeasured> understood_at(const Draft& draft, const Sheet& sheet, std::size_t line) {
  const auto& measure = lines_of(sheet)[line]->measure;
  const TypedMeasure& typed = draft.on_sheet.typed[line];
  if (!measure || typed.measure.trimmed().isEmpty()) return std::nullopt;
  auto out = understood(*measure, static_cast<int>(line) + 1, typed.measure.trimmed().toStdString(),
                        typed.instrument.trimmed().toStdString(), decimal_mark());
  return out ? std::optional(*out) : std::nullopt;
}

Mark at(const std::vector<Mark>& marks, std::size_t line) {
  return line < marks.size() ? marks[line] : Mark::none;
}

std::optional<LineMeasured> at(const std::vector<LineMeasured>& measured, std::size_t line) {
  for (const LineMeasured& one : measured)
    if (one.line == static_cast<int>(line) + 1) return one;
  return std::nullopt;
}

/// Word for word where that reads as the same here, whatever language it was typed in; the instrument's marks
/// only where they are not the line's own.
TypedMeasure typed_as(const SheetLine& line, const LineMeasured& one) {
  TypedMeasure words{length_words(one.read), length_words(one.marks)};
  if (!line.measure) return words;
  const auto here = understood(*line.measure, one.line, one.typed, {}, decimal_mark());
  if (here && here->marks == one.marks) words.instrument.clear();
  if (here && here->read == one.read) words.measure = QString::fromStdString(one.typed);
  return words;
}

/// The record of one line as it stands here; nothing where the store has it so.
std::optional<db::LineMarked> to_send(const Draft& draft, const Sheet& sheet, const db::OpenSheet& open,
                                      std::size_t line, bool without_measure) {
  const auto known = at(open.measured, line);
  db::LineMarked marked{open.id, static_cast<int>(line) + 1, at(draft.on_sheet.marks, line),
                        at(draft.on_sheet.again, line),
                        without_measure ? known : understood_at(draft, sheet, line)};
  if (marked.mark == at(open.marks, line) && marked.again == at(open.again, line) && marked.measured == known)
    return std::nullopt;
  return marked;
}

Expected<db::OpenSheet> opened(Session& session, const Draft& draft, const Sheet& sheet) {
  if (auto open = in_hand(session, draft.one, sheet)) return *std::move(open);
  const auto done = session.commit(db::EnterShopFact{
      db::SheetOpened{draft.one.person, draft.one.machine, draft.one.target, sheet.name, sheet.revision}});
  if (!done) return tl::make_unexpected(done.error());
  return *in_hand(session, draft.one, sheet);
}

}  // namespace

std::optional<db::OpenSheet> in_hand(const Session& session, const OneOnOne& one, const Sheet& sheet) {
  const PersonId person = session.store().joined(one.person);
  for (db::OpenSheet& open : session.store().open_sheets())
    if (session.store().joined(open.sheet.person) == person &&
        class_of(open.sheet.target) == class_of(one.target) && open.sheet.sheet == sheet.name &&
        open.sheet.sheet_revision == sheet.revision)
      return std::move(open);
  return std::nullopt;
}

OnSheet on_sheet_of(const std::vector<Mark>& marks, const std::vector<Mark>& again,
                    const std::vector<LineMeasured>& measured, const Sheet& sheet) {
  const std::size_t lines = line_count(sheet);
  OnSheet out{marks, again, std::vector<TypedMeasure>(lines)};
  out.marks.resize(lines, Mark::none);
  out.again.resize(lines, Mark::none);
  const auto all = lines_of(sheet);
  for (const LineMeasured& one : measured)
    if (static_cast<std::size_t>(one.line) <= lines)
      out.typed[static_cast<std::size_t>(one.line) - 1] =
          typed_as(*all[static_cast<std::size_t>(one.line) - 1], one);
  return out;
}

namespace {

/// What was written here stays; what was written elsewhere takes the place of what was not changed here, and
/// else stands beside it. True where it does.
bool take_text(QString& here, QString& known, const QString& there) {
  const bool changed_here = here.trimmed() != known, changed_there = there != known;
  known = there;
  if (!changed_there || here.trimmed() == there) return false;
  const bool both = changed_here && !here.trimmed().isEmpty() && !there.isEmpty();
  here = both ? there + "; " + here.trimmed() : changed_here ? here : there;
  return both;
}

}  // namespace

bool take_from_store(Draft& draft, const db::OpenSheet& open, const Sheet& sheet) {
  draft.opened = open.id;
  QStringList restricted;
  for (const std::string& each : open.restrictions) restricted << QString::fromStdString(each);
  const bool both = take_text(draft.restrictions, draft.known_restrictions, restricted.join("; "));
  const bool both_notes = take_text(draft.note, draft.known_note, QString::fromStdString(open.note));
  OnSheet there = on_sheet_of(open.marks, open.again, open.measured, sheet);
  const std::size_t lines = line_count(sheet);
  draft.on_sheet.marks.resize(lines, Mark::none);
  draft.on_sheet.again.resize(lines, Mark::none);
  draft.on_sheet.typed.resize(lines);
  for (std::size_t line = 0; line < lines; ++line) {
    if (draft.unsent.contains(static_cast<int>(line) + 1)) continue;
    draft.on_sheet.marks[line] = there.marks[line];
    draft.on_sheet.again[line] = there.again[line];
    // As it was typed here, where that says the same.
    if (understood_at(draft, sheet, line) != at(open.measured, line))
      draft.on_sheet.typed[line] = std::move(there.typed[line]);
  }
  return both || both_notes;
}

void note_changed(Draft& draft, const OnSheet& now) {
  for (std::size_t line = 0; line < now.marks.size(); ++line) {
    const bool same =
        line < draft.on_sheet.typed.size() && at(draft.on_sheet.marks, line) == now.marks[line] &&
        at(draft.on_sheet.again, line) == now.again[line] && draft.on_sheet.typed[line] == now.typed[line];
    const bool blank = now.marks[line] == Mark::none && now.typed[line] == TypedMeasure();
    if (!same && !(blank && line >= draft.on_sheet.marks.size()))
      draft.unsent.insert(static_cast<int>(line) + 1);
  }
  draft.on_sheet = now;
}

void note_lost(Draft& draft) {
  draft.opened.clear();
  for (std::size_t line = 0; line < draft.on_sheet.marks.size(); ++line)
    draft.unsent.insert(static_cast<int>(line) + 1);
}

Expected<void> send(Session& session, Draft& draft, const Sheet& sheet, int typing) {
  if (draft.unsent.empty()) return {};
  const auto open = opened(session, draft, sheet);
  if (!open) return tl::make_unexpected(open.error());
  draft.opened = open->id;
  std::vector<db::Action> actions;
  std::set<int> later;
  for (const int line : draft.unsent) {
    const auto place = static_cast<std::size_t>(line) - 1;
    if (line < 1 || place >= draft.on_sheet.marks.size()) continue;
    if (line == typing) later.insert(line);
    if (auto marked = to_send(draft, sheet, *open, place, line == typing))
      actions.emplace_back(db::EnterShopFact{*std::move(marked)});
  }
  if (!actions.empty())
    if (auto done = session.commit_all(std::move(actions)); !done) return tl::make_unexpected(done.error());
  draft.unsent = std::move(later);
  return {};
}

}  // namespace wm::app
