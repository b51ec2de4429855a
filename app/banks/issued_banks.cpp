#include "app/banks/issued_banks.h"

#include <algorithm>

#include "app/lists/issued.h"
#include "core/teach/bank_text.h"

namespace wm::app {
namespace {

/// As Lessons has it: the greatest that has begun.
void mark_in_force(std::vector<BankRevision>& banks, Instant present) {
  std::string done;
  for (BankRevision& each : banks) {  // the newest of each name first
    if (each.text.name == done || !each.from || *each.from > present) continue;
    each.in_force = true;
    done = each.text.name;
  }
}

}  // namespace

std::vector<BankRevision> issued_banks(const Session& session) {
  const Published published = published_in(session);
  std::vector<BankRevision> banks;
  for (const IssuedRevision& one : all_issued(session, db::Work::bank)) {
    auto bank = teach::read_bank(one.work->text);
    if (!bank) continue;  // the store takes no other
    const auto from = published.find({one.work->name, one.work->revision});
    banks.push_back({one.record, one.at, *one.work, std::move(*bank),
                     from == published.end() ? std::nullopt : std::optional(from->second), false});
  }
  std::ranges::sort(banks, [](const BankRevision& a, const BankRevision& b) {
    return a.text.name != b.text.name ? a.text.name < b.text.name : a.text.revision > b.text.revision;
  });
  mark_in_force(banks, session.present());
  return banks;
}

const BankRevision* current_bank(const std::vector<BankRevision>& banks, const std::string& name) {
  const BankRevision* newest = nullptr;
  for (const BankRevision& each : banks) {
    if (each.text.name != name) continue;
    if (each.in_force) return &each;
    if (!newest) newest = &each;
  }
  return newest;
}

int highest_issued(const std::vector<BankRevision>& banks, const std::string& name) {
  int highest = 0;
  for (const BankRevision& each : banks)
    if (each.text.name == name) highest = std::max(highest, each.text.revision);
  return highest;
}

}  // namespace wm::app
