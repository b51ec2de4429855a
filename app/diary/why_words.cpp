#include "app/diary/why_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/diary/bookings.h"
#include "app/words/need_words.h"
#include "app/words/words.h"
#include "core/diary/ready.h"

namespace wm::app {
namespace {

struct Diary {
  Q_DECLARE_TR_FUNCTIONS(Diary)
};

QString listed(const QStringList& names) {
  if (names.size() < 2) return names.value(0);
  return Diary::tr("%1 or %2", "the last two of a list")
      .arg(names.mid(0, names.size() - 1).join(", "), names.back());
}

/// Those who could give it when the days begin, the member left out: to practise they supervise, else assess.
std::vector<PersonId> able_ones(Session& session, const SlotQuestion& question, const Wish& wish) {
  Decider& decider = session.decider(std::nullopt);
  std::vector<PersonId> able;
  if (wish.purpose != db::Purpose::practise)
    able = decider.assessors(wish.target, question.from);
  else
    for (const db::Person& each : session.store().people())
      if (session.joined(each.id) == each.id &&
          decider.able_to_supervise(each.id, wish.target, question.from))
        able.push_back(each.id);
  std::erase(able, question.person);
  return able;
}

/// Names of the first few.
QString names(const Session& session, const std::vector<PersonId>& people) {
  constexpr std::size_t most = 3;
  QStringList out;
  for (std::size_t i = 0; i < std::min(most, people.size()); ++i) out << name_of(session, people[i]);
  if (people.size() > most) out << Diary::tr("somebody else who is able to");
  return listed(out);
}

class NoneWords {
 public:
  NoneWords(Session& session, const SlotQuestion& question, const Wish& wish)
      : question_(question),
        purpose_(wish.purpose),
        target_(target_label(wish.target)),
        member_(called(session, question.person)),
        able_(able_ones(session, question, wish)),
        able_names_(names(session, able_)) {
    const StandingAnswer first =
        session.decider(std::nullopt).standing(question.person, wish.target, question.from);
    if (first.suspensions.empty())
      missing_ = missing_phrase(missing_for(first, is_check_out()), most_missing);
  }

  /// Ends the search where nothing else can matter.
  QString hopeless() const {
    if (question_.units.empty())
      return Diary::tr("The shop has no unit of this machine. A manager can add one on Machines.");
    if (able_.empty() && practises())
      return Diary::tr(
                 "Nobody else may supervise %1 now. A manager can appoint somebody who "
                 "works on it without a supervisor.")
          .arg(target_);
    if (able_.empty())
      return Diary::
          tr("Nobody else is able to assess %1 now. A manager can appoint somebody who works on it without a "
             "supervisor.")
              .arg(target_);
    return {};
  }

  QString obstacle(Fit fit) const {
    switch (fit) {
      case Fit::member_ready:
        if (says_missing())
          return (is_check_out()
                      ? Diary::tr("%1 is not ready for a check-out on %2 in these days; missing: %3.")
                      : Diary::tr("%1 may not yet work on %2 with a supervisor in these days; missing: %3."))
              .arg(member_, target_, missing_);
        return (is_check_out()
                    ? Diary::tr("%1 is not ready for a check-out on %2 in these days: the Desk says what is "
                                "missing.")
                    : Diary::tr("%1 may not yet work on %2 with a supervisor in these days: the Desk says "
                                "what is missing."))
            .arg(member_, target_);
      case Fit::assessor_able:
        return practises() ? Diary::tr("Nobody with hours in the diary is able to supervise it.")
                           : Diary::tr("Nobody with hours in the diary is able to assess it.");
      case Fit::assessor_in:
        return practises() ? Diary::tr("Nobody who supervises it has hours in these days.")
                           : Diary::tr("Nobody who assesses has hours in these days.");
      case Fit::two_assessors:
        return Diary::
            tr("A check-out on %1 is witnessed by two assessors at once, and in these days no two are in, "
               "free and able to assess it at the same time.")
                .arg(target_);
      case Fit::together:
        return Diary::tr(
                   "Nobody who assesses may be booked with %1 in these days: somebody under 18 is booked "
                   "only while "
                   "two adults are in, and in some tiers who taught somebody does not check them out.")
            .arg(member_);
      case Fit::takes_on:
        return Diary::tr("Every assessor has as much as they take on.");
      case Fit::unit_in_service:
        return Diary::tr("Every unit is out of service.");
      case Fit::member_free:
        return Diary::tr("%1 is booked throughout.").arg(member_);
      case Fit::assessor_free:
        return Diary::tr("Every assessor is booked throughout.");
      case Fit::unit_free:
        return Diary::tr("Every unit is booked throughout.");
    }
    return {};
  }

  QString help(Fit fit) const {
    switch (fit) {
      case Fit::member_ready:
        return is_check_out() ? Diary::tr("what %1 still needs for a check-out").arg(member_)
                              : Diary::tr("what %1 still needs to work with a supervisor").arg(member_);
      case Fit::assessor_able:
        return practises() ? Diary::tr("somebody able to supervise it among those who are in")
                           : Diary::tr("somebody able to assess it among those who are in");
      case Fit::assessor_in:
        return Diary::tr("more hours of %1").arg(able_names_);
      case Fit::two_assessors:
        return Diary::tr("a second assessor at a time at which there is one: more hours of %1")
            .arg(able_names_);
      case Fit::together:
        return Diary::tr("another adult in the building, or another assessor than who taught %1")
            .arg(member_);
      case Fit::takes_on:
        return Diary::tr("more that %1 takes on").arg(able_names_);
      case Fit::unit_in_service:
        return Diary::tr("a unit back in service");
      case Fit::member_free:
        return Diary::tr("moving another booking of %1").arg(member_);
      case Fit::assessor_free:
        return Diary::tr("moving another booking of %1").arg(able_names_);
      case Fit::unit_free:
        return Diary::tr("moving another booking on this machine");
    }
    return {};
  }

  /// What it is that the member still needs, when the days begin.
  bool says_missing() const { return !missing_.isEmpty(); }

 private:
  static constexpr std::size_t most_missing = 3;

  bool practises() const { return purpose_ == db::Purpose::practise; }
  bool is_check_out() const { return purpose_ == db::Purpose::check_out; }

  const SlotQuestion& question_;
  db::Purpose purpose_;
  QString target_, member_, missing_;
  std::vector<PersonId> able_;
  QString able_names_;
};

}  // namespace

QString fit_words(const Session& session, const SlotQuestion& question, const Slot& slot) {
  const QString units = slot.units > 1 ? Diary::tr("%1 units free").arg(slot.units) : Diary::tr("unit free");
  const QString who = slot.second.empty()
                          ? called(session, slot.assessor)
                          : Diary::tr("%1 and %2", "two assessors")
                                .arg(called(session, slot.assessor), called(session, slot.second));
  return Diary::tr("fits: %1 ready, %2 able and in %3, %4", "member, assessor, hours, units")
      .arg(called(session, question.person), who, time_span(slot.assessor_in, session.zone()), units);
}

QString none_words(Session& session, const SlotQuestion& question, const Wish& wish) {
  const NoneWords words(session, question, wish);
  if (QString end = words.hopeless(); !end.isEmpty()) return end;
  const WhyNone why = why_none(question);
  QStringList sentences, helps;
  for (Fit fit : why.never) sentences << words.obstacle(fit);
  const bool named =
      words.says_missing() && std::ranges::find(why.never, Fit::member_ready) != why.never.end();
  for (Fit fit : why.would_help)
    if (!named || fit != Fit::member_ready) helps << words.help(fit);
  if (sentences.isEmpty())
    sentences << Diary::tr("Member, assessor and unit are never free at the same time.");
  if (helps.isEmpty() && named) return sentences.join(' ');
  if (helps.isEmpty())
    sentences
        << Diary::tr(
               "More than one thing stands in the way; look at later days, or put %1 on the waiting list.")
               .arg(called(session, question.person));
  else
    sentences << Diary::tr("What would help: %1.").arg(listed(helps));
  return sentences.join(' ');
}

}  // namespace wm::app
