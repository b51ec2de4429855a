#pragma once
// A group that had a lesson together: what a pasted list of names comes to, before anything is entered.
#include <optional>
#include <string>
#include <vector>

#include "db/store.h"

namespace wm::db {

/// What is asked for. A line of `names` is "Given Family", "Family, Given", a number, or both; with + before
/// it, somebody else than whoever is here and called that.
struct GroupForm {
  std::string names;
  std::string lesson;
  int revision = 0;
  std::string document;  // a paper that each of them has signed; empty: none
  std::optional<Day> until;
  std::vector<PersonId> instructors;
  friend bool operator==(const GroupForm&, const GroupForm&) = default;
};

enum class LineFate { found, entered, bad };
/// One line that is not empty.
struct GroupLine {
  int line = 1;  // of what was typed, from 1 on
  std::string typed;
  LineFate fate = LineFate::bad;
  Person person;            // as here, or as it will be entered with an id of its own
  bool had_lesson = false;  // in that revision, before
  bool another = false;     // said to be somebody else than whoever is called that
  std::optional<Problem> problem;
};

struct GroupPlan {
  std::vector<GroupLine> lines;
  std::size_t found = 0, entered = 0, bad = 0;
  std::optional<int> most;  // people to these instructors, by the rulebook in force
  /// One list, entered whole or not at all. Empty where a line is bad, or where nobody is named.
  std::vector<Action> actions;
};

/// Everything but what the store checks as it enters them.
GroupPlan plan_group(Store& store, const GroupForm& form);

}  // namespace wm::db
