#include "app/quiz/lesson_offer.h"

#include <algorithm>
#include <map>

#include "app/desk/items.h"
#include "app/lists/answer_reader.h"
#include "app/quiz/tr.h"
#include "app/words/need_detail.h"

namespace wm::app {
namespace {

class LessonOffers {
 public:
  LessonOffers(Session& session, const PersonId& person)
      : session_(session), reader_(answer_reader(session, person)) {
    reader_.now = session.now();
    Decider& decider = session.decider(std::nullopt);
    for (const TargetName& target : decider.targets())
      for (const GateAnswer& gate : decider.standing(person, target, session.now()).gates)
        look(gate.reason, gate.state == GateState::in_grace);
  }

  std::vector<LessonOffer> all() {
    std::vector<LessonOffer> offers;
    for (auto& [lesson, offer] : offers_) offers.push_back(std::move(offer));
    std::stable_sort(offers.begin(), offers.end(),
                     [](const LessonOffer& a, const LessonOffer& b) { return a.needed && !b.needed; });
    return offers;
  }

 private:
  void look(const Reason& reason, bool due) {
    if (const auto* lesson = std::get_if<NeedLesson>(&reason.need.need)) take(lesson->lesson, reason, due);
    for (const Reason& part : reason.of) look(part, due);
  }

  void take(const std::string& lesson, const Reason& reason, bool due) {
    const auto [there, added] = offers_.try_emplace(lesson);
    LessonOffer& offer = there->second;
    if (added) {
      offer.lesson = lesson;
      offer.text = lesson_text(session_, lesson);
      offer.not_here = not_here(offer);
    }
    if (added || !reason.holds) offer.stands = NeedDetail{reader_}.of(reason);
    offer.needed = offer.needed || due || !reason.holds;
  }

  QString not_here(const LessonOffer& offer) const {
    if (!offer.text) return QuizWords::tr("This lesson is taught by staff. Please ask the desk.");
    if (offer.text->work->revision >= published_revision(session_, offer.lesson)) return {};
    return QuizWords::tr("The revision of this lesson that counts is taught by staff. Please ask the desk.");
  }

  Session& session_;
  AnswerReader reader_;
  std::map<std::string, LessonOffer> offers_;
};

}  // namespace

std::vector<LessonOffer> lesson_offers(Session& session, const PersonId& person) {
  return LessonOffers(session, session.store().joined(person)).all();
}

Expected<db::Committed> enter_gone_through(Session& session, Lesson lesson) {
  lesson.person = session.store().joined(lesson.person);
  return session.commit_at_station(lesson.person, db::EnterFact{lesson});
}

}  // namespace wm::app
