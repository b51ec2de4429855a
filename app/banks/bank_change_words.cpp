#include "app/banks/bank_change_words.h"

#include <QCoreApplication>

#include "app/lessons/lesson_needs.h"
#include "app/words/listing.h"

namespace wm::app {
namespace {

struct BankChangeWords {
  Q_DECLARE_TR_FUNCTIONS(wm::app::BankChangeWords)
};

constexpr qsizetype most_days = 4;

QString id_list(const std::vector<std::string>& ids) {
  QStringList words;
  for (const std::string& id : ids) words << QString::fromStdString(id);
  return and_list(words);
}

}  // namespace

QStringList bank_change_sentences(const teach::BankChanges& changes) {
  QStringList said;
  const auto say = [&said](const std::vector<std::string>& ids, const QString& sentence) {
    if (!ids.empty()) said << sentence.arg(id_list(ids));
  };
  say(changes.added, BankChangeWords::tr("New: %1.", "questions"));
  say(changes.changed, BankChangeWords::tr("Changed: %1.", "questions"));
  say(changes.removed, BankChangeWords::tr("No longer asked: %1.", "questions"));
  if (changes.pass_percent) said << BankChangeWords::tr("Another share passes.");
  if (changes.minutes) said << BankChangeWords::tr("The time is another one.");
  if (changes.draws) said << BankChangeWords::tr("Papers are drawn otherwise.");
  if (changes.languages) said << BankChangeWords::tr("It is worded in other languages.");
  if (said.isEmpty() && changes.uncounted.empty()) said << BankChangeWords::tr("Nothing has changed.");
  return said;
}

QStringList sit_again_sentences(Session& session, const std::string& bank, int revision, Instant from) {
  const Record supposed{"supposed", from, from, {}, Publish{bank, revision}};
  const std::vector<Shift> shifts = session.current().if_taken(supposed);
  if (shifts.empty())
    return {BankChangeWords::tr("Nobody's standing would change: nobody has to sit it again.")};
  const QStringList by_day = again_words(shifts, session);
  QStringList said{BankChangeWords::tr("Whoever has not sat it again by then falls back:")};
  said += by_day.mid(0, most_days);
  if (by_day.size() > most_days)
    said << BankChangeWords::tr("And on %1 days more.").arg(by_day.size() - most_days);
  return said;
}

}  // namespace wm::app
