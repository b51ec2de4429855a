// People's details, and rulebooks.
#include "core/rulebook/json.h"
#include "db/check/checks.h"
#include "db/journal/shop_fact_json.h"

namespace wm::db {
namespace {

Expected<void> check_details(const Case& c, const Person& person) {
  if (person.given.empty() && person.family.empty())
    return refuse("given", "The person has no name.", "Enter a given or a family name.");
  if (const Person* other = c.memory.other_with_number(person))
    return refuse("number", "The number " + person.number + " is " + c.memory.name(other->id) + "'s.",
                  "Choose another number, or join the two entries if they are one person.");
  if (const Person* other = c.memory.other_with_card(person))
    return refuse("card", "This card is " + c.memory.name(other->id) + "'s.", "Choose another card.");
  return {};
}

}  // namespace

Expected<void> check_new_person(const Case& c, const Person& person) {
  if (c.memory.person(person.id) == nullptr) return check_details(c, person);
  return refuse("id", "There is somebody with the id '" + person.id + "' already.", "Leave the id out.");
}

Expected<void> check_corrected_person(const Case& c, const Person& person) {
  return check_known_person(c, person.id).and_then([&] { return check_details(c, person); });
}

Expected<void> check_blanking(const Case& c, const PersonId& person) {
  if (auto fine = check_known_person(c, person); !fine) return fine;
  if (!c.memory.role(person, c.now)) return {};
  return refuse("person", c.memory.name(person) + " still has a role at the desk.", "End the role first.");
}

Expected<void> check_blanking_record(const Memory& memory, const RecordId& record) {
  const Entry* entry = memory.find(record);
  if (entry == nullptr)
    return refuse("record", "There is no record with the id '" + record + "'.",
                  "Choose one from the journal.");
  if (const auto* details = as<Details>(entry->fact)) {
    if (details->details == nameless(details->person))
      return refuse("record", "These details have been erased already.", "Nothing is left to do.");
    const bool latest = memory.details_of(details->person).back() == entry;
    return latest ? refuse("record", "These are the person's details as they are now.",
                           "Correct them first, or erase the person's details.")
                  : Expected<void>{};
  }
  const auto* own = std::get_if<ShopFact>(&entry->fact);
  const bool pin = as<PinChosen>(entry->fact) != nullptr;
  if (!entry->note.empty() || (own != nullptr && !pin && !personal_in(*own).empty())) return {};
  return refuse("record", "There is no text in this record that could be erased.", "Nothing is left to do.");
}

Expected<void> check_rulebook(const Case& c, const Rulebook& rulebook) {
  if (const auto mistakes = mistakes_in(rulebook); !mistakes.empty()) {
    Problem first = mistakes.front();
    if (mistakes.size() > 1) first.what += " (One of " + std::to_string(mistakes.size()) + " mistakes.)";
    return tl::make_unexpected(first);
  }
  for (const Memory::IssuedRulebook& issued : c.memory.issued())
    if (issued.rulebook.version == rulebook.version)
      return refuse("/version", "There is a version " + std::to_string(rulebook.version) + " already.",
                    "Give it the next number.");
  if (rulebook.effective_from < c.now)
    return refuse(
        "/effective_from",
        "The rulebook would count from " + said(c, rulebook.effective_from) + " on, before it is entered.",
        "Let it count from now or later.");
  if (auto read = read_rulebook(to_json(rulebook)); !read) return tl::make_unexpected(read.error().front());
  return {};
}

}  // namespace wm::db
