#include "app/checkouts/result_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/lists/answer_reader.h"
#include "app/words/answer_parts.h"
#include "app/words/words.h"
#include "core/sheet/typed.h"

namespace wm::app {
namespace {

struct Checkouts {
  Q_DECLARE_TR_FUNCTIONS(Checkouts)
};

/// "5", "5 and 7", "5, 7 and 9"
QString numbers(const std::vector<std::size_t>& lines) {
  QStringList words;
  for (std::size_t line : lines) words << QString::number(line + 1);
  if (words.size() < 2) return words.value(0);
  return Checkouts::tr("%1 and %2", "the last two of a list")
      .arg(words.mid(0, words.size() - 1).join(", "), words.back());
}

QString sentence(Session& session, const PersonId& person, const TargetName& target) {
  Decider& decider = session.decider(std::nullopt);
  const auto conditions = conditions_of(decider.in_force(session.now()), target);
  const PersonId who = session.joined(person);
  return standing_sentence(target, decider.standing(who, target, session.now()), conditions,
                           restricted_now(session, person, target), answer_reader(session, person));
}

enum class Went { unknown, well, to_practise };

/// By its measure first, as the result goes: a piece out of its tolerance is not made well, however it was
/// marked, and one within it is, where nobody marked it.
Went went(const SheetLine& line, Mark first, Mark second, const MaybeMeasured& measured) {
  const bool told = line.measure && measured && !too_coarse(*line.measure, *measured);
  if (told && judge(*line.measure, *measured).verdict != Verdict::within) return Went::to_practise;
  if (first == Mark::none) return told ? Went::well : Went::unknown;
  const bool shown = first == Mark::shown || (first == Mark::shown_when_asked && second == Mark::shown);
  return shown ? Went::well : Went::to_practise;
}

}  // namespace

QString outcome_words(Outcome outcome) {
  switch (outcome) {
    case Outcome::passed:
      return Checkouts::tr("passed");
    case Outcome::failed:
      return Checkouts::tr("failed");
    case Outcome::stopped:
      return Checkouts::tr("stopped");
  }
  return {};
}

QString result_words(const SheetResult& result) {
  QStringList said;
  switch (result.suggested) {
    case Suggested::passed:
      said << Checkouts::tr("Suggested: passed.");
      break;
    case Suggested::failed:
      said << Checkouts::tr("Suggested: failed. Critical and not shown: line %1.")
                  .arg(numbers(result.critical_missed));
      break;
    case Suggested::not_finished:
      said << Checkouts::tr("Not finished.");
      break;
  }
  if (!result.unmarked.empty())
    said << (result.unmarked.size() == 1
                 ? Checkouts::tr("Line %1 is still to be marked.").arg(numbers(result.unmarked))
                 : Checkouts::tr("%1 lines are still to be marked.").arg(result.unmarked.size()));
  if (!result.to_measure.empty())
    said << (result.to_measure.size() == 1
                 ? Checkouts::tr("Line %1 is still to be measured.").arg(numbers(result.to_measure))
                 : Checkouts::tr("Lines %1 are still to be measured.").arg(numbers(result.to_measure)));
  if (!result.show_again.empty())
    said << Checkouts::tr("Line %1 must be shown again, unasked, before a pass.")
                .arg(numbers(result.show_again));
  if (!result.missed.empty())
    said << Checkouts::tr("Line %1 was not shown: note it, or restrict.").arg(numbers(result.missed));
  return said.join(' ');
}

Rungs rungs_on(Session& session, const PersonId& person, const TargetName& target) {
  Rungs out;
  Decider& decider = session.decider(std::nullopt);
  const Rulebook* rulebook = decider.in_force(session.now());
  if (rulebook == nullptr) return out;
  for (const TargetName& each : targets_of(*rulebook))
    if (class_of(each) == class_of(target)) out[each] = decider.rung(person, each, session.now());
  return out;
}

QString changed_words(Session& session, const PersonId& person, const TargetName& target,
                      const Rungs& before) {
  QStringList said;
  const Rungs now = rungs_on(session, person, target);
  for (const auto& [each, rung] : now) {
    const auto was = before.find(each);
    if (was == before.end() || was->second != rung) said << sentence(session, person, each);
  }
  const TargetName any = now.contains(target) || now.empty() ? target : now.begin()->first;
  if (said.isEmpty()) said << Checkouts::tr("Nothing changes: %1").arg(sentence(session, person, any));
  return said.join('\n');
}

QString practise_words(const Sheet& sheet, const db::SheetMarks& marked, Outcome outcome) {
  QStringList lines;
  std::size_t well = 0;
  const auto all = lines_of(sheet);
  const auto measured = by_line(sheet, marked.measured);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Mark first = i < marked.marks.size() ? marked.marks[i] : Mark::none;
    const Mark second = i < marked.again.size() ? marked.again[i] : Mark::none;
    const auto how = went(*all[i], first, second, measured[i]);
    well += how == Went::well;
    if (how == Went::to_practise)
      lines << Checkouts::tr("%1 (line %2)", "a line's words, its number")
                   .arg(QString::fromStdString(all[i]->text))
                   .arg(i + 1);
  }
  QStringList said;
  said << (outcome == Outcome::stopped ? Checkouts::tr("It was stopped, and goes on another time.")
                                       : Checkouts::tr("Not this time, and there is a next one."));
  if (well > 0) said << Checkouts::tr("Shown well: %1 of %2 lines.").arg(well).arg(all.size());
  if (!lines.isEmpty())
    said << Checkouts::tr("Worth practising, with somebody beside: %1.")
                .arg(lines.join(Checkouts::tr("; ", "between lines of a sheet")));
  return said.join(' ');
}

QString in_hand_words(const Session& session, const db::OpenSheet& open) {
  const auto day = [&](Instant at) { return long_day(at, session.zone()); };
  QStringList said;
  said << (session.zone().day(open.since) == session.zone().day(open.last_marked)
               ? Checkouts::tr("In hand since %1, marked by %2; every mark is in the shop's store.")
                     .arg(day(open.since), name_of(session, open.marked_by))
               : Checkouts::tr(
                     "In hand since %1, marked last on %2 by %3; every mark is in the shop's store.")
                     .arg(day(open.since), day(open.last_marked), name_of(session, open.marked_by)));
  if (open.put_by)
    said << (open.note.empty() ? Checkouts::tr("Put by on %1.").arg(day(*open.put_by))
                               : Checkouts::tr("Put by on %1: %2")
                                     .arg(day(*open.put_by), QString::fromStdString(open.note)));
  return said.join(' ');
}

std::vector<std::string> restrictions_in(const QString& text) {
  std::vector<std::string> out;
  for (const QString& part : text.split(';'))
    if (!part.trimmed().isEmpty()) out.push_back(part.simplified().toStdString());
  return out;
}

}  // namespace wm::app
