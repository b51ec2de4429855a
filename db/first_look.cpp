#include "db/first_look.h"

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

FirstLook::FirstLook(std::unique_ptr<Connection> connection, ShopDetails details, Zone zone,
                     Store::Clock clock)
    : connection_(std::move(connection)),
      details_(std::move(details)),
      zone_(std::move(zone)),
      clock_(std::move(clock)) {}

Expected<FirstLook> FirstLook::open(const std::string& path, Store::Clock clock) {
  auto connection = open_to_read(path);
  if (!connection) return tl::make_unexpected(connection.error());
  if (const auto newest = is_of_newest_version(**connection); !newest || !*newest)
    return newest ? refuse(path, "The file is of an earlier version.",
                           "It is brought up to date when it is opened.")
                  : tl::make_unexpected(newest.error());
  auto details = read_details(**connection);
  if (!details) return tl::make_unexpected(details.error());
  auto zone = Zone::named(details->zone);
  if (!zone) return refuse("zone", "There is no time zone '" + details->zone + "'.", "Choose another.");
  FirstLook look(std::move(*connection), std::move(*details), std::move(*zone), std::move(clock));
  return look.read_shop().map([&] { return std::move(look); });
}

Expected<void> FirstLook::read_shop() {
  auto proved = read_proved(*connection_);
  if (!proved) return tl::make_unexpected(proved.error());
  proved_ = std::move(*proved);
  auto done = read_shop_wide(*connection_, proved_, [this](LeafContent content) {
    const std::int64_t order = content.entry.order;
    read_.emplace(order, std::move(content));
  });
  if (!done) return done;
  const Memory known = memory();
  people_ = known.people();
  for (const Person& person : people_) aliases_[known.joined(person.id)].push_back(person.id);
  return {};
}

PersonId FirstLook::joined(const PersonId& person) const {
  for (const auto& [root, all] : aliases_)
    if (std::find(all.begin(), all.end(), person) != all.end()) return root;
  return person;
}

Expected<void> FirstLook::read(const PersonId& person) {
  std::vector<PersonId> next = {joined(person)};
  while (!next.empty()) {
    const PersonId root = next.back();
    next.pop_back();
    if (!persons_.insert(root).second) continue;
    const auto all = aliases_.find(root);
    for (const PersonId& alias : all == aliases_.end() ? std::vector{root} : all->second) {
      auto done = read_person(*connection_, alias, proved_, [&](LeafContent content) {
        if (const PersonId other = witness(content.entry.fact); !other.empty()) next.push_back(joined(other));
        const std::int64_t order = content.entry.order;
        read_.emplace(order, std::move(content));
      });
      if (!done) return done;
    }
  }
  return {};
}

/// As read_new fills it, without what ends a record that was not read.
Memory FirstLook::memory() const {
  Memory memory;
  for (const auto& [order, content] : read_) {
    const RecordId ended = subject_of(content.entry.fact).refers_to;
    const bool ends = content.kind == "reinstate" || content.kind == "dismiss" || content.kind == "release";
    if (content.blank || (ends && memory.find(ended) == nullptr)) continue;
    memory.add_entry(content.entry);
    if (content.rulebook) memory.add_rulebook(*content.rulebook);
  }
  return memory;
}

Expected<Decider*> FirstLook::decider_for(const PersonId& person) {
  if (!decider_ || !persons_.contains(joined(person))) {
    if (auto done = read(person); !done) return tl::make_unexpected(done.error());
    decider_ = std::make_unique<Decider>(known_shop(memory(), zone_, std::nullopt));
  }
  return decider_.get();
}

}  // namespace wm::db
