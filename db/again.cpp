// A command whose id has been entered before: is it the same command?
#include "db/engine.h"
#include "db/permission.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

/// What was entered under the id.
struct Earlier {
  std::string action, entered_by, station;
  bool details_kept = true;  // the person's details are still those of then
  bool pin_kept = true;
  bool noted = false;  // with a note, which may have been blanked
};

Expected<Earlier> read_earlier(Connection& connection, const CommitLine& line) {
  // Until later versions a blanking's commit did not name the person.
  auto q = connection.run(
      "SELECT action, entered_by, station, "
      "(SELECT count(*) FROM commits l WHERE l.commit_no > c.commit_no AND l.person IN (c.person, '') AND "
      "l.action IN ('correct_person', 'blank_person')), "
      "(SELECT count(*) FROM commits l WHERE l.commit_no > c.commit_no AND l.person IN (c.person, '') AND "
      "l.action IN ('choose_pin', 'blank_person')), "
      "EXISTS (SELECT 1 FROM records r WHERE r.id = c.command_id AND r.note_hash IS NOT NULL) FROM commits c "
      "WHERE c.commit_no = ?",
      {static_cast<qlonglong>(line.number)});
  if (!q) return tl::make_unexpected(q.error());
  const auto row = connection.next(**q);
  if (!row) return tl::make_unexpected(row.error());
  if (!*row)
    return refuse(connection.path(),
                  "The file is damaged: it lacks commit " + std::to_string(line.number) + ".",
                  "Bring back the last backup, and keep this file.");
  Earlier earlier{text((*q)->value(0)),        text((*q)->value(1)),        text((*q)->value(2)),
                  (*q)->value(3).toInt() == 0, (*q)->value(4).toInt() == 0, (*q)->value(5).toBool()};
  (*q)->finish();
  return earlier;
}

/// What stands in a command as it was given, against what came of it. What has been blanked since cannot be
/// compared.
struct Comparison {
  const Memory& memory;
  const Command& command;
  const CommitLine& line;
  const Earlier& earlier;
  const std::vector<Entry>& entries;
  std::function<Expected<std::string>(const PersonId&)> pin_of;

  Expected<bool> operator()(const EnterPerson& a) const {
    if (!a.person.id.empty() && a.person.id != line.person) return false;
    const auto* birth = entries.empty() ? nullptr : as<Birth>(entries.front().fact);
    if (birth != nullptr && birth->born != a.born) return false;
    return !earlier.details_kept || (details(a.person) && (birth != nullptr) == a.born.has_value());
  }
  Expected<bool> operator()(const CorrectPerson& a) const {
    return a.person.id == line.person && (!earlier.details_kept || details(a.person));
  }
  Expected<bool> operator()(const BlankPerson& a) const {
    return line.person.empty() || a.person == line.person;
  }
  Expected<bool> operator()(const ChoosePin& a) const {
    if (a.person != line.person) return false;
    if (!earlier.pin_kept) return true;
    return pin_of(a.person).map(
        [&](const std::string& hash) { return hash.empty() || pin_fits(a.pin, hash); });
  }
  Expected<bool> operator()(const EnterFact& a) const {
    // A birth date that is blanked leaves no entry.
    if (entries.empty()) return std::holds_alternative<Birth>(a.fact);
    return are({AnyFact(a.fact)});
  }
  Expected<bool> operator()(const EnterShopFact& a) const { return are({AnyFact(a.fact)}); }
  Expected<bool> operator()(const SignCheckout& a) const {
    std::vector<AnyFact> facts = facts_of(a, command.id);
    if (a.booking && entries.size() > facts.size()) facts.push_back(arrival(*a.booking));
    return are(facts);
  }
  Expected<bool> operator()(const PutOutOfService& a) const { return are(facts_of(a, command.id)); }
  Expected<bool> operator()(const PublishRulebook& a) const {
    for (const Memory::Issued& issued : memory.issued()) {
      if (issued.record != command.id) continue;
      Rulebook asked = a.rulebook;
      asked.recorded = issued.rulebook.recorded;
      return asked == issued.rulebook;
    }
    return false;
  }
  Expected<bool> operator()(const StrikeOutRecord& a) const {
    return are({AnyFact(ShopFact(StrikeOut{a.record, a.reason}))});
  }

  bool details(Person person) const {
    person.id = line.person;
    const Person* kept = memory.person(line.person);
    return kept != nullptr && *kept == person;
  }
  bool are(const std::vector<AnyFact>& facts) const {
    return std::equal(facts.begin(), facts.end(), entries.begin(), entries.end(),
                      [](const AnyFact& fact, const Entry& entry) { return fact == entry.fact; });
  }
};

}  // namespace

Expected<void> Store::Impl::check_same(const Command& command, const CommitLine& line,
                                       const std::vector<Entry>& entries) {
  const auto earlier = read_earlier(*connection, line);
  if (!earlier) return tl::make_unexpected(earlier.error());
  const bool imported = earlier->station == "import";
  bool same = action_word(command.action) == earlier->action &&
              (imported ||
               (command.by == earlier->entered_by && command.quiz_station == (earlier->station == "quiz")));
  const bool dated = command.at && !std::holds_alternative<PublishRulebook>(command.action);
  for (const Entry& entry : entries)
    same =
        same && (!dated || entry.at == *command.at) && (imported || entry.from_paper == command.from_paper);
  if (!entries.empty()) {
    const std::string& note = entries.front().note;
    const bool blanked = note.empty() && earlier->noted;
    same = same && (note == command.note || blanked);
  }
  if (same) {
    const auto content =
        std::visit(Comparison{memory, command, line, *earlier, entries,
                              [this](const PersonId& person) { return read_pin(*connection, person); }},
                   command.action);
    if (!content) return tl::make_unexpected(content.error());
    same = *content;
  }
  if (same) return {};
  return refuse("id", "Something else has been entered under the id '" + command.id + "' already.",
                "Look whether it is what you meant; if not, enter this anew.");
}

}  // namespace wm::db
