// A lesson given to several at once, and visitors for a day.
#include <algorithm>

#include "db/check/checks.h"
#include "db/diary/diary.h"

namespace wm::db {
namespace {

bool among(const Case& c, const std::vector<PersonId>& people, const PersonId& person) {
  return std::any_of(people.begin(), people.end(),
                     [&](const PersonId& each) { return c.same(each, person); });
}

Expected<void> check_instructors(const Case& c, const TeachGroup& f) {
  if (f.instructors.empty())
    return refuse("instructors", "Nobody is named who gave the lesson.", "Say who did.");
  for (auto each = f.instructors.begin(); each != f.instructors.end(); ++each) {
    if (auto fine = check_known_person(c, *each, "instructors"); !fine) return fine;
    if (among(c, {f.instructors.begin(), each}, *each))
      return refuse("instructors", c.memory.name(*each) + " is named twice.", "Leave one out.");
    const auto role = c.memory.role(*each, c.at);
    if (c.judges_ability() && (!role || *role < Role::instructor))
      return refuse("instructors", c.memory.name(*each) + " is no instructor of this shop.",
                    "Name an instructor or a manager; a manager can give the role.");
  }
  return {};
}

Expected<void> check_people(const Case& c, const TeachGroup& f) {
  if (f.people.empty()) return refuse("people", "Nobody is in the group.", "Say who had the lesson.");
  for (auto each = f.people.begin(); each != f.people.end(); ++each) {
    if (auto fine = check_fact(c, AnyFact(Fact(Lesson{*each, f.lesson, f.revision}))); !fine) return fine;
    if (among(c, {f.people.begin(), each}, *each))
      return refuse("people", c.memory.name(*each) + " is in the group twice.", "Leave one out.");
    if (among(c, f.instructors, *each))
      return refuse("people", c.memory.name(*each) + " can't give the lesson and have it.",
                    "Leave them out on one side.");
  }
  return {};
}

Expected<void> check_ratio(const Case& c, const TeachGroup& f) {
  const Rulebook* rulebook = c.decider().in_force(c.at);
  if (c.founding || rulebook == nullptr || !rulebook->learners_to_one) return {};
  const std::size_t most = static_cast<std::size_t>(*rulebook->learners_to_one) * f.instructors.size();
  if (f.people.size() <= most) return {};
  return refuse("instructors",
                std::to_string(f.people.size()) + " people are too many for " +
                    (f.instructors.size() == 1 ? std::string("one instructor")
                                               : std::to_string(f.instructors.size()) + " instructors") +
                    "; the rules allow " + std::to_string(*rulebook->learners_to_one) + " to one.",
                "Name who else instructed, or make two groups.");
}

}  // namespace

Expected<void> check_group(const Case& c, const TeachGroup& f) {
  if (f.lesson.empty()) return refuse("lesson", "No lesson is named.", "Choose the lesson.");
  return check_instructors(c, f).and_then([&] { return check_people(c, f); }).and_then([&] {
    return check_ratio(c, f);
  });
}

Expected<void> check_visit(const Case& c, const Visit& f) {
  if (auto fine = check_said(f.name, "name", "A visitor has a name."); !fine) return fine;
  if (auto fine = check_said(f.paper, "paper", "It is not said which paper of the shop's they have signed.");
      !fine)
    return fine;
  if (!c.judges_ability() || has(floor_at(c.memory, c.zone, c.at).present, c.memory.joined(f.host)))
    return {};
  return refuse("host", c.memory.name(f.host) + " is not in.",
                "Choose somebody who is here and stays with them, or enter first that they came in.");
}

Expected<void> check_visit_end(const Case& c, const VisitEnd& f) {
  if (c.memory.live<Visit>(f.visit) == nullptr)
    return refuse("visit", "There is no visit with the id '" + f.visit + "'.", "Choose one from the list.");
  if (c.memory.about<VisitEnd>(f.visit) != nullptr)
    return refuse("visit", "This visitor has left already.", "Nothing is left to do.");
  const Instant came = c.memory.find(f.visit)->at;
  if (c.at < came || c.zone.day(c.at) != c.zone.day(came))
    return refuse("at", "They were here on " + said(c.zone.day(came)) + ", from " + said(c, came) + ".",
                  "Choose a time of that day.");
  return {};
}

}  // namespace wm::db
