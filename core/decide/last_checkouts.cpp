#include "core/decide/last_checkouts.h"

#include <map>
#include <set>

namespace wm {

namespace {

/// The requirements that ask for a check-out, by its name.
using ByName = std::map<NameId, std::vector<const Need*>>;

void collect(const Need& need, ByName& by_name) {
  if (need.kind == NeedKind::checkout) by_name[need.item].push_back(&need);
  for (const Need& part : need.of) collect(part, by_name);
  for (const Need& part : need.given) collect(part, by_name);
}

/// What was asked for on each target that X has stood for up to t.
std::map<NameId, ByName> asked_by(Standings& standings, NameId x, Instant t) {
  std::map<NameId, ByName> asked;
  for (const Book& book : standings.books()) {
    if (book.span.from > t) break;
    for (const NameId target : book.stands_for(x, standings.known()))
      for (const BookGate* gate : book.find(target)->gates) collect(gate->need, asked[target]);
  }
  return asked;
}

}  // namespace

std::vector<RecordId> last_checkouts(Standings& standings, NameId person, NameId x, Instant t) {
  if (standings.known().facts(person).checkouts.empty()) return {};
  std::set<RecordId> found;
  for (const auto& [target, by_name] : asked_by(standings, x, t)) {
    for (const auto& [name, needs] : by_name) {
      std::vector<RecordNo> since;
      for (const Cover& cover : covers(standings.known(), *needs.front(), person, target, t)) {
        const auto good = [&, target = target](const Need* need) {
          return standings.counts(cover, *need, person, target);
        };
        if (std::any_of(needs.begin(), needs.end(), good)) since.clear();
        since.push_back(cover.no);
      }
      for (const RecordNo no : since) found.insert(standings.known().record_id(no));
    }
  }
  return {found.begin(), found.end()};
}

}  // namespace wm
