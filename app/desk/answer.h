#pragma once
// Everything that the right side of the Desk says about one person and one machine, as words.
#include <QString>
#include <optional>
#include <vector>

#include "app/desk/shop_now.h"
#include "app/words/words.h"

namespace wm::app {

/// What comes next, in the order in which a shop does it.
enum class NextStep { nothing, manager, paper, lesson, quiz, one_on_one };

struct DeskAnswer {
  QString machine;  // heading
  Rung rung = Rung::barred;
  QString sentence;  // the largest words
  QString now;       // who is here that can supervise, or what stands in the way now
  QString needs_title;
  std::vector<NeedLine> needs;
  NextStep step = NextStep::nothing;
  QString next;      // what to do next, as a sentence
  std::string item;  // the paper, lesson or quiz that comes next
};

DeskAnswer desk_answer(Session& session, const ShopNow& shop, const PersonId& person,
                       const TargetName& target);

/// What the person is called in a sentence.
QString called(const std::optional<db::Person>& person);

}  // namespace wm::app
