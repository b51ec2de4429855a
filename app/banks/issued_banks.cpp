#include "app/banks/issued_banks.h"

#include "core/teach/bank_text.h"

namespace wm::app {

std::vector<BankRevision> issued_banks(const Session& session) {
  const Published published = published_in(session);
  std::vector<BankRevision> banks;
  for (const IssuedRevision& one : all_issued(session, db::Work::bank))
    if (auto bank = teach::read_bank(one.work->text))  // the store takes no other
      banks.push_back({revision_of(one, published, one.work->name), std::move(*bank)});
  put_in_order(banks, session.present());
  return banks;
}

}  // namespace wm::app
