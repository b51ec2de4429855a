#include "app/sheets/sheet_book.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/lists/issued.h"
#include "app/sheets/issued_sheets.h"
#include "app/words/days.h"
#include "app/words/words.h"
#include "core/sheet/choose.h"
#include "core/sheet/sheet_text.h"

namespace wm::app {
namespace {

struct SheetBooks {
  Q_DECLARE_TR_FUNCTIONS(wm::app::SheetBook)
};

bool newer_first(const Sheet* a, const Sheet* b) {
  return a->name != b->name ? a->name < b->name : a->revision > b->revision;
}

}  // namespace

SheetBook::SheetBook(Session& session, const std::vector<Sheet>& instead)
    : session_(session), instead_(true) {
  for (const Sheet& sheet : instead) keep(sheet);
}

const Sheet* SheetBook::keep(const Sheet& sheet) {
  return &kept_.try_emplace({sheet.name, sheet.revision}, sheet).first->second;
}

std::vector<const Sheet*> SheetBook::counting() {
  std::vector<const Sheet*> out;
  if (instead_) {
    for (const auto& [key, sheet] : kept_) out.push_back(&sheet);
    return out;
  }
  const Published published = published_in(session_);
  for (const IssuedRevision& one : all_issued(session_, db::Work::sheet)) {
    const Sheet* sheet = revision(one.work->name, one.work->revision);
    const auto from = sheet ? published.find({sheet->checkout, sheet->revision}) : published.end();
    if (from != published.end() && from->second <= session_.present()) out.push_back(sheet);
  }
  return out;
}

const Sheet* SheetBook::for_target(const TargetName& target) {
  const Rulebook* rulebook = session_.decider().in_force(session_.present());
  return rulebook ? sheet_for(counting(), *rulebook, target) : nullptr;
}

QString SheetBook::why_none(const TargetName& target) {
  const Rulebook* rulebook = session_.decider().in_force(session_.present());
  const auto asked = rulebook ? checkouts_asked(*rulebook, target) : std::vector<std::string>();
  if (asked.empty())
    return SheetBooks::tr("No rule in force asks for a check-out here, so nothing can be signed.");
  for (const SheetRevision& each : issued_sheets(session_))
    if (each.from && *each.from > session_.present() && each.sheet.machine_class == class_of(target) &&
        std::ranges::find(asked, each.sheet.checkout) != asked.end())
      return SheetBooks::
          tr("The run sheet for this machine counts only from %1, so nothing can be marked or signed before.")
              .arg(short_day(*each.from, session_.zone()));
  return SheetBooks::tr(
      "No run sheet has been issued for this machine, so nothing can be marked or signed here. A manager "
      "issues one on the page Sheets.");
}

const Sheet* SheetBook::revision(const std::string& name, int revision) {
  if (const auto kept = kept_.find({name, revision}); kept != kept_.end()) return &kept->second;
  for (const IssuedRevision& one : revisions_of(session_, db::Work::sheet, name))
    if (one.work->revision == revision)
      if (const auto sheet = read_sheet(one.work->text)) return keep(*sheet);
  for (const OwnSheet& own : own_sheets())
    if (own.sheet.name == name && own.sheet.revision == revision) return &own.sheet;
  return nullptr;
}

std::vector<const Sheet*> SheetBook::on_paper() {
  std::vector<const Sheet*> out = counting();
  std::ranges::sort(out, newer_first);
  return out;
}

}  // namespace wm::app
