#include "app/words/need_words.h"

#include "app/words/counted.h"
#include "app/words/labels.h"
#include "app/words/listing.h"
#include "app/words/standing_words.h"
#include "app/words/tr.h"

namespace wm::app {

namespace {

QString within(const std::optional<Period>& period) {
  return period ? Words::tr(" within %1", "a period").arg(period_words(*period)) : QString();
}

QString on_target(const std::optional<TargetName>& target) {
  return target ? Words::tr(" on %1", "a machine").arg(target_phrase(*target)) : QString();
}

QString revision_asked(const Reason& reason, RevisionRule rule) {
  if (rule == RevisionRule::any || reason.revision_needed == 0) return {};
  return Words::tr(", revision %1").arg(reason.revision_needed);
}

QString amount(const NeedPractice& n) {
  QStringList parts;
  if (n.minutes) parts << minutes_words(*n.minutes);
  if (n.sessions) parts << sessions_words(*n.sessions);
  return parts.join(Words::tr(" in ", "minutes in sessions"));
}

/// As a list has it.
struct Label {
  const Reason& reason;

  QString operator()(const NeedDocument& n) const {
    return Words::tr("Paper: %1").arg(item_label(n.document));
  }
  QString operator()(const NeedAge& n) const { return Words::tr("Not for people under %1").arg(n.years); }
  QString operator()(const NeedLesson& n) const {
    return Words::tr("Lesson: %1%2", "name, revision")
        .arg(item_label(n.lesson), revision_asked(reason, n.revision));
  }
  QString operator()(const NeedQuiz& n) const {
    return Words::tr("Quiz: %1%2, %3 % needed", "name, revision, percentage")
        .arg(item_label(n.quiz), revision_asked(reason, n.revision), QString::number(n.pass_percent));
  }
  QString operator()(const NeedCheckout& n) const {
    return Words::tr("Check-out: %1%2", "name, revision")
        .arg(item_label(n.checkout), revision_asked(reason, n.revision));
  }
  QString operator()(const NeedPractice& n) const {
    return Words::tr("Supervised practice%1: %2%3", "where, how much, within what time")
        .arg(on_target(n.target), amount(n), within(n.within));
  }
  QString operator()(const NeedRecentUse& n) const {
    return Words::tr("Used%1 %2 within %3", "where, how often, within what time")
        .arg(on_target(n.target), times_words(n.count), period_words(n.within));
  }
  QString operator()(const NeedStanding& n) const {
    return Words::tr("%1: %2", "a machine, how")
        .arg(target_label(n.target), asked_standing_words(n.at_least));
  }
  QString operator()(const NeedTierStanding& n) const {
    const QString how = asked_standing_words(n.at_least);
    if (!n.count) return Words::tr("Every machine of tier %1: %2").arg(QString::number(n.tier), how);
    const QString words = *n.count == 1 ? Words::tr("One machine of tier %1: %2")
                                        : Words::tr("%n machines of tier %1: %2", "", *n.count);
    return words.arg(QString::number(n.tier), how);
  }
  QString operator()(const NeedAllOf&) const { return Words::tr("All of these"); }
  QString operator()(const NeedAnyOf&) const { return Words::tr("One of these"); }
  QString operator()(const NeedSomeOf& n) const {
    return n.count == 1 ? Words::tr("At least one of these") : Words::tr("At least %n of these", "", n.count);
  }
};

/// Inside a sentence.
struct Phrase {
  const Reason& reason;

  QString operator()(const NeedDocument& n) const {
    return Words::tr("the paper “%1”").arg(item_label(n.document));
  }
  QString operator()(const NeedAge& n) const { return Words::tr("an age of %1 or more").arg(n.years); }
  QString operator()(const NeedLesson& n) const {
    return Words::tr("the lesson “%1”%2", "name, revision")
        .arg(item_label(n.lesson), revision_asked(reason, n.revision));
  }
  QString operator()(const NeedQuiz& n) const {
    return Words::tr("the quiz “%1”%2, with %3 % or more", "name, revision, percentage")
        .arg(item_label(n.quiz), revision_asked(reason, n.revision), QString::number(n.pass_percent));
  }
  QString operator()(const NeedCheckout& n) const {
    return Words::tr("the check-out “%1”%2", "name, revision")
        .arg(item_label(n.checkout), revision_asked(reason, n.revision));
  }
  QString operator()(const NeedPractice& n) const {
    return Words::tr("supervised practice%1, %2%3", "where, how much, within what time")
        .arg(on_target(n.target), amount(n), within(n.within));
  }
  QString operator()(const NeedRecentUse& n) const {
    return Words::tr("use%1 %2 within %3", "where, how often, within what time")
        .arg(on_target(n.target), times_words(n.count), period_words(n.within));
  }
  QString operator()(const NeedStanding& n) const {
    return Words::tr("leave to use %1 %2", "a machine, how")
        .arg(target_phrase(n.target), asked_standing_words(n.at_least));
  }
  QString operator()(const NeedTierStanding& n) const {
    const QString how = asked_standing_words(n.at_least);
    if (!n.count)
      return Words::tr("leave to use every machine of tier %1 %2").arg(QString::number(n.tier), how);
    const QString words = *n.count == 1 ? Words::tr("leave to use one machine of tier %1 %2")
                                        : Words::tr("leave to use %n machines of tier %1 %2", "", *n.count);
    return words.arg(QString::number(n.tier), how);
  }
  QString operator()(const NeedAllOf&) const { return Words::tr("all of these"); }
  QString operator()(const NeedAnyOf&) const { return Words::tr("one of these"); }
  QString operator()(const NeedSomeOf& n) const {
    return n.count == 1 ? Words::tr("at least one of these") : Words::tr("at least %n of these", "", n.count);
  }
};

}  // namespace

QString need_label(const Reason& reason) { return std::visit(Label{reason}, reason.need.need); }
QString need_phrase(const Reason& reason) { return std::visit(Phrase{reason}, reason.need.need); }

QString missing_phrase(const std::vector<Reason>& reasons, std::size_t most) {
  QStringList said;
  for (const Reason& reason : reasons) {
    if (static_cast<std::size_t>(said.size()) == most) break;
    QStringList parts;
    for (const Reason& part : reason.of) parts << missing_phrase({part}, 1);
    said << (parts.isEmpty() ? need_phrase(reason) : or_list(parts));
  }
  if (reasons.size() > most)
    said << Words::tr("%n more", "things that are missing", static_cast<int>(reasons.size() - most));
  return and_list(said);
}

}  // namespace wm::app
