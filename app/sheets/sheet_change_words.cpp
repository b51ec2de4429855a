#include "app/sheets/sheet_change_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/lessons/lesson_needs.h"
#include "app/words/listing.h"
#include "app/words/words.h"
#include "core/sheet/choose.h"

namespace wm::app {
namespace {

struct SheetChangeWords {
  Q_DECLARE_TR_FUNCTIONS(wm::app::SheetChangeWords)
};

constexpr qsizetype most_sheet_days = 4;

QString line_list(const std::vector<std::size_t>& lines) {
  QStringList numbers;
  for (const std::size_t line : lines) numbers << QString::number(line + 1);
  return and_list(numbers);
}

}  // namespace

QStringList sheet_change_sentences(const Sheet& before, const Sheet& after) {
  const SheetChanges found = changes(before, after);
  QStringList said;
  const auto say = [&said](const std::vector<std::size_t>& lines, const QString& sentence) {
    if (!lines.empty()) said << sentence.arg(line_list(lines));
  };
  say(found.added, SheetChangeWords::tr("New lines: %1."));
  say(found.changed, SheetChangeWords::tr("Lines that ask otherwise: %1."));
  say(found.eased, SheetChangeWords::tr("Lines that are no longer critical: %1."));
  say(found.removed, SheetChangeWords::tr("Lines of revision %2 that are no longer asked: %1.")
                         .arg("%1", QString::number(before.revision)));
  if (found.order) said << SheetChangeWords::tr("Lines stand in another order or section.");
  if (found.machine)
    said << SheetChangeWords::tr("It is for another machine class or check-out than before.");
  if (said.isEmpty()) said << SheetChangeWords::tr("No line has changed.");
  return said;
}

QStringList unused_sentences(Session& session, const Sheet& sheet) {
  const Rulebook* rulebook = session.decider().in_force(session.present());
  if (!rulebook || !find_class(*rulebook, sheet.machine_class))
    return {SheetChangeWords::tr("The rules in force have no machine class %1: nobody is checked out on this "
                                 "sheet before they do.")
                .arg(QString::fromStdString(sheet.machine_class))};
  const bool asked = std::ranges::any_of(targets_of(*rulebook), [&](const TargetName& target) {
    const auto names = checkouts_asked(*rulebook, target);
    return class_of(target) == sheet.machine_class && std::ranges::find(names, sheet.checkout) != names.end();
  });
  if (asked) return {};
  return {
      SheetChangeWords::tr("The rules in force ask for no check-out %1 on this machine: nobody is checked "
                           "out on this sheet before they do.")
          .arg(QString::fromStdString(sheet.checkout))};
}

QStringList check_out_again_sentences(Session& session, const Sheet& sheet, Instant from) {
  const std::vector<Shift> shifts =
      session.current().if_taken({"supposed", from, from, {}, Publish{sheet.checkout, sheet.revision}});
  if (shifts.empty())
    return {SheetChangeWords::tr("Nobody's standing would change: nobody has to be checked out again.")};
  const QStringList by_day = again_words(shifts, session);
  QStringList said{SheetChangeWords::tr("Whoever has not been checked out again by then falls back:")};
  said += by_day.mid(0, most_sheet_days);
  if (by_day.size() > most_sheet_days)
    said << SheetChangeWords::tr("And on %1 days more.").arg(by_day.size() - most_sheet_days);
  return said;
}

}  // namespace wm::app
