#include "db/open_sheets.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "db/journal/memory.h"

namespace wm::db {
namespace {

bool is_unsigned(const Memory& memory, const RecordId& id) {
  return memory.live<SheetOpened>(id) != nullptr && memory.about<SheetMarks>(id) == nullptr;
}

void mark(OpenSheet& open, const LineMarked& said) {
  const auto line = static_cast<std::size_t>(said.line);
  if (open.marks.size() < line) {
    open.marks.resize(line, Mark::none);
    open.again.resize(line, Mark::none);
  }
  open.marks[line - 1] = said.mark;
  open.again[line - 1] = said.again;
  std::erase_if(open.measured, [&](const LineMeasured& one) { return one.line == said.line; });
  if (!said.measured) return;
  const auto after = std::find_if(open.measured.begin(), open.measured.end(),
                                  [&](const LineMeasured& one) { return one.line > said.line; });
  open.measured.insert(after, *said.measured);
}

OpenSheet read(const Memory& memory, const Entry& opened) {
  OpenSheet open;
  open.id = opened.id;
  open.sheet = *as<SheetOpened>(opened.fact);
  open.since = open.last_marked = opened.at;
  open.marked_by = opened.entered_by;
  for (const std::size_t i : memory.referring_to(opened.id)) {
    const Entry& entry = memory.entries()[i];
    if (entry.voided) continue;
    if (const auto* line = as<LineMarked>(entry.fact)) {
      mark(open, *line);
      open.put_by.reset();
    } else if (const auto* by = as<SheetPutBy>(entry.fact)) {
      open.put_by = entry.at;
      open.note = by->note;
      open.restrictions = by->restrictions;
      continue;
    } else {
      continue;
    }
    open.last_marked = entry.at;
    open.marked_by = entry.entered_by;
  }
  return open;
}

}  // namespace

std::optional<OpenSheet> open_sheet(const Memory& memory, const RecordId& id, Instant now) {
  if (!is_unsigned(memory, id)) return std::nullopt;
  OpenSheet open = read(memory, *memory.find(id));
  if (now.seconds - open.last_marked.seconds > days_in_hand * std::int64_t{86400}) return std::nullopt;
  return open;
}

std::vector<OpenSheet> open_sheets(const Memory& memory, Instant now) {
  // Modes of a machine that share a sheet share the one in hand: what was failed in one binds in the other.
  std::map<std::tuple<PersonId, std::string, std::string>, RecordId> latest;
  const auto key = [&](const SheetOpened& f) {
    return std::tuple(memory.joined(f.person), std::string(class_of(f.target)), f.sheet);
  };
  const auto& all = memory.of_kind("sheet_opened");
  for (const std::size_t i : all) {
    const Entry& entry = memory.entries()[i];
    if (is_unsigned(memory, entry.id)) latest[key(*as<SheetOpened>(entry.fact))] = entry.id;
  }
  std::vector<OpenSheet> open;
  for (const std::size_t i : all) {
    const Entry& entry = memory.entries()[i];
    const auto found = latest.find(key(*as<SheetOpened>(entry.fact)));
    if (found == latest.end() || found->second != entry.id) continue;
    if (auto one = open_sheet(memory, entry.id, now)) open.push_back(*std::move(one));
  }
  return open;
}

bool saw_marks(const Memory& memory, const RecordId& checkout, const PersonId& person) {
  const Entry* entry = memory.about<SheetMarks>(checkout);
  if (entry == nullptr) return false;
  const auto theirs = [&](const Entry& each) {
    return !each.entered_by.empty() && memory.joined(each.entered_by) == memory.joined(person);
  };
  if (theirs(*entry)) return true;
  const RecordId& opened = as<SheetMarks>(entry->fact)->opened;
  if (opened.empty()) return false;
  const auto& about = memory.referring_to(opened);
  return std::any_of(about.begin(), about.end(),
                     [&](const std::size_t i) { return theirs(memory.entries()[i]); });
}

}  // namespace wm::db
