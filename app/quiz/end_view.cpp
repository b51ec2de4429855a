#include "app/quiz/end_view.h"

#include <QScrollBar>

#include "app/lists/answer_reader.h"
#include "app/quiz/offer.h"
#include "app/quiz/tr.h"
#include "app/words/standing_words.h"
#include "app/words/words.h"

namespace wm::app {

AttemptText::AttemptText(QWidget* parent) : QTextBrowser(parent) {
  setOpenLinks(false);
  setFrameShape(QFrame::NoFrame);
}

void AttemptText::show_attempt(const SatAttempt& sat, HowMuch shown, const std::string& language, int size) {
  std::map<QString, QImage> pictures;
  const QString html = attempt_html(sat, shown, language, size, pictures);
  clear();
  for (const auto& [name, image] : pictures)
    document()->addResource(QTextDocument::ImageResource, QUrl(name), image);
  setHtml(html);
  verticalScrollBar()->setValue(0);
}

EndView::EndView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      result_(station_label(30, true)),
      standings_(station_label(20)),
      told_(station_label(18)),
      text_(new AttemptText),
      asks_(new QWidget),
      asks_column_(new QVBoxLayout(asks_)),
      done_(new StationButton(tr("Done"), Qt::CTRL | Qt::Key_Return, true)) {
  result_->setObjectName("result");
  standings_->setObjectName("standings");
  told_->setObjectName("asked");
  text_->setObjectName("reasons");
  done_->setObjectName("done");
  asks_column_->setContentsMargins(0, 0, 0, 0);
  auto* side = new QVBoxLayout;
  side->setSpacing(12);
  side->addWidget(standings_);
  side->addWidget(asks_);
  side->addWidget(told_);
  side->addStretch(1);
  side->addWidget(done_, 0, Qt::AlignRight);
  auto* row = new QHBoxLayout;
  row->setSpacing(36);
  row->addWidget(text_, 3);
  row->addLayout(side, 2);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(56, 32, 56, 32);
  column->setSpacing(18);
  column->addWidget(result_);
  column->addLayout(row, 1);
  connect(done_, &QPushButton::clicked, this, &EndView::done);
}

/// By the rulebook, which asks for more or less than the bank does.
QString EndView::result(const SatAttempt& sat) const {
  const QString marks = marks_words(sat.marking.correct, sat.marking.total, sat.marking.critical_missed);
  const auto offer = quiz_offer(session_, sat.person, sat.bank.bank.name);
  const int pass = offer ? offer->pass_percent : sat.bank.bank.pass_percent;
  const bool passed =
      100 * sat.marking.correct >= pass * sat.marking.total && sat.marking.critical_missed == 0;
  return passed ? tr("Passed: %1.", "marks").arg(marks)
                : tr("Not passed yet: %1; %2 % are needed.", "marks, a percentage").arg(marks).arg(pass);
}

/// What the person may use now of the machines that ask for the quiz; and when it can be tried again.
QStringList EndView::standings(const SatAttempt& sat) const {
  QStringList said;
  const AnswerReader reader = answer_reader(session_, sat.person);
  const Restrictions left_open = restrictions(session_, std::nullopt);
  for (const TargetName& target : targets_asking(session_, sat.person, sat.bank.bank.name)) {
    Decider& decider = session_.decider(std::nullopt);
    const Rung rung = decider.rung(sat.person, target, session_.now());
    const QStringList open = left_open.on(decider, reader.person, target, session_.now());
    QString how = standing_words(rung);
    if (!open.isEmpty()) how = tr("%1, %2", "how, what is restricted").arg(how, restricted_words(open));
    said << tr("%1: %2", "a machine, how").arg(target_label(target), how);
  }
  const auto offer = quiz_offer(session_, sat.person, sat.bank.bank.name);
  if (offer && !offer->not_now.isEmpty() && offer->needed) said << offer->not_now;
  return said;
}

void EndView::offer_one_on_ones(const SatAttempt& sat, int size) {
  for (QWidget* old : asks_->findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
    old->hide();
    old->deleteLater();
  }
  int digit = 1;
  for (const TargetName& target : one_on_ones_ready(session_, sat.person, sat.bank.bank.name)) {
    auto* ask = new StationButton(tr("Ask for the one-on-one: %1", "a machine").arg(target_label(target)),
                                  digit <= 9 ? QKeySequence(Qt::CTRL | (Qt::Key_0 + digit)) : QKeySequence());
    ask->setObjectName(QString("ask_%1").arg(digit++));
    ask->set_size(size);
    asks_column_->addWidget(ask);
    connect(ask, &QPushButton::clicked, this, [this, target, ask] {
      ask->setEnabled(false);
      ask_for(target);
    });
  }
}

void EndView::ask_for(const TargetName& target) {
  const auto done = session_.commit_at_station(person_, db::EnterShopFact{db::Waiting{person_, target}});
  told_->setText(
      done ? tr("You are on the waiting list for %1. The desk confirms the time.").arg(target_phrase(target))
           : problem_sentence(done.error()));
}

void EndView::show_end(const SatAttempt& sat, bool large, const QString& why) {
  const StationType type = station_type(large);
  person_ = sat.person;
  result_->setFont(sized(type.question, true));
  standings_->setFont(sized(type.small + 2));
  told_->setFont(sized(type.small + 2, true));
  done_->set_size(type.body);
  result_->setText((why + ' ' + result(sat)).trimmed());
  standings_->setText(standings(sat).join('\n'));
  told_->clear();
  text_->show_attempt(sat, HowMuch::afterwards, sat.attempt.language, type.small + 3);
  offer_one_on_ones(sat, type.small);
  done_->setFocus();
}

}  // namespace wm::app
