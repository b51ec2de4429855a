// A command whose id has been entered before: is it the same command?
#include "db/engine.h"
#include "db/follow.h"
#include "db/journal/leaf.h"
#include "db/journal/shop_fact_json.h"
#include "db/permission.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

/// What was entered under the id.
struct Earlier {
  Origin origin;
  bool noted = false;  // with a note, which may have been blanked
};

Expected<Earlier> read_earlier(Connection& connection, const RecordId& id) {
  auto q = connection.run("SELECT leaf FROM records WHERE id = ?", {text(id)});
  if (!q) return tl::make_unexpected(q.error());
  const auto row = connection.next(**q);
  if (!row) return tl::make_unexpected(row.error());
  const std::string leaf = *row ? text((*q)->value(0)) : "";
  (*q)->finish();
  return read_leaf(leaf, {}, std::nullopt).map([](const LeafContent& content) {
    return Earlier{content.origin, content.hashes.contains("note")};
  });
}

/// What stands in a command as it was given, against what came of it. What has been blanked since cannot be
/// compared.
struct Comparison {
  const Memory& memory;
  const Command& command;
  const CommitLine& line;
  const std::vector<Entry>& entries;

  bool operator()(const EnterPerson& a) const {
    if (!a.person.id.empty() && a.person.id != line.person) return false;
    if (!kept()) return true;
    const auto* birth = entries.size() < 2 ? nullptr : as<Birth>(entries[1].fact);
    return details(a.person) && (birth == nullptr ? !a.born : birth->born == a.born);
  }
  bool operator()(const CorrectPerson& a) const {
    return a.person.id == line.person && (!kept() || details(a.person));
  }
  bool operator()(const BlankPerson& a) const { return a.person == line.person; }
  bool operator()(const ChoosePin& a) const {
    if (a.person != line.person) return false;
    const std::string pin = memory.kept_pin(a.person);
    return pin.empty() || memory.pin_of(a.person) != command.id || pin_fits(a.pin, pin);
  }
  bool operator()(const EnterFact& a) const {
    // A birth date that is blanked leaves no entry.
    if (entries.empty()) return std::holds_alternative<Birth>(a.fact);
    return are({AnyFact(a.fact)});
  }
  bool operator()(const EnterShopFact& a) const { return are({AnyFact(a.fact)}); }
  bool operator()(const SignCheckout& a) const { return signed_as(facts_of(a, command.id), a); }
  bool operator()(const EnterPaperSheet& a) const { return signed_as(facts_of(a, command.id), a.sheet); }
  bool signed_as(std::vector<AnyFact> facts, const SignCheckout& a) const {
    // Where its turnout was not marked yet.
    if (a.booking && facts.size() < entries.size() && as<Attendance>(entries[facts.size()].fact) != nullptr)
      facts.emplace_back(ShopFact(Attendance{*a.booking, Turnout::arrived}));
    return are(facts);
  }
  bool operator()(const PutOutOfService& a) const { return are(facts_of(a, command.id)); }
  bool operator()(const RecordIncident& a) const { return are(facts_of(a, command.id)); }
  bool operator()(const TeachGroup& a) const { return are(facts_of(a, command.id)); }
  bool operator()(const RecordChange& a) const { return are(facts_of(a, command.id)); }
  bool operator()(const LeaveMachine& a) const {
    const auto* left = as<Left>(entries.front().fact);
    return left != nullptr && left->started == a.started;
  }
  bool operator()(const PublishRulebook& a) const {
    for (const Memory::IssuedRulebook& issued : memory.issued()) {
      if (issued.record != command.id) continue;
      Rulebook asked = a.rulebook;
      asked.recorded = issued.rulebook.recorded;
      return asked == issued.rulebook;
    }
    return false;
  }
  bool operator()(const BlankRecord& a) const { return are({AnyFact(ShopFact(Blanked{a.record}))}); }
  bool operator()(const HandIn& a) const {
    const auto* sat = entries.size() < 2 ? nullptr : as<AttemptSat>(entries[1].fact);
    return sat != nullptr && sat->begun == a.begun && (sat->attempt == a.attempt || sat->attempt.empty());
  }
  bool operator()(const ConfirmClock&) const { return true; }
  bool operator()(const CountersignCheckout& a) const {
    const auto* said = as<Countersigned>(entries.front().fact);
    return said != nullptr && said->checkout == a.checkout && said->hand == a.by.hand;
  }
  bool operator()(const ScoreApart& a) const { return are({AnyFact(ShopFact(a.scored))}); }
  bool operator()(const StrikeOutRecord& a) const {
    return are({AnyFact(ShopFact(StrikeOut{a.record, a.reason}))});
  }

  /// Whether the details of then have not been erased.
  bool kept() const { return as<Details>(entries.front().fact)->details != nameless(line.person); }
  bool details(Person person) const {
    person.id = line.person;
    return as<Details>(entries.front().fact)->details == person;
  }
  bool are(const std::vector<AnyFact>& facts) const {
    // A signature, a key made for it, and what follows from the others are the store's own.
    std::vector<const Entry*> given;
    for (const Entry& entry : entries)
      if (as<Signature>(entry.fact) == nullptr && as<PinChosen>(entry.fact) == nullptr &&
          (given.size() < facts.size() || !is_what_follows(entry.fact)))
        given.push_back(&entry);
    return std::equal(facts.begin(), facts.end(), given.begin(), given.end(),
                      [](const AnyFact& fact, const Entry* entry) { return is(fact, entry->fact); });
  }
  static bool is(AnyFact asked, const AnyFact& entered) {
    auto* own = std::get_if<ShopFact>(&asked);
    const auto* kept = std::get_if<ShopFact>(&entered);
    if (own != nullptr && kept != nullptr && own->index() == kept->index()) blank_as(*kept, *own);
    return asked == entered;
  }
};

}  // namespace

Expected<void> Store::Impl::check_same(const Command& command, const CommitLine& line,
                                       const std::vector<Entry>& entries) {
  const auto earlier = read_earlier(*connection, command.id);
  if (!earlier) return tl::make_unexpected(earlier.error());
  const bool imported = earlier->origin.station == "import";
  bool same = action_word(command.action) == earlier->origin.action &&
              (imported || (command.by == earlier->origin.by &&
                            command.quiz_station == (earlier->origin.station == "quiz")));
  const bool dated = command.at && !std::holds_alternative<PublishRulebook>(command.action);
  // What was worked began when the machine was started, and not when it was left; whose booking is cancelled
  // waits since before it was.
  const bool leaves = std::holds_alternative<LeaveMachine>(command.action);
  for (const Entry& entry : entries)
    same = same &&
           (!dated || entry.at == *command.at ||
            (&entry != &entries.front() && (leaves || as<Waiting>(entry.fact) != nullptr))) &&
           (imported || entry.from_paper == command.from_paper);
  if (!entries.empty()) {
    const std::string& note = entries.front().note;
    const bool blanked = note.empty() && earlier->noted;
    same = same && (note == command.note || blanked);
    same = same && entries.front().second == (command.second ? command.second->person : PersonId());
  }
  same = same && std::visit(Comparison{memory, command, line, entries}, command.action);
  if (same) return {};
  return refuse("id", "Something else has been entered under the id '" + command.id + "' already.",
                "Look whether it is what you meant; if not, enter this anew.");
}

}  // namespace wm::db
