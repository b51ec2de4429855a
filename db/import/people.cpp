#include <algorithm>

#include "core/time/text.h"
#include "db/import/rows.h"

namespace wm::db::import {
namespace {

/// One column of names: "Lindqvist, Jonas", or the last word as the family's.
void split_name(const std::string& name, Person& person) {
  const std::size_t comma = name.find(',');
  const std::size_t space = name.rfind(' ');
  if (comma != name.npos) {
    person.family = name.substr(0, comma);
    person.given = name.substr(std::min(name.size(), name.find_first_not_of(' ', comma + 1)));
  } else if (space != name.npos) {
    person.given = name.substr(0, space);
    person.family = name.substr(space + 1);
  } else {
    person.given = name;
  }
}

Person person_of(RowReader& row) {
  Person person{{},
                row.needed("number"),
                row.text("given"),
                row.text("family"),
                row.text("nickname"),
                row.text("card"),
                row.text("email"),
                row.text("phone"),
                row.text("emergency_contact")};
  if (person.given.empty() && person.family.empty()) split_name(row.text("name"), person);
  if (person.given.empty() && person.family.empty())
    row.wrong("given", "has no name", "Write a given or a family name");
  return person;
}

/// Free of anybody who had this number before.
PersonId free_id(const std::string& number, const Ground& ground) {
  PersonId id = "p" + number;
  for (int n = 2; ground.people.contains(id); ++n) id = "p" + number + "-" + std::to_string(n);
  return id;
}

/// Which details the file has otherwise; those here were perhaps corrected since, so they stay.
void remark_differences(RowReader& row, const Person& here, const Person& file, std::optional<Day> born) {
  std::string kept;
  const auto keep = [&kept](const char* what) { kept += (kept.empty() ? "" : ", ") + std::string(what); };
  const auto differs = [&](const char* what, const std::string& ours, const std::string& theirs) {
    if (!theirs.empty() && ours != theirs) keep(what);
  };
  differs("given", here.given, file.given);
  differs("family", here.family, file.family);
  differs("nickname", here.nickname, file.nickname);
  differs("card", here.card, file.card);
  differs("email", here.email, file.email);
  differs("phone", here.phone, file.phone);
  differs("emergency contact", here.emergency_contact, file.emergency_contact);
  const auto known = row.ground().born.find(here.id);
  if (born && (known == row.ground().born.end() || known->second != *born)) keep("born");
  if (!kept.empty()) row.remark("kept as it is here: " + kept);
}

/// A number that somebody else has here, by both names: their history would go to the wrong person. One name
/// may have changed, and a person whose details were blanked has none to compare.
void refuse_another(RowReader& row, const Person& here, const Person& file) {
  const auto differ = [](const std::string& ours, const std::string& theirs) {
    return !ours.empty() && !theirs.empty() && ours != theirs;
  };
  const bool turned = here.given == file.family && here.family == file.given;
  if (!turned && differ(here.given, file.given) && differ(here.family, file.family))
    row.wrong("number", "is the number of " + here.given + " " + here.family + " here",
              "Correct the number, or the name if it is the same person");
}

void check_card(RowReader& row, const Person& person) {
  const auto holder = row.ground().by_card.find(person.card);
  if (person.card.empty() || holder == row.ground().by_card.end()) return;
  const Person& other = row.ground().people.at(holder->second);
  row.wrong("card", "is the card of number " + other.number, "Give each person a card of their own");
}

/// Two different rows of one file with one number are a mistake; a row that is here from before is not.
std::vector<Command> plan_person(RowReader& row, const Ground& before) {
  Person person = person_of(row);
  const auto born = row.day("born");
  const auto first_day = row.day("joined");
  // From midnight on, so that what happened on the first day comes after it.
  const auto joined = first_day ? std::optional(before.zone.start(*first_day)) : std::nullopt;
  const Day today = before.zone.day(before.now);
  if (born && *born > today) row.wrong("born", "lies in the future", "Write the date of birth");
  if (joined && *joined > before.now)
    row.wrong("joined", "lies in the future", "Write the first day as a member");
  if (person.number.empty()) return {};
  if (const auto id = row.ground().person_numbered(person.number)) {
    Person here = row.ground().people.at(*id);
    if (before.people.contains(*id)) refuse_another(row, here, person);
    remark_differences(row, here, person, born);
    if (!before.people.contains(*id) && !row.remarks().empty())
      row.wrong("number", "stands in the file twice, with different details", "Give each person one row");
    return {};
  }
  check_card(row, person);
  person.id = free_id(person.number, row.ground());
  const RecordId id = content_id("person\x1f" + person.id);
  return {command(row, id, joined, EnterPerson{person, born})};
}

}  // namespace

ImportPlan plan_people(const Table& table, const Mapping& mapping, const PlanOptions& options,
                       const Ground& ground) {
  const Source source(FileKind::people, table, mapping, options);
  return plan_rows(source, mapping, ground, {}, [&](RowReader& row) { return plan_person(row, ground); });
}

}  // namespace wm::db::import
