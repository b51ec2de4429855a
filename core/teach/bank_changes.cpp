#include "core/teach/bank_changes.h"

namespace wm::teach {
namespace {

/// Whether two revisions of a question ask and count the same.
bool asks_the_same(Question one, const Question& other) {
  one.revision = other.revision;
  return one == other;
}

}  // namespace

BankChanges changes(const Bank& before, const Bank& after) {
  BankChanges changes;
  for (const Question& question : after.questions) {
    const Question* old = question_of(before, question.id);
    if (old == nullptr)
      changes.added.push_back(question.id);
    else if (question.revision > old->revision)
      changes.changed.push_back(question.id);
    else if (question.revision < old->revision || !asks_the_same(question, *old))
      changes.uncounted.push_back(question.id);
  }
  for (const Question& question : before.questions)
    if (question_of(after, question.id) == nullptr) changes.removed.push_back(question.id);
  changes.languages = before.languages != after.languages;
  changes.pass_percent = before.pass_percent != after.pass_percent;
  changes.minutes = before.minutes != after.minutes;
  changes.draws = before.draws != after.draws;
  return changes;
}

}  // namespace wm::teach
