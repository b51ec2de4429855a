#include "db/group_plan.h"

#include <QStringList>
#include <algorithm>
#include <map>
#include <set>

#include "db/fold.h"
#include "db/journal/subject.h"

namespace wm::db {
namespace {

QString as_qt(const std::string& s) { return QString::fromStdString(s); }

bool is_all_digits(const QString& word) {
  return !word.isEmpty() && std::all_of(word.begin(), word.end(), [](QChar c) { return c.isDigit(); });
}

/// Spreadsheets drop leading zeros.
QString bare_number(QString number) {
  while (number.size() > 1 && number.startsWith(QLatin1Char('0'))) number.remove(0, 1);
  return number;
}

/// A line as typed, taken apart.
struct TypedName {
  QString given, family, number;
  bool another = false;
};

TypedName taken_apart(const QString& line) {
  TypedName typed;
  QStringList left;
  typed.another = line.startsWith(QLatin1Char('+'));
  for (const QString& word : line.mid(typed.another ? 1 : 0).split(QChar(' '), Qt::SkipEmptyParts)) {
    QString plain = word;
    while (plain.endsWith(QLatin1Char(',')) || plain.endsWith(QLatin1Char(';'))) plain.chop(1);
    if (typed.number.isEmpty() && is_all_digits(plain))
      typed.number = plain;
    else
      left << word;
  }
  QString name = left.join(QLatin1Char(' '));
  while (name.endsWith(QLatin1Char(',')) || name.endsWith(QLatin1Char(';'))) name.chop(1);
  if (const qsizetype comma = name.indexOf(QLatin1Char(',')); comma >= 0) {
    typed.family = name.left(comma).trimmed();
    typed.given = name.mid(comma + 1).trimmed();
  } else if (const qsizetype space = name.lastIndexOf(QLatin1Char(' ')); space >= 0) {
    typed.given = name.left(space).trimmed();
    typed.family = name.mid(space + 1).trimmed();
  } else {
    typed.given = name.trimmed();
  }
  return typed;
}

QString whole_name(const TypedName& typed) {
  return folded((typed.given + QLatin1Char(' ') + typed.family).trimmed());
}

bool is_called(const Person& person, const TypedName& typed) {
  const QString name = whole_name(typed);
  for (const std::string& given : {person.given, person.nickname})
    if (!given.empty() && folded((as_qt(given) + QLatin1Char(' ') + as_qt(person.family)).trimmed()) == name)
      return true;
  return false;
}

Problem line_problem(int line, const std::string& what, const std::string& remedy) {
  return {"line " + std::to_string(line), what, remedy};
}

class GroupPlanner {
 public:
  GroupPlanner(Store& store, const GroupForm& form) : store_(store), form_(form) {}

  GroupPlan plan() {
    int number = 0;
    for (const QString& each : as_qt(form_.names).split(QLatin1Char('\n'))) {
      ++number;
      if (const QString line = each.simplified(); !line.isEmpty())
        plan_.lines.push_back(look_at(number, line));
    }
    for (const GroupLine& line : plan_.lines) {
      plan_.found += line.fate == LineFate::found;
      plan_.entered += line.fate == LineFate::entered;
      plan_.bad += line.fate == LineFate::bad;
    }
    const Rulebook* rulebook = store_.current().decider().in_force(store_.now());
    if (rulebook && rulebook->learners_to_one)
      plan_.most = *rulebook->learners_to_one * static_cast<int>(form_.instructors.size());
    if (plan_.bad == 0 && !plan_.lines.empty()) list_actions();
    return std::move(plan_);
  }

 private:
  GroupLine look_at(int number, const QString& line) {
    const TypedName typed = taken_apart(line);
    GroupLine out{number, line.toStdString(), LineFate::bad, {}, false, typed.another, {}};
    std::vector<const Person*> found = people(typed);
    if (typed.another && found.size() == 1)
      out.problem =
          line_problem(number, is_number_of(*found.front()), "Leave out the +, or correct the number.");
    else if (found.size() > 1)
      out.problem = line_problem(number, several(found), "Write the number of the one who was there.");
    else if (found.size() == 1)
      take_found(out, *found.front(), typed);
    else
      take_new(out, typed);
    if (out.problem) return out;
    const auto [earlier, first] = lines_.emplace(out.person.id, number);
    if (first) return out;
    out.fate = LineFate::bad;
    out.problem =
        line_problem(number, "This is the same person as in line " + std::to_string(earlier->second) + ".",
                     "Leave one of them out.");
    return out;
  }

  /// By their number where one is typed, else by name; those that count as one person once.
  std::vector<const Person*> people(const TypedName& typed) const {
    std::vector<const Person*> found;
    std::set<PersonId> counted;
    for (const Person& person : store_.people()) {
      if (person == nameless(person.id)) continue;
      const bool fits = typed.number.isEmpty()
                            ? !typed.another && is_called(person, typed)
                            : bare_number(as_qt(person.number)) == bare_number(typed.number);
      if (fits && counted.insert(store_.joined(person.id)).second) found.push_back(&person);
    }
    // The number as it is written comes before one that differs by zeros.
    if (found.size() > 1 && !typed.number.isEmpty())
      for (const Person* person : found)
        if (as_qt(person->number) == typed.number) return {person};
    return found;
  }

  static std::string several(const std::vector<const Person*>& found) {
    std::string numbers;
    for (const Person* person : found)
      numbers +=
          (numbers.empty() ? "" : ", ") + (person->number.empty() ? "without a number" : person->number);
    return std::to_string(found.size()) + " people are called that: " + numbers + ".";
  }

  static std::string is_number_of(const Person& person) {
    return "The number " + person.number + " is that of " + person.given + " " + person.family + ".";
  }

  /// Whoever is called what stands beside a number that nobody has: a slip in the number, more often than
  /// somebody else of the same name. Whose number is that one is for whoever typed it to say.
  std::optional<Problem> called_that(int line, TypedName typed) const {
    if (typed.another || typed.number.isEmpty() || whole_name(typed).isEmpty()) return std::nullopt;
    const std::string number = typed.number.toStdString();
    typed.number.clear();
    const std::vector<const Person*> called = people(typed);
    if (called.empty()) return std::nullopt;
    const Person& person = *called.front();
    const std::string here =
        called.size() > 1
            ? several(called)
            : person.given + " " + person.family + " is here already, " +
                  (person.number.empty() ? "without a number." : "with the number " + person.number + ".");
    return line_problem(
        line, "Nobody has the number " + number + ". " + here,
        "Correct the number, or leave it out; put + before the line where it is somebody else of "
        "the same name.");
  }

  void take_found(GroupLine& out, const Person& person, const TypedName& typed) {
    if (!typed.number.isEmpty() && !whole_name(typed).isEmpty() && !is_called(person, typed)) {
      out.problem = line_problem(out.line, is_number_of(person), "Correct the number, or the name.");
      return;
    }
    out.fate = LineFate::found;
    out.person = store_.person(store_.joined(person.id)).value_or(person);
    out.had_lesson = had_lesson(out.person.id);
  }

  void take_new(GroupLine& out, const TypedName& typed) {
    if (typed.given.isEmpty() || typed.family.isEmpty()) {
      out.problem =
          whole_name(typed).isEmpty()
              ? line_problem(out.line, "Nobody has the number " + typed.number.toStdString() + ".",
                             "Write the name beside it, or correct it.")
              : line_problem(out.line, "Nobody here is called that, and one name alone is not entered.",
                             "Write the given and the family name.");
      return;
    }
    out.problem = called_that(out.line, typed);
    if (out.problem) return;
    out.fate = LineFate::entered;
    out.person.given = typed.given.toStdString();
    out.person.family = typed.family.toStdString();
    out.person.number = typed.number.toStdString();
    // Names that were typed twice are one person's.
    for (const GroupLine& line : plan_.lines)
      if (!typed.another && line.fate == LineFate::entered && is_called(line.person, typed))
        out.person.id = line.person.id;
    if (out.person.id.empty()) out.person.id = free_id();
  }

  PersonId free_id() {
    do ++next_;
    while (store_.person("p" + std::to_string(next_)));
    return "p" + std::to_string(next_);
  }

  bool had_lesson(const PersonId& person) const {
    for (const Entry* entry : store_.of_kind("lesson")) {
      const auto& lesson = *as<Lesson>(entry->fact);
      if (!entry->voided && lesson.lesson == form_.lesson && lesson.revision == form_.revision &&
          store_.joined(lesson.person) == person)
        return true;
    }
    return false;
  }

  void list_actions() {
    TeachGroup group{form_.lesson, form_.revision, form_.instructors, {}};
    for (const GroupLine& line : plan_.lines) {
      if (line.fate == LineFate::entered) plan_.actions.push_back(EnterPerson{line.person, std::nullopt});
      if (!form_.document.empty())
        plan_.actions.push_back(EnterFact{Document{line.person.id, form_.document, form_.until}});
      group.people.push_back(line.person.id);
    }
    plan_.actions.push_back(std::move(group));
  }

  Store& store_;
  const GroupForm& form_;
  GroupPlan plan_;
  std::map<PersonId, int> lines_;
  std::size_t next_ = store_.people().size();
};

}  // namespace

GroupPlan plan_group(Store& store, const GroupForm& form) { return GroupPlanner(store, form).plan(); }

}  // namespace wm::db
