#include "db/store.h"

#include <sodium.h>

#include <algorithm>
#include <cassert>

#include "db/check/checks.h"
#include "db/diary/diary.h"
#include "db/diary/floor.h"
#include "db/emergency.h"
#include "db/engine.h"
#include "db/heads.h"
#include "db/journal/known_shop.h"
#include "db/permission.h"
#include "db/refuse.h"
#include "db/second.h"
#include "db/sql/file.h"
#include "db/stations.h"

namespace wm::db {
namespace {

std::vector<const Command*> pointers(const std::vector<Command>& commands) {
  std::vector<const Command*> list;
  for (const Command& command : commands) list.push_back(&command);
  return list;
}

Problem numbered(Problem problem, std::ptrdiff_t place) {
  problem.where = "command " + std::to_string(place + 1);
  return problem;
}

/// Empty in a file.
Expected<std::string> read_login(Connection& connection) {
  const QString question = connection.dialect().login;
  if (question.isEmpty()) return std::string();
  return connection.value(question).map([](const QVariant& login) { return text(login); });
}

}  // namespace

Store::Store(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;
Store::~Store() = default;

Expected<Store> Store::create(const std::string& path, const ShopDetails& details, Clock clock,
                              StoreOptions options) {
  if (details.name.empty()) return refuse("name", "The shop has no name.", "Give it one.");
  if (const auto zone = zone_of(details); !zone) return tl::make_unexpected(zone.error());
  return create_store(path, details, options).and_then([&](std::unique_ptr<Connection> connection) {
    connection.reset();
    return open(path, std::move(clock), options);
  });
}

struct ReadAhead::Content {
  Memory memory;
  CurrentShop current;
};

ReadAhead::ReadAhead(std::unique_ptr<Content> content) : content_(std::move(content)) {}
ReadAhead::ReadAhead(ReadAhead&&) noexcept = default;
ReadAhead& ReadAhead::operator=(ReadAhead&&) noexcept = default;
ReadAhead::~ReadAhead() = default;

Expected<ReadAhead> ReadAhead::read(const std::string& path, const StoreOptions& options) {
  auto connection = open_store(path, options);
  if (!connection) return tl::make_unexpected(connection.error());
  const auto details = read_details(**connection);
  if (!details) return tl::make_unexpected(details.error());
  const auto zone = zone_of(*details);
  if (!zone) return tl::make_unexpected(zone.error());
  auto reading = Transaction::begin_reading(**connection);
  if (!reading) return tl::make_unexpected(reading.error());
  auto content = std::make_unique<Content>();
  if (auto done = read_new(**connection, content->memory); !done) return tl::make_unexpected(done.error());
  if (auto done = reading->commit(); !done) return tl::make_unexpected(done.error());
  (void)content->current.of(content->memory, *zone);
  return ReadAhead(std::move(content));
}

Expected<Store> Store::open(const std::string& path, Clock clock, StoreOptions options) {
  return connect(path, std::move(clock), std::move(options)).and_then([](std::unique_ptr<Impl> impl) {
    return impl->load_again().map([&] { return Store(std::move(impl)); });
  });
}

Expected<Store> Store::open(const std::string& path, Clock clock, StoreOptions options, ReadAhead ahead) {
  return connect(path, std::move(clock), std::move(options)).and_then([&](std::unique_ptr<Impl> impl) {
    return impl->adopt(std::move(ahead.content_->memory), std::move(ahead.content_->current)).map([&] {
      return Store(std::move(impl));
    });
  });
}

Expected<std::unique_ptr<Store::Impl>> Store::connect(const std::string& path, Clock clock,
                                                      StoreOptions options) {
  if (sodium_init() < 0)
    return refuse("pin", "This computer gives no random numbers.", "Restart it, then try again.");
  auto impl = std::make_unique<Impl>();
  auto connection = open_store(path, options);
  if (!connection) return tl::make_unexpected(connection.error());
  impl->connection = std::move(*connection);
  impl->clock = std::move(clock);
  impl->options = std::move(options);
  auto details = read_details(*impl->connection);
  if (!details) return tl::make_unexpected(details.error());
  impl->details = *details;
  auto zone = zone_of(impl->details);
  if (!zone) return tl::make_unexpected(zone.error());
  impl->zone = *zone;
  auto login = read_login(*impl->connection);
  if (!login) return tl::make_unexpected(login.error());
  impl->login = impl->options.login.empty() ? std::move(*login) : impl->options.login;
  if (auto compared = impl->compare_clocks(); !compared) return tl::make_unexpected(compared.error());
  impl->watch = ClockWatch(impl->options.passed, impl->now());
  impl->delay = PinDelay(impl->options.pin_wait);
  return impl;
}

const ShopDetails& Store::details() const { return impl_->details; }
const std::string& Store::path() const { return impl_->connection->path(); }
Instant Store::now() const { return impl_->now(); }

Expected<Committed> Store::commit(const Command& command) {
  assert(std::this_thread::get_id() == impl_->owner);
  return impl_->carry_out({&command}, false);
}

Expected<Committed> Store::commit_all(const std::vector<Command>& commands) {
  assert(std::this_thread::get_id() == impl_->owner);
  return impl_->carry_out(pointers(commands), false).map_error([&](const Problem& problem) {
    return impl_->refused() < commands.size()
               ? numbered(problem, static_cast<std::ptrdiff_t>(impl_->refused()))
               : problem;
  });
}

Expected<Committed> Store::found(const std::vector<Command>& commands) {
  assert(std::this_thread::get_id() == impl_->owner);
  auto order = pointers(commands);
  std::stable_sort(order.begin(), order.end(),
                   [](const Command* a, const Command* b) { return a->at < b->at; });
  return impl_->carry_out(order, true).map_error([&](const Problem& problem) {
    return impl_->refused() < order.size() ? numbered(problem, order[impl_->refused()] - commands.data())
                                           : problem;
  });
}

bool Store::unsure() const { return impl_->unsure(); }

std::int64_t Store::clock_jump() const { return impl_->clock_jump(); }
bool Store::asks_for_second(const Action& action) const {
  return needs_second(impl_->memory, action, impl_->current().decider().in_force(now()));
}

Expected<Role> Store::sit_down(const PersonId& person, const std::string& pin) {
  assert(std::this_thread::get_id() == impl_->owner);
  return impl_->role_at_station(person, pin);
}

ShopHours Store::hours() const { return shop_hours(impl_->memory); }
DiaryRules Store::diary_rules() const { return db::diary_rules(impl_->memory); }
std::vector<Booked> Store::booked(const Interval& within) const {
  return db::booked(impl_->memory, within, now());
}

Station Store::station() const { return impl_->station(); }
Expected<void> Store::quiz_here() const { return check_window(station(), true); }
const std::string& Store::login() const { return impl_->login; }
std::vector<StationTold> Store::stations() const { return db::stations(impl_->memory); }
EmergencyCall Store::emergency_call() const { return db::emergency_call(impl_->memory); }

bool Store::has_pin(const PersonId& person) const { return impl_->memory.has_pin(person); }

std::vector<OpenSheet> Store::open_sheets() const { return db::open_sheets(impl_->memory, now()); }

bool Store::saw_marks(const RecordId& checkout, const PersonId& person) const {
  return db::saw_marks(impl_->memory, checkout, person);
}

Floor Store::floor(Instant at, std::optional<Instant> known) const {
  return floor_at(impl_->memory, impl_->zone, at, known);
}
std::vector<LockOn> Store::locks_on(Instant at, std::optional<Instant> known) const {
  return db::locks_on(impl_->memory, at, known);
}
StartNow Store::start_now(const PersonId& person, const MachineId& machine, const TargetName& target) {
  return start_at(impl_->memory, impl_->zone, current().decider(), person, machine, target, now(), now());
}

Expected<void> Store::permitted(const PersonId& by, const Action& action) const {
  const auto role = role_of(by);
  if (!role)
    return refuse("by", "Nobody sits at this station who may enter this.", "Sit down with your PIN first.");
  return allowed(*role, action, {impl_->memory, impl_->zone, by, false, now(), now(), station()});
}

Expected<void> Store::still_stands(const RecordId& booking) {
  const Case c{impl_->memory,
               impl_->zone,
               now(),
               now(),
               false,
               false,
               [this]() -> Decider& { return impl_->current().decider(); },
               now(),
               0};
  return check_stands(c, booking);
}

std::vector<Day> Store::days_not_come(const PersonId& person) const {
  return db::days_not_come(impl_->memory, impl_->zone, person);
}

std::optional<Day> Store::rests_through(const PersonId& person) const {
  const auto rule = not_come_rule(diary_rules());
  const auto last = rule ? wm::rests_through(*rule, days_not_come(person)) : std::nullopt;
  return last && *last >= impl_->zone.day(now()) ? last : std::nullopt;
}

std::optional<Instant> Store::turns_18(const PersonId& person) const {
  return db::turns_18(impl_->memory, impl_->zone, person);
}

std::optional<Instant> Store::first_taught(const PersonId& assessor, const PersonId& person,
                                           const TargetName& target) const {
  return db::first_taught(impl_->memory, assessor, person, target, now());
}

bool Store::another_checks_out(const TargetName& target, Instant at) {
  return db::another_checks_out(impl_->current().decider().in_force(at), target);
}

bool Store::two_check_out(const TargetName& target, Instant at) {
  return db::two_check_out(impl_->current().decider().in_force(at), target);
}

std::optional<Role> Store::role_of(const PersonId& person, std::optional<Instant> known) const {
  return impl_->memory.role(person, known.value_or(now()), known);
}

Shop Store::shop(std::optional<Instant> known) const {
  assert(std::this_thread::get_id() == impl_->owner);
  return known_shop(impl_->memory, impl_->zone, known);
}

Current& Store::current() {
  assert(std::this_thread::get_id() == impl_->owner);
  return impl_->current();
}

const Entry* Store::entry(const RecordId& id) const { return impl_->memory.find(id); }

const std::vector<Entry>& Store::entries() const { return impl_->memory.entries(); }
std::vector<const Entry*> Store::of_kind(std::string_view kind) const {
  std::vector<const Entry*> found;
  for (const std::size_t i : impl_->memory.of_kind(kind)) found.push_back(&impl_->memory.entries()[i]);
  return found;
}
const std::vector<Person>& Store::people() const { return impl_->memory.people(); }
const std::vector<Rulebook>& Store::rulebooks() const { return impl_->memory.rulebooks(); }

std::optional<Person> Store::person(const PersonId& id, std::optional<Instant> known) const {
  const Person* found = known ? impl_->memory.person_known(id, *known) : impl_->memory.person(id);
  return found == nullptr ? std::nullopt : std::optional(*found);
}

std::vector<Person> Store::people_known(Instant known) const {
  std::vector<Person> all;
  for (const Person& person : impl_->memory.people())
    if (const Person* then = impl_->memory.person_known(person.id, known)) all.push_back(*then);
  return all;
}

std::vector<std::pair<PersonId, Day>> Store::births() const {
  std::vector<std::pair<PersonId, Day>> all;
  for (const std::size_t i : impl_->memory.of_kind("birth")) {
    const auto& birth = std::get<Birth>(std::get<Fact>(impl_->memory.entries()[i].fact));
    all.emplace_back(impl_->memory.joined(birth.person), birth.born);
  }
  return all;
}

bool Store::has_text_to_erase(const RecordId& record) const {
  return check_blanking_record(impl_->memory, record).has_value();
}

PersonId Store::joined(const PersonId& id, std::optional<Instant> known) const {
  return impl_->memory.joined(id, known);
}

Expected<ledger::Head> Store::head(std::optional<Instant> known) const {
  assert(std::this_thread::get_id() == impl_->owner);
  return head_of(*impl_->connection, known);
}

std::int64_t Store::last_commit() const { return impl_->memory.last_commit(); }

Expected<bool> Store::refresh() {
  assert(std::this_thread::get_id() == impl_->owner);
  return impl_->catch_up();
}

bool Store::listen(std::function<void()> told) {
  assert(std::this_thread::get_id() == impl_->owner);
  return impl_->connection->listen(std::move(told));
}

}  // namespace wm::db
