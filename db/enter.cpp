// One command: may it be entered, what does it come to, and its rows.
#include <QStringDecoder>
#include <algorithm>

#include "db/engine.h"
#include "db/journal/shop_fact_json.h"
#include "db/permission.h"
#include "db/refuse.h"
#include "db/second.h"
#include "db/stations.h"

namespace wm::db {
namespace {

bool is_utf8(const std::string& s) {
  QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
  const QString decoded = decoder(QByteArrayView(s.data(), static_cast<qsizetype>(s.size())));
  return !decoder.hasError();
}

bool is_utf8(const Person& p) {
  return is_utf8(p.id) && is_utf8(p.number) && is_utf8(p.given) && is_utf8(p.family) && is_utf8(p.nickname) &&
         is_utf8(p.card) && is_utf8(p.email) && is_utf8(p.phone) && is_utf8(p.emergency_contact);
}

const Person* person_in(const Action& action) {
  if (const auto* a = std::get_if<EnterPerson>(&action)) return &a->person;
  if (const auto* a = std::get_if<CorrectPerson>(&action)) return &a->person;
  return nullptr;
}

/// What somebody may do while the shop has no manager who could let them in.
bool makes_first_manager(const Action& action) {
  if (std::holds_alternative<EnterPerson>(action) || std::holds_alternative<ChoosePin>(action)) return true;
  const auto* own = std::get_if<EnterShopFact>(&action);
  const auto* role = own == nullptr ? nullptr : std::get_if<RoleGiven>(&own->fact);
  return role != nullptr && role->role == Role::manager;
}

/// What was shown or printed to whoever stood there.
bool is_of_looking(const Action& action) {
  const auto* own = std::get_if<EnterShopFact>(&action);
  return own != nullptr &&
         (std::holds_alternative<Printed>(own->fact) || std::holds_alternative<ContactShown>(own->fact));
}

}  // namespace

Expected<void> Store::Impl::check_command(const Command& command, Instant at) const {
  if (command.id.empty() || command.id.rfind("step-", 0) == 0)
    return refuse("id", "A command's id is not empty and does not begin with 'step-'.",
                  "Give it another id.");
  if (at < first_instant || at > last_instant)
    return refuse("at", "The time lies outside the years 1900 to 2999.", "Check the year.");
  const Person* person = person_in(command.action);
  if (is_utf8(command.id) && is_utf8(command.by) && is_utf8(command.note) &&
      (person == nullptr || is_utf8(*person)))
    return {};
  return refuse("text", "Some of the text is not valid UTF-8.", "Type it again.");
}

bool Store::Impl::without_manager(Instant t) const {
  return std::ranges::none_of(memory.managers(t), [&](const PersonId& id) { return memory.has_pin(id); });
}

Station Store::Impl::station() const { return login.empty() ? Station::whole : station_of(memory, login); }

Station Store::Impl::entered_at(const Command& command) const {
  return command.quiz_station ? Station::quiz : station();
}

Expected<void> Store::Impl::check_permission(const Command& command, Instant at, Instant recorded) {
  if (command.by.empty() && makes_first_manager(command.action) && without_manager(recorded)) return {};
  // Whoever may look may print, and in an emergency may see whom to call: it is noted whether somebody sits
  // there or not.
  if (command.by.empty() && is_of_looking(command.action)) return {};
  if (memory.person(command.by) == nullptr)
    return refuse("by", "Nobody sits at this station.", "Sit down with your PIN first.");
  const Station here = entered_at(command);
  if (auto fine = check_window(station(), command.quiz_station); !fine) return fine;
  const auto role =
      command.quiz_station ? std::optional(Role::quiz_station) : memory.role(command.by, recorded);
  if (!role)
    return refuse("by", memory.name(command.by) + " has no role at the desk.",
                  "A manager can give them one.");
  return allowed(*role, command.action, {memory, zone, command.by, command.from_paper, at, recorded, here});
}

std::int64_t Store::Impl::clock_jump() const {
  std::optional<Instant> confirmed;
  if (const auto& all = memory.of_kind("clock"); !all.empty()) {
    const Entry& last = memory.entries()[all.back()];
    if (last.recorded == memory.last_recorded()) confirmed = as<ClockConfirmed>(last.fact)->shown;
  }
  return watch.jump(now(), memory.last_recorded(), confirmed);
}

Expected<void> Store::Impl::check_clock(const Command& command, Instant clock_now) const {
  const std::int64_t jump = clock_jump();
  const bool confirms = std::holds_alternative<ConfirmClock>(command.action);
  if (jump != 0 && !confirms) return tl::make_unexpected(clock_problem(zone, clock_now, jump));
  if (jump == 0 && confirms) return refuse("clock", "The clock has not jumped.", "Nothing is left to do.");
  return {};
}

Expected<void> Store::Impl::check_vouched(const Command& command, Instant recorded) {
  if (!command.second) {
    if (!needs_second(memory, command.action, current().decider().in_force(recorded))) return {};
    return refuse("second", "The rulebook asks that a second person vouches for this.",
                  "Let another instructor or manager enter their PIN too.");
  }
  return check_second(memory, command.action, command.by, command.second->person, recorded).and_then([&] {
    return verify_pin(command.second->person, command.second->pin).map([](const PersonId&) {});
  });
}

Expected<PersonId> Store::Impl::verify_pin(const PersonId& person, const std::string& pin) {
  const Instant t = clock();
  if (auto fine = delay.check(t); !fine) return tl::make_unexpected(fine.error());
  for (const PersonId& alias : memory.aliases(person)) {
    const std::string kept = memory.kept_pin(alias);
    if (kept.empty()) continue;
    if (pin_fits(pin, kept)) {
      delay.right();
      return alias;
    }
    delay.wrong(t);
    return refuse("pin", "This is not " + memory.name(person) + "'s PIN.",
                  "Try again, or ask a manager for a new one.");
  }
  return refuse("pin", memory.name(person) + " has no PIN yet.", "A manager can give them one.");
}

Expected<PinChosen> Store::Impl::choose_pin(const PersonId& person, const std::string& pin) const {
  return new_pin(pin, options).map([&](NewPin made) {
    return PinChosen{person, std::move(made.key), std::move(made.kept)};
  });
}

Expected<std::optional<Signer>> Store::Impl::signer(const PersonId& person, const std::string& pin) {
  const auto owner = verify_pin(person, pin);
  if (!owner) return tl::make_unexpected(owner.error());
  if (auto key = key_of(pin, memory.kept_pin(*owner), options)) return Signer{*owner, std::move(*key), {}};
  // Sealed on another computer, or by a version that knew no keys: this one makes a new one for the same PIN.
  auto chosen = choose_pin(*owner, pin);
  if (!chosen) return tl::make_unexpected(chosen.error());
  auto key = key_of(pin, chosen->kept, options);
  return Signer{*owner, std::move(*key), std::move(*chosen)};
}

Expected<Role> Store::Impl::role_at_station(const PersonId& person, const std::string& pin) {
  if (memory.person(person) == nullptr)
    return refuse("person", "There is nobody with the id '" + person + "'.",
                  "Choose yourself from the list.");
  if (auto fine = verify_pin(person, pin); !fine) return tl::make_unexpected(fine.error());
  if (const auto role = memory.role(person, now())) return *role;
  return refuse("person", memory.name(person) + " has no role at the desk.", "A manager can give them one.");
}

Expected<Committed> Store::Impl::enter(const Command& command, bool founding) {
  if (const CommitLine* line = memory.commit_of(command.id)) {
    Committed before{line->number, memory.entries_of(line->number), line->person, true, {}};
    return check_same(command, *line, before.entries).map([&] { return std::move(before); });
  }
  const Instant clock_now = now();
  const Instant recorded = std::max(
      memory.last_recorded(), founding ? std::min(clock_now, command.at.value_or(clock_now)) : clock_now);
  const bool now_only = std::holds_alternative<PublishRulebook>(command.action);
  const Instant at = now_only ? recorded : command.at.value_or(recorded);
  if (auto fine = check_command(command, at); !fine) return tl::make_unexpected(fine.error());
  if (!founding) {
    if (auto fine = check_clock(command, clock_now); !fine) return tl::make_unexpected(fine.error());
    if (auto fine = check_permission(command, at, recorded); !fine) return tl::make_unexpected(fine.error());
    if (auto fine = check_vouched(command, recorded); !fine) return tl::make_unexpected(fine.error());
  }
  const Case c{memory,
               zone,
               recorded,
               at,
               founding,
               command.from_paper,
               [this]() -> Decider& { return current().decider(); },
               clock_now,
               clock_jump()};
  const PinDesk pins{
      [this](const PersonId& person, const std::string& pin) { return choose_pin(person, pin); },
      [&](const PersonId& person, const std::string& pin) {
        return founding ? Expected<std::optional<Signer>>{} : signer(person, pin);
      }};
  const std::string word = action_word(command.action);
  const bool managed =
      (word == "role" || word == "join" || word == "strike_out") && !memory.managers(recorded).empty();
  auto made = plan(c, command.action, command.id, pins);
  if (!made) return tl::make_unexpected(made.error());
  auto done = write(command, c, std::move(*made));
  if (done && std::holds_alternative<ConfirmClock>(command.action)) watch.believe(clock_now);
  // Each of these may take the last manager away: looked at once it has been done.
  if (done && managed && memory.managers(recorded).empty())
    return refuse("role", "The shop would be without a manager.", "Make somebody else a manager first.");
  if (done && (word == "station" || word == "strike_out"))
    if (auto fine = check_office(memory); !fine) return tl::make_unexpected(fine.error());
  return done;
}

Expected<ledger::Hash> Store::Impl::add(const Entry& entry, const Origin& origin, const Rulebook* rulebook) {
  auto hash = write_entry(*connection, entry, origin, rulebook);
  if (!hash) return hash;
  leaves_.push_back(*hash);
  return blank_by(*connection, entry).map([&] { return *hash; });
}

Expected<Committed> Store::Impl::write(const Command& command, const Case& c, Plan plan) {
  Committed done;
  done.number = memory.last_commit() + 1;
  const Station where = c.founding ? Station::whole : entered_at(command);
  const Origin origin{action_word(command.action), c.founding ? "" : command.by,
                      c.founding ? "import" : std::string(word(where)), command.from_paper,
                      command.second ? command.second->person : PersonId()};
  const auto enter_next = [&](AnyFact fact) -> Expected<ledger::Hash> {
    const std::size_t n = done.entries.size();
    done.entries.push_back({memory.last_order() + 1 + static_cast<std::int64_t>(n), done.number,
                            record_at(command.id, n), n == 0 ? c.at : plan.since.value_or(c.at), c.now,
                            std::nullopt, std::move(fact), origin.by, command.from_paper,
                            n == 0 ? command.note : "", origin.second, where});
    return add(done.entries.back(), origin, plan.rulebook ? &*plan.rulebook : nullptr);
  };
  for (auto* signer : {&plan.countersigner, &plan.second, &plan.signer})
    if (*signer && (*signer)->chosen) plan.facts.emplace_back(ShopFact(std::move(*(*signer)->chosen)));
  std::vector<ledger::Hash> hashes;
  for (AnyFact& fact : plan.facts) {
    const auto hash = enter_next(std::move(fact));
    if (!hash) return tl::make_unexpected(hash.error());
    hashes.push_back(*hash);
  }
  for (const auto* signer : {&plan.countersigner, &plan.second, &plan.signer}) {
    if (!*signer) continue;
    const ledger::SigningKey& key = (*signer)->key;
    const auto hash =
        enter_next(ShopFact(Signature{command.id, (*signer)->person, ledger::to_hex(key.public_key()),
                                      ledger::to_hex(key.sign(ledger::checkout_message(hashes)))}));
    if (!hash) return tl::make_unexpected(hash.error());
    hashes.push_back(*hash);
  }
  for (const Entry& entry : done.entries) memory.add_entry(entry);
  if (plan.rulebook) memory.add_rulebook(*plan.rulebook);
  for (Entry& entry : done.entries)
    if (const auto* pin = as<PinChosen>(entry.fact))
      entry.fact = ShopFact(PinChosen{pin->person, pin->key, {}});
  done.person = memory.commit_of(command.id)->person;
  return done;
}

}  // namespace wm::db
