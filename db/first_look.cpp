#include "db/first_look.h"

#include <algorithm>
#include <map>
#include <set>

#include "db/emergency.h"
#include "db/journal/closure.h"
#include "db/journal/known_shop.h"
#include "db/journal/memory.h"
#include "db/journal/rows.h"
#include "db/journal/subject.h"
#include "db/refuse.h"
#include "db/sql/file.h"

namespace wm::db {
namespace {

/// Whose ability to assess or to supervise a record rests on; empty where it counts by itself.
PersonId witness(const AnyFact& fact) {
  if (const auto* checkout = as<Checkout>(fact)) return checkout->assessor;
  if (const auto* session = as<Supervised>(fact)) return session->supervisor;
  return {};
}

}  // namespace

struct FirstLook::Impl {
  std::unique_ptr<Connection> connection;
  ShopDetails details;
  Zone zone = Zone::utc();
  Store::Clock clock;
  Proved proved;
  std::int64_t last = 0;                                     // the order of the last record that is known
  std::vector<std::unique_ptr<const LeafContent>> contents;  // by order, each once
  std::set<PersonId> persons;                                // whose records are among them
  std::vector<Person> people;
  EmergencyCall call;
  std::map<PersonId, PersonId> roots;                 // whom each one's records count for
  std::map<PersonId, std::vector<PersonId>> aliases;  // and the other way round
  std::unique_ptr<Memory> memory;
  std::unique_ptr<Decider> decider;

  const PersonId& joined(const PersonId& person) const {
    const auto found = roots.find(person);
    return found == roots.end() ? person : found->second;
  }
  Expected<void> read_shop();
  /// The person's records and those of everybody they rest on.
  Expected<void> read(const PersonId& person);
  Memory in_memory() const;
};

Expected<void> FirstLook::Impl::read_shop() {
  // First, so that whoever was erased by then is known to be.
  const auto newest = connection->value("SELECT coalesce(max(ord), 0) FROM records");
  if (!newest) return tl::make_unexpected(newest.error());
  last = newest->toLongLong();
  auto ages = read_proved(*connection);
  if (!ages) return tl::make_unexpected(ages.error());
  proved = std::move(*ages);
  auto done = read_shop_wide(*connection, proved, last, [this](LeafContent&& content) {
    contents.push_back(std::make_unique<const LeafContent>(std::move(content)));
  });
  if (!done) return done;
  std::ranges::sort(contents, {}, [](const auto& content) { return content->entry.order; });
  const Memory known = in_memory();
  call = db::emergency_call(known);
  people = known.people();
  for (const Person& person : people) {
    const PersonId root = known.joined(person.id);
    roots[person.id] = root;
    aliases[root].push_back(person.id);
  }
  return {};
}

Expected<void> FirstLook::Impl::read(const PersonId& person) {
  const auto witness_of = [this](const LeafContent& content) { return joined(witness(content.entry.fact)); };
  const auto ids_of = [this](const PersonId& root) {
    const auto all = aliases.find(root);
    return all == aliases.end() ? std::vector{root} : all->second;
  };
  std::set<PersonId> reached = persons;
  auto read = Closure(connection->path(), proved, last, witness_of, ids_of).read(joined(person), reached);
  if (!read) return tl::make_unexpected(read.error());
  persons = std::move(reached);
  std::move(read->begin(), read->end(), std::back_inserter(contents));
  const auto order = [](const auto& content) { return content->entry.order; };
  const auto same = [&](const auto& a, const auto& b) { return order(a) == order(b); };
  std::ranges::sort(contents, {}, order);
  // What is about the whole shop may be about a person too.
  contents.erase(std::unique(contents.begin(), contents.end(), same), contents.end());
  return {};
}

/// As read_new fills it, without what ends or adds to a record that was not read.
Memory FirstLook::Impl::in_memory() const {
  Memory known;
  known.make_room(contents.size());
  for (const auto& content : contents) {
    const bool needs_other = content->kind == "reinstate" || content->kind == "dismiss" ||
                             content->kind == "release" || content->kind == "restriction";
    const auto other = [&] { return known.find(subject_of(content->entry.fact).refers_to); };
    if (content->blank || (needs_other && other() == nullptr)) continue;
    known.add_entry(content->entry);
    if (content->rulebook) known.add_rulebook(*content->rulebook);
  }
  return known;
}

FirstLook::FirstLook(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
FirstLook::FirstLook(FirstLook&&) noexcept = default;
FirstLook& FirstLook::operator=(FirstLook&&) noexcept = default;
FirstLook::~FirstLook() = default;

Expected<FirstLook> FirstLook::open(const std::string& path, Store::Clock clock) {
  auto connection = open_to_read(path);
  if (!connection) return tl::make_unexpected(connection.error());
  const auto newest = is_of_newest_version(**connection);
  if (!newest) return tl::make_unexpected(newest.error());
  if (!*newest)
    return refuse(path, "The file is of an earlier version.", "It is brought up to date when it is opened.");
  auto details = read_details(**connection);
  if (!details) return tl::make_unexpected(details.error());
  const auto zone = zone_of(*details);
  if (!zone) return tl::make_unexpected(zone.error());
  auto impl = std::make_unique<Impl>();
  impl->connection = std::move(*connection);
  impl->details = std::move(*details);
  impl->zone = *zone;
  impl->clock = std::move(clock);
  return impl->read_shop().map([&] { return FirstLook(std::move(impl)); });
}

const ShopDetails& FirstLook::details() const { return impl_->details; }
const Zone& FirstLook::zone() const { return impl_->zone; }
Instant FirstLook::now() const { return impl_->clock() + impl_->details.demo_clock; }
EmergencyCall FirstLook::emergency_call() const { return impl_->call; }
const std::vector<Person>& FirstLook::people() const { return impl_->people; }
PersonId FirstLook::joined(const PersonId& person) const { return impl_->joined(person); }

Expected<FirstLook::Answers> FirstLook::answers_for(const PersonId& person) {
  if (!impl_->decider || !impl_->persons.contains(joined(person))) {
    if (auto done = impl_->read(person); !done) return tl::make_unexpected(done.error());
    impl_->memory = std::make_unique<Memory>(impl_->in_memory());
    impl_->decider = std::make_unique<Decider>(known_shop(*impl_->memory, impl_->zone, std::nullopt));
  }
  return Answers{impl_->decider.get(), &impl_->memory->entries()};
}

}  // namespace wm::db
