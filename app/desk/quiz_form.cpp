#include "app/desk/quiz_form.h"

#include <QVBoxLayout>

#include "app/quiz/banks.h"
#include "app/quiz/offer.h"
#include "app/quiz/offered.h"
#include "app/quiz/screens.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

/// How long the Desk is taken to be covered where the quiz has no limit, and how late somebody may come.
constexpr std::int64_t usual_seconds = std::int64_t{60} * 60, late_seconds = std::int64_t{20} * 60;

}  // namespace

QuizForm::QuizForm(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      title_(role_label("large")),
      told_(role_label("body")),
      where_(role_label("body")),
      begin_(new KeyButton({}, Qt::CTRL | Qt::Key_Return, true)),
      later_(new KeyButton(tr("Offer it for later"), Qt::CTRL | Qt::Key_L)) {
  title_->setObjectName("quiz_title");
  where_->setObjectName("quiz_where");
  begin_->setObjectName("quiz_begin");
  later_->setObjectName("quiz_later");
  auto* leave = new KeyButton(tr("Leave it"), Qt::Key_Escape);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(20, 16, 20, 16);
  column->setSpacing(10);
  for (QWidget* widget : std::initializer_list<QWidget*>{title_, told_, where_, begin_, later_, leave})
    column->addWidget(widget);
  column->addStretch(1);
  connect(begin_, &KeyButton::clicked, this, &QuizForm::begin);
  connect(later_, &KeyButton::clicked, this, &QuizForm::put_off);
  connect(leave, &KeyButton::clicked, this, &QuizForm::closed);
}

void QuizForm::start(const ShopNow& shop, const PersonId& person, const std::string& quiz) {
  person_ = person;
  quiz_ = quiz;
  title_->setText(tr("%1 takes the quiz: %2", "who, which")
                      .arg(person_name(session_.store().person(person)), item_label(quiz)));
  QStringList told;
  if (const auto offer = quiz_offer(session_, person, quiz))
    for (const auto& [name, words] : offer->told) told << tr("%1: %2", "what, how much").arg(name, words);
  told_->setText(told.join('\n'));
  const bool other = second_screen(*this) != nullptr;
  const QString needed = other ? QString() : needed_for(shop);
  where_->setText(other ? tr("It opens over the whole of the second screen.")
                  : needed.isEmpty()
                      ? tr("There is no second screen: it opens over the Desk, and nobody sits "
                           "here any more. The desk's PIN leads back.")
                      : needed);
  begin_->say(other ? tr("Start it on the second screen") : tr("Start it on this screen"));
  begin_->setVisible(needed.isEmpty());
  setFocusProxy(begin_->isVisibleTo(this) ? begin_ : later_);
}

QString QuizForm::needed_for(const ShopNow& shop) const {
  const auto bank = bank_in_force(session_, quiz_);
  const std::int64_t lasts =
      bank && bank->bank.minutes ? std::int64_t{*bank->bank.minutes} * 60 : usual_seconds;
  const Instant now = session_.now();
  for (const Due& due : shop.due) {
    const bool gone_by = due.turnout && (*due.turnout == db::Turnout::not_come || due.booking.from <= now);
    const bool soon = due.booking.from <= now + lasts && now < due.booking.from + late_seconds;
    if (gone_by || !soon || due.booking.person == person_) continue;
    return tr("There is no second screen, and the Desk is needed before the quiz would end: %1 is due at %2.")
        .arg(person_name(session_.store().person(due.booking.person)),
             clock_time(due.booking.from, session_.zone()));
  }
  return {};
}

void QuizForm::begin() {
  Place quiz;
  quiz.page = "quiz";
  quiz.person = person_;
  quiz.item = quiz_;
  emit closed();
  emit go(quiz);
}

void QuizForm::put_off() {
  const auto kept = offer_later(session_, {person_, quiz_, session_.now()});
  emit tell(
      kept ? problem_sentence(*kept)
           : tr("Offered: the quiz stands under Tonight, and %1 can begin it at any quiz station with the "
                "member's number.")
                 .arg(person_name(session_.store().person(person_))));
  emit closed();
}

}  // namespace wm::app
