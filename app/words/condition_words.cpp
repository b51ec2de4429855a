#include "app/words/condition_words.h"

#include "app/words/listing.h"
#include "app/words/tr.h"

namespace wm::app {

namespace {

QString buddy_words(const Buddy& buddy) {
  const int n = buddy.count;
  switch (buddy.at_least) {
    case Rung::barred:
      return n == 1 ? Words::tr("one other person is present")
                    : Words::tr("%n other people are present", "", n);
    case Rung::supervised:
      return n == 1 ? Words::tr("one other person who may use it is present")
                    : Words::tr("%n other people who may use it are present", "", n);
    case Rung::independent:
      return n == 1 ? Words::tr("one other qualified person is present")
                    : Words::tr("%n other qualified people are present", "", n);
  }
  return {};
}

}  // namespace

QString condition_words(const Condition& condition) {
  if (const auto* buddy = std::get_if<Buddy>(&condition)) return buddy_words(*buddy);
  return Words::tr("staff are in");
}

QString conditions_clause(const std::vector<Condition>& conditions) {
  QStringList parts;
  for (const Condition& condition : conditions) parts << condition_words(condition);
  parts.removeDuplicates();
  return parts.isEmpty() ? QString() : Words::tr(", while %1").arg(and_list(parts));
}

}  // namespace wm::app
