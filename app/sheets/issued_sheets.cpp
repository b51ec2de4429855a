#include "app/sheets/issued_sheets.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "app/works/work_text.h"
#include "core/sheet/choose.h"
#include "core/sheet/sheet_text.h"

namespace wm::app {
namespace {

struct IssuedSheets {
  Q_DECLARE_TR_FUNCTIONS(wm::app::IssuedSheets)
};

const OwnSheet* own_sheet_for(const Session& session, const std::string& machine_class,
                              const std::string& checkout) {
  const int published = highest_published(session, checkout);
  const OwnSheet* newest = nullptr;
  for (const OwnSheet& own : own_sheets()) {
    if (own.sheet.machine_class != machine_class || own.sheet.checkout != checkout) continue;
    if (own.sheet.revision == published) return &own;
    if (!newest) newest = &own;
  }
  return newest;
}

std::string as_file_name(std::string words) {
  std::ranges::replace(words, ' ', '-');
  return words;
}

}  // namespace

std::vector<SheetRevision> issued_sheets(const Session& session) {
  const Published published = published_in(session);
  std::vector<SheetRevision> sheets;
  for (const IssuedRevision& one : all_issued(session, db::Work::sheet))
    if (auto sheet = read_sheet(one.work->text)) {  // the store takes no other
      const Revision revision = revision_of(one, published, sheet->checkout);
      sheets.push_back({revision, std::move(*sheet)});
    }
  put_in_order(sheets, session.present());
  return sheets;
}

int highest_published(const Session& session, const std::string& checkout) {
  int highest = 0;
  for (const auto& [revision, from] : published_in(session))
    if (revision.first == checkout) highest = std::max(highest, revision.second);
  return highest;
}

std::vector<MissingSheet> missing_sheets(Session& session, const std::vector<SheetRevision>& sheets) {
  std::vector<MissingSheet> missing;
  const Rulebook* rulebook = session.decider().in_force(session.present());
  if (!rulebook) return missing;
  std::set<std::pair<std::string, std::string>> asked;
  for (const TargetName& target : targets_of(*rulebook))
    for (const std::string& checkout : checkouts_asked(*rulebook, target)) {
      const std::string machine_class(class_of(target));
      const bool there = std::ranges::any_of(sheets, [&](const SheetRevision& each) {
        return each.from && each.sheet.checkout == checkout && each.sheet.machine_class == machine_class;
      });
      if (!there && asked.insert({machine_class, checkout}).second)
        missing.push_back({machine_class, checkout, own_sheet_for(session, machine_class, checkout)});
    }
  return missing;
}

std::string new_sheet_text(const Session& session, const MissingSheet& missing, const Sheet* like) {
  Sheet sheet{as_file_name(missing.checkout), 1, missing.machine_class, missing.checkout, "", {}};
  sheet.revision = next_revision(session, issued_sheets(session), sheet);
  if (like) {
    sheet.sections = like->sections;
    return to_text(sheet);
  }
  if (!own_sheets().empty()) sheet.sections.push_back(own_sheets().front().sheet.sections.front());
  return to_text(sheet) + "\n[at work]\n*\n";
}

int next_revision(const Session& session, const std::vector<SheetRevision>& sheets, const Sheet& sheet) {
  const int free = std::max(sheet.revision, highest_published(session, sheet.checkout));
  const int issued = highest_issued(sheets, sheet.name);
  return free > issued ? free : issued + 1;
}

Expected<db::Committed> take_over(Session& session, const std::vector<SheetRevision>& sheets,
                                  const std::vector<MissingSheet>& missing) {
  const Published published = published_in(session);
  std::vector<Session::Dated> entries;
  for (const MissingSheet& each : missing) {
    if (!each.own) continue;
    const Sheet& sheet = each.own->sheet;
    const int revision = next_revision(session, sheets, sheet);
    const std::string news = IssuedSheets::tr("As it comes with the program.").toStdString();
    entries.push_back(
        {db::EnterShopFact{db::Issued{
             db::Work::sheet, sheet.name, revision, news, with_revision(each.own->text, revision, "["), {}}},
         std::nullopt,
         {}});
    if (!published.contains({sheet.checkout, revision}))
      entries.push_back({db::EnterFact{Publish{sheet.checkout, revision}}, std::nullopt, {}});
  }
  return session.commit_dated(std::move(entries));
}

}  // namespace wm::app
