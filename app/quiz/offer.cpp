#include "app/quiz/offer.h"

#include <algorithm>
#include <map>
#include <set>

#include "app/desk/next_step.h"
#include "app/diary/bookings.h"
#include "app/lists/answer_reader.h"
#include "app/quiz/banks.h"
#include "app/quiz/sat_attempt.h"
#include "app/quiz/tr.h"
#include "app/words/counted.h"
#include "app/words/need_detail.h"
#include "app/words/need_words.h"
#include "app/words/words.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

/// What the gates of one machine say of one quiz, or of all machines that ask for it.
struct Wanted {
  std::vector<NeedQuiz> rules;  // none twice
  bool needed = false;
  int revision_needed = 0;
  QString stands;                            // the last attempt, and how long it counts
  std::optional<std::set<QString>> lessons;  // missing wherever the quiz is asked for

  void add(const Reason& reason, bool due, const AnswerReader& reader) {
    const NeedQuiz& rule = std::get<NeedQuiz>(reason.need.need);
    if (std::find(rules.begin(), rules.end(), rule) == rules.end()) rules.push_back(rule);
    needed = needed || due || !reason.holds;
    revision_needed = std::max(revision_needed, reason.revision_needed);
    stands = NeedDetail{reader}.of(reason);
  }
};

/// The quizzes and missing lessons of one machine's gates.
struct OnMachine {
  std::vector<std::pair<const Reason*, bool>> quizzes;  // and whether its gate is due
  std::set<QString> lessons;

  /// `sure`: nothing else would do in its place.
  void look(const Reason& reason, bool due, bool sure) {
    if (std::holds_alternative<NeedQuiz>(reason.need.need)) quizzes.emplace_back(&reason, due);
    if (std::holds_alternative<NeedLesson>(reason.need.need) && !reason.holds && sure)
      lessons.insert(need_phrase(reason));
    const bool all = std::holds_alternative<NeedAllOf>(reason.need.need);
    for (const Reason& part : reason.of) look(part, due, sure && all);
  }
};

bool asks_for(const StandingAnswer& answer, const std::string& quiz) {
  OnMachine here;
  for (const GateAnswer& gate : answer.gates) here.look(gate.reason, false, true);
  return std::any_of(here.quizzes.begin(), here.quizzes.end(), [&](const auto& asked) {
    return std::get<NeedQuiz>(asked.first->need.need).quiz == quiz;
  });
}

class Offers {
 public:
  Offers(Session& session, const PersonId& person)
      : session_(session),
        decider_(session.decider(std::nullopt)),
        person_(session.store().joined(person)),
        reader_(answer_reader(session, person)) {
    reader_.now = session.now();
    for (const TargetName& target : decider_.targets()) look(target);
  }

  std::vector<QuizOffer> all() {
    std::vector<QuizOffer> offers;
    for (const auto& [quiz, wanted] : wanted_) offers.push_back(offer(quiz, wanted));
    std::stable_sort(offers.begin(), offers.end(),
                     [](const QuizOffer& a, const QuizOffer& b) { return a.needed && !b.needed; });
    return offers;
  }
  std::optional<QuizOffer> one(const std::string& quiz) {
    const auto found = wanted_.find(quiz);
    return found == wanted_.end() ? std::nullopt : std::optional(offer(quiz, found->second));
  }

 private:
  void look(const TargetName& target) {
    const StandingAnswer answer = decider_.standing(person_, target, session_.now());
    OnMachine here;
    for (const GateAnswer& gate : answer.gates)
      here.look(gate.reason, gate.state == GateState::in_grace, true);
    for (const auto& [reason, due] : here.quizzes) {
      Wanted& wanted = wanted_[std::get<NeedQuiz>(reason->need.need).quiz];
      wanted.add(*reason, due, reader_);
      if (!wanted.lessons) wanted.lessons = here.lessons;
      std::erase_if(*wanted.lessons, [&](const QString& lesson) { return !here.lessons.contains(lesson); });
    }
  }

  QuizOffer offer(const std::string& quiz, const Wanted& wanted) {
    QuizOffer made;
    made.quiz = quiz;
    made.needed = wanted.needed;
    made.pass_percent = 0;
    for (const NeedQuiz& rule : wanted.rules)
      made.pass_percent = std::max(made.pass_percent, rule.pass_percent);
    const auto bank = bank_in_force(session_, quiz);
    if (bank) {
      made.languages = bank->bank.languages;
      tell(made, bank->bank);
    }
    tell_rules(made, wanted);
    if (!wanted.stands.isEmpty()) made.told.emplace_back(QuizWords::tr("How it stands"), wanted.stands);
    made.not_now = bank ? not_now(made, wanted, bank->bank) : no_bank();
    return made;
  }

  static void tell(QuizOffer& made, const teach::Bank& bank) {
    made.told.emplace_back(QuizWords::tr("Questions"), QString::number(teach::questions_a_paper(bank)));
    made.told.emplace_back(
        QuizWords::tr("Pass mark"),
        QuizWords::tr("%1 % of them right, and every critical one among these").arg(made.pass_percent));
    made.told.emplace_back(QuizWords::tr("Time"), bank.minutes ? minutes_words(*bank.minutes)
                                                               : QuizWords::tr("as long as it takes"));
  }

  /// Of several rules the one that lets least through.
  NextAttempt next(const Wanted& wanted, bool counting) const {
    NextAttempt latest{session_.now(), std::nullopt};
    for (NeedQuiz rule : wanted.rules) {
      if (rule.retry && !counting) rule.retry->most = rule.retry->in_hours = std::nullopt;
      const NextAttempt one = decider_.next_attempt(person_, rule, session_.now());
      latest.from = std::max(latest.from, one.from);
      if (one.left) latest.left = std::min(latest.left.value_or(*one.left), *one.left);
    }
    return latest;
  }

  static QString hours_words(int hours) {
    if (hours % 24 == 0 && hours > 24) return period_words({PeriodUnit::days, hours / 24});
    return hours == 1 ? QuizWords::tr("1 hour") : QuizWords::tr("%n hours", "", hours);
  }

  void tell_rules(QuizOffer& made, const Wanted& wanted) const {
    for (const NeedQuiz& rule : wanted.rules) {
      if (!rule.retry) continue;
      if (rule.retry->most)
        made.told.emplace_back(
            QuizWords::tr("Attempts"),
            QuizWords::tr("%1 that are not passed within %2", "how many, how long")
                .arg(QString::number(*rule.retry->most), hours_words(*rule.retry->in_hours)));
      if (rule.retry->wait_hours)
        made.told.emplace_back(
            QuizWords::tr("Waiting time"),
            QuizWords::tr("%1 after one that is not passed").arg(hours_words(*rule.retry->wait_hours)));
    }
    const auto left = next(wanted, true).left;
    made.told.emplace_back(QuizWords::tr("Attempts left"),
                           left ? QString::number(*left) : QuizWords::tr("any number"));
  }

  static QString no_bank() {
    return QuizWords::tr("No questions have been issued for this quiz yet. Please ask the desk.");
  }

  QString not_now(QuizOffer& made, const Wanted& wanted, const teach::Bank& bank) const {
    if (QString open = open_attempt(made); !open.isEmpty() || made.begun) return open;
    if (bank.revision < wanted.revision_needed)
      return QuizWords::tr(
                 "Revision %1 of this quiz is needed, and its questions have not been issued yet. "
                 "Please ask the desk.")
          .arg(wanted.revision_needed);
    const NextAttempt counting = next(wanted, true);
    if (wanted.lessons && !wanted.lessons->empty())
      return QuizWords::tr("First comes %1. Once that is entered the quiz can be tried, from %2 on.",
                           "a lesson, a day")
          .arg(*wanted.lessons->begin(), reader_.from(counting.from));
    if (counting.from <= session_.now()) return {};
    const Instant waited = next(wanted, false).from;
    return counting.from > waited
               ? QuizWords::tr("No attempt is left for now. The next one counts from %1 on.")
                     .arg(reader_.from(counting.from))
               : QuizWords::tr(
                     "The last attempt was not passed and the waiting time is not over. The next one "
                     "counts from %1 on.")
                     .arg(reader_.from(counting.from));
  }

  /// An attempt that was begun and never handed in. While its time lasts its questions come again; after that
  /// nothing is begun beside it: whoever pulled a plug would have seen one paper for nothing, and answers
  /// that still lie on another computer would be lost.
  QString open_attempt(QuizOffer& made) const {
    const db::Entry* open = nullptr;
    for (const db::Entry* entry : session_.store().of_kind("attempt_begun")) {
      const auto* begun = db::as<db::AttemptBegun>(entry->fact);
      if (!entry->voided && begun->bank == made.quiz && session_.store().joined(begun->person) == person_)
        open = entry;
    }
    if (open == nullptr || handed_in(session_, open->id)) return {};
    const auto* begun = db::as<db::AttemptBegun>(open->fact);
    const auto bank = issued_bank(session_, begun->bank, begun->revision);
    const bool lasts =
        bank && (!bank->bank.minutes || session_.now() < open->at + std::int64_t{*bank->bank.minutes} * 60);
    if (!lasts)
      return QuizWords::tr(
                 "This quiz was begun on %1 at %2 and never handed in. Please go on at the computer "
                 "where it was begun, or ask a manager to strike that out; then it can be tried, from "
                 "today on.",
                 "day, time")
          .arg(reader_.day(open->at), clock_time(open->at, session_.zone()));
    made.begun = open->id;
    made.languages = {begun->language};
    return {};
  }

  Session& session_;
  Decider& decider_;
  PersonId person_;
  AnswerReader reader_;
  std::map<std::string, Wanted> wanted_;
};

}  // namespace

std::vector<QuizOffer> quiz_offers(Session& session, const PersonId& person) {
  return Offers(session, person).all();
}

std::optional<QuizOffer> quiz_offer(Session& session, const PersonId& person, const std::string& quiz) {
  return Offers(session, person).one(quiz);
}

std::vector<TargetName> targets_asking(Session& session, const PersonId& person, const std::string& quiz) {
  Decider& decider = session.decider(std::nullopt);
  std::vector<TargetName> asking;
  for (const TargetName& target : decider.targets())
    if (asks_for(decider.standing(person, target, session.now()), quiz)) asking.push_back(target);
  return asking;
}

std::vector<TargetName> one_on_ones_ready(Session& session, const PersonId& member, const std::string& quiz) {
  const PersonId person = session.store().joined(member);
  Decider& decider = session.decider(std::nullopt);
  std::set<std::string, std::less<>> asked;
  for (const WaitingLine& line : waiting(session))
    if (session.store().joined(line.waiting.person) == person) asked.emplace(class_of(line.waiting.target));
  for (const BookingLine& line : bookings(session, {session.now(), last_instant}))
    if (session.store().joined(line.booking.person) == person) asked.emplace(class_of(line.booking.target));
  std::vector<TargetName> ready;
  for (const TargetName& target : targets_asking(session, person, quiz)) {
    const StandingAnswer answer = decider.standing(person, target, session.now());
    const bool open = answer.standing != Rung::independent && answer.suspensions.empty();
    if (!open || asked.contains(class_of(target))) continue;
    const Route route = decider.route(person, target, rung_above(answer.standing), session.now());
    if (next_on(route).step == NextStep::one_on_one) ready.push_back(target);
  }
  return ready;
}

}  // namespace wm::app
