#include "app/quiz/banks.h"

#include "app/desk/items.h"
#include "app/lists/issued.h"
#include "core/teach/bank_text.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

/// The greatest revision up to `most` that has been issued; null where there is none.
const db::Issued* latest_issued(const Session& session, const std::string& name, int most) {
  const db::Issued* found = nullptr;
  for (const db::Entry* entry : session.store().of_kind("issued")) {
    const auto* issued = db::as<db::Issued>(entry->fact);
    if (issued->work == db::Work::bank && issued->name == name && issued->revision <= most &&
        (!found || found->revision < issued->revision))
      found = issued;
  }
  return found;
}

/// What was issued was read before it was: it can be read again.
std::optional<IssuedBank> read_issued(const db::Issued* issued) {
  if (issued == nullptr) return std::nullopt;
  auto bank = teach::read_bank(issued->text);
  return bank ? std::optional(IssuedBank{*issued, std::move(*bank)}) : std::nullopt;
}

}  // namespace

std::optional<IssuedBank> issued_bank(const Session& session, const std::string& name, int revision) {
  const db::Issued* found = latest_issued(session, name, revision);
  return found && found->revision == revision ? read_issued(found) : std::nullopt;
}

std::optional<IssuedBank> bank_in_force(const Session& session, const std::string& name) {
  return read_issued(latest_issued(session, name, published_revision(session, name)));
}

QByteArray picture_of(const db::Issued& issued, const std::string& name) {
  for (const db::Enclosure& enclosure : issued.enclosures)
    if (enclosure.name == name) return bytes_of(enclosure);
  return {};
}

}  // namespace wm::app
