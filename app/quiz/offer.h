#pragma once
// Which quizzes are there for somebody, what is told before one begins, and why one can't be begun yet.
#include <QString>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "app/session.h"

namespace wm::app {

struct QuizOffer {
  std::string quiz;
  bool needed = false;     // a standing waits for it, or it is due
  int pass_percent = 100;  // the highest that the rulebook asks for
  std::vector<std::string> languages;
  /// What is told before it begins, a name and its words each: pass mark, time, attempts left …
  std::vector<std::pair<QString, QString>> told;
  /// Why it can't be begun, and the day from which it can be tried; empty: it can.
  QString not_now;
  /// Begun and not handed in, and still in its time: its questions come again.
  std::optional<RecordId> begun;
};

/// Those that the rulebook in force asks for, what is needed first. Waiting times and what is missing are
/// core/decide's answers.
std::vector<QuizOffer> quiz_offers(Session& session, const PersonId& person);
/// One of them; nothing where the rulebook does not ask for it.
std::optional<QuizOffer> quiz_offer(Session& session, const PersonId& person, const std::string& quiz);

/// Machines whose gates ask the person for the quiz.
std::vector<TargetName> targets_asking(Session& session, const PersonId& person, const std::string& quiz);
/// Those of them for which a one-on-one comes next and none has been asked for yet.
std::vector<TargetName> one_on_ones_ready(Session& session, const PersonId& person, const std::string& quiz);

}  // namespace wm::app
