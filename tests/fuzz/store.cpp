// A store's file that somebody changed: it opens or is refused with a reason, and so does verify. Where
// verify finds nothing wrong against a root from before, all that the store says is as it was: nothing is
// forged unseen.
#include "db/heads.h"
#include "db/verify/verify.h"
#include "tests/db/small_shop.h"
#include "tests/fuzz/edits.h"
#include "tests/fuzz/holds.h"
#include "tests/fuzz/shop.h"

namespace {

using namespace wm;
using namespace wm::db;

/// A store as it was before anybody changed it.
struct Base {
  std::string bytes;
  ledger::Head head;
  std::vector<Entry> entries;
  std::vector<Person> people;
  std::vector<Rulebook> rulebooks;

  explicit Base(int version)
      : bytes(fuzz::store_of(WM_STORES "/version-" + std::to_string(version) + ".sql")) {
    const std::string path = fuzz::folder() + "/base";
    fuzz::put(path, bytes);
    auto store = fuzz::opened(path);
    fuzz::holds(store.has_value(), "a store that nobody changed opens");
    head = store->head().value();
    entries = store->entries();
    people = store->people();
    rulebooks = store->rulebooks();
  }
};

const Base& base(bool earlier) {
  fuzz::folder();  // outlives them
  static const Base now(5), before(2);
  return earlier ? before : now;
}

/// Whether verify finds that nothing before the head was changed.
bool is_verified(const std::string& path, const ledger::Head& head) {
  verify::Ask ask;
  ask.against = {{"paper", ledger::shortened(head), {}}};
  ask.all = ask.growth = true;
  ask.record = "c6";
  const auto report = verify::look_through(path, ask);
  if (!report) {
    fuzz::is_told(report.error());
    return false;
  }
  for (const verify::Finding& finding : report->findings.kept())
    fuzz::holds(!finding.place.empty(), "a finding has a place");
  const bool holds = report->roots.size() == 1 && report->roots.front().outcome == verify::Outcome::holds;
  fuzz::holds(holds || !report->findings.empty(), "a root that does not hold is a finding");
  return holds && report->findings.empty();
}

Command lesson(const std::string& id) {
  Command command;
  command.id = id;
  command.by = "dee";
  command.action = fact(Lesson{"kim", "guards", 1});
  return command;
}

void is_as_before(const Store& store, const Base& base) {
  fuzz::holds(store.entries() == base.entries, "entries that were verified are as they were");
  fuzz::holds(store.people() == base.people, "people who were verified are as they were");
  fuzz::holds(store.rulebooks() == base.rulebooks, "rulebooks that were verified are as they were");
}

/// All that pages read, and one more entry.
void is_used(Store& store) {
  store.shop();
  store.current();
  store.births();
  if (const auto head = store.head(); !head) fuzz::is_told(head.error());
  if (const auto role = store.sit_down("mia", "1111"); !role) fuzz::is_told(role.error());
  const auto done = store.commit(lesson("one-more"));
  if (!done) fuzz::is_told(done.error());
}

void is_opened(const std::string& path, const Base* as_before) {
  std::vector<Entry> entries;
  {
    auto store = fuzz::opened(path);
    if (!store) return fuzz::is_told(store.error());
    if (as_before) is_as_before(*store, *as_before);
    is_used(*store);
    entries = store->entries();
  }
  auto again = fuzz::opened(path);
  if (!again) return fuzz::is_told(again.error());
  if (as_before) fuzz::holds(again->entries() == entries, "what was entered is read again");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  if (size == 0) return 0;
  const bool earlier = data[0] % 8 == 0;
  const std::string path = fuzz::folder() + "/store";
  fuzz::put(path, fuzz::edited(base(earlier).bytes, fuzz::text(data + 1, size - 1)));
  const bool verified = is_verified(path, base(earlier).head);
  is_opened(path, verified && !earlier ? &base(earlier) : nullptr);
  return 0;
}
