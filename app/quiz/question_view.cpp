#include "app/quiz/question_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include "app/quiz/tr.h"
#include "app/words/counted.h"
#include "app/words/labels.h"

namespace wm::app {
namespace {

constexpr int square_side = 30, square_step = 36;

QString time_words(const Sitting& sitting) {
  const auto left = sitting.left();
  if (!left) return QuizWords::tr("No time limit");
  if (*left < 60) return QuizWords::tr("%1 s left", "seconds").arg(*left);
  return QuizWords::tr("%1 left", "so many minutes").arg(minutes_words(static_cast<int>((*left + 59) / 60)));
}

/// How it is answered, in a line above the answer.
struct HowTo {
  QString operator()(const teach::OneRight&) const { return QuizWords::tr("Choose one."); }
  QString operator()(const teach::SeveralRight&) const { return QuizWords::tr("Choose all that are right."); }
  QString operator()(const teach::InOrder&) const {
    return QuizWords::tr("Drag each step to its place, or move it with Ctrl and an arrow key.");
  }
  QString operator()(const teach::ANumber&) const { return {}; }
  QString operator()(const teach::APlace&) const {
    return QuizWords::tr("Point at it, or move the mark with the arrow keys.");
  }
};

}  // namespace

QuestionStrip::QuestionStrip(QWidget* parent) : QWidget(parent) {
  setObjectName("strip_of_questions");
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize QuestionStrip::sizeHint() const {
  const int in_a_row = std::max(1, (width() > square_step ? width() : 800) / square_step);
  const int rows = (static_cast<int>(squares_.size()) + in_a_row - 1) / in_a_row;
  return {in_a_row * square_step, std::max(1, rows) * (square_step + 6)};
}

void QuestionStrip::show_sitting(const Sitting& sitting) {
  squares_.clear();
  for (std::size_t i = 0; i < sitting.size(); ++i)
    squares_.push_back({sitting.answered(i), sitting.later(i)});
  at_ = sitting.at();
  setAccessibleName(QuizWords::tr("%1 of %2 questions are open, %3 to come back to")
                        .arg(sitting.open_count())
                        .arg(sitting.size())
                        .arg(sitting.later_count()));
  updateGeometry();
  update();
}

QRect QuestionStrip::square(std::size_t i) const {
  const int in_a_row = std::max(1, width() / square_step), n = static_cast<int>(i);
  return {(n % in_a_row) * square_step + 2, (n / in_a_row) * (square_step + 6) + 8, square_side, square_side};
}

void QuestionStrip::paintEvent(QPaintEvent*) {
  const Palette& p = wm::app::palette();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  for (std::size_t i = 0; i < squares_.size(); ++i) {
    const QRect box = square(i);
    painter.setPen(QPen(i == at_ ? p.text : p.quiet, i == at_ ? 3 : 1));
    painter.setBrush(squares_[i].answered ? p.full : p.paper);
    painter.drawRoundedRect(box, 4, 4);
    painter.setPen(squares_[i].answered ? p.paper : p.text);
    painter.setFont(sized(14, i == at_));
    painter.drawText(box, Qt::AlignCenter, QString::number(i + 1));
    if (squares_[i].later) painter.fillRect(QRect(box.left(), box.top() - 7, box.width(), 4), p.text);
  }
}

void QuestionStrip::mousePressEvent(QMouseEvent* event) {
  for (std::size_t i = 0; i < squares_.size(); ++i)
    if (square(i).contains(event->position().toPoint())) return emit chosen(i);
}

QuestionView::QuestionView(QuizRun& run, QWidget* parent)
    : QWidget(parent),
      run_(run),
      quiz_(station_label(StationType().small, true)),
      place_(station_label(StationType().small)),
      time_(station_label(StationType().small, true)),
      critical_(station_label(StationType().small)),
      words_(station_label(StationType().question, true)),
      beside_words_(station_label(StationType().question, true)),
      how_(station_label(StationType().small)),
      scroll_(new QScrollArea),
      strip_(new QuestionStrip),
      back_(new StationButton(tr("Back"), Qt::Key_PageUp)),
      later_(new StationButton(tr("Come back to this one"), Qt::Key_F6)),
      next_(new StationButton(tr("Next"), Qt::Key_PageDown, true)),
      hand_in_(new StationButton(tr("Hand in"), Qt::CTRL | Qt::Key_Return)),
      beside_(new StationButton({}, Qt::Key_F8)),
      large_(new StationButton(tr("Large type"), Qt::Key_F9)),
      leave_(new StationButton(tr("Leave…"), Qt::Key_Escape)) {
  words_->setObjectName("question");
  beside_words_->setObjectName("question_beside");
  place_->setObjectName("place_in_paper");
  time_->setObjectName("time_left");
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setFocusPolicy(Qt::NoFocus);
  auto* inside = new QWidget;
  body_ = new QVBoxLayout(inside);
  body_->setContentsMargins(0, 0, 12, 0);
  body_->setSpacing(18);
  auto* both = new QHBoxLayout;
  both->setSpacing(30);
  both->addWidget(words_, 1);
  both->addWidget(beside_words_, 1);
  body_->addLayout(both);
  body_->addWidget(how_);
  scroll_->setWidget(inside);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(48, 24, 48, 24);
  column->setSpacing(14);
  column->addLayout(top());
  column->addWidget(scroll_, 1);
  column->addWidget(strip_);
  column->addLayout(foot());
  connect(strip_, &QuestionStrip::chosen, this, [this](std::size_t i) {
    run_.change([i](Sitting& sitting) { sitting.go_to(i); });
    show_question();
  });
}

QLayout* QuestionView::top() {
  auto* row = new QHBoxLayout;
  row->setSpacing(28);
  row->addWidget(quiz_);
  row->addWidget(place_);
  row->addWidget(critical_, 1);
  time_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  time_->setWordWrap(false);
  row->addWidget(time_);
  return row;
}

QLayout* QuestionView::foot() {
  auto* row = new QHBoxLayout;
  row->setSpacing(12);
  struct Button {
    StationButton* button;
    const char* name;
    void (QuestionView::*act)();
  };
  for (const auto& [button, name, act] : {Button{leave_, "leave", &QuestionView::leave},
                                          {large_, "large", &QuestionView::toggle_large},
                                          {beside_, "beside", &QuestionView::toggle_beside}}) {
    button->setObjectName(name);
    button->setFocusPolicy(Qt::NoFocus);
    connect(button, &QPushButton::clicked, this, act);
    row->addWidget(button);
  }
  row->addStretch(1);
  for (auto* button : {back_, later_, next_, hand_in_}) {
    button->setFocusPolicy(Qt::NoFocus);
    row->addWidget(button);
  }
  back_->setObjectName("back");
  later_->setObjectName("later");
  next_->setObjectName("next");
  hand_in_->setObjectName("hand_in");
  later_->setCheckable(true);
  connect(back_, &QPushButton::clicked, this, [this] { step(-1); });
  connect(next_, &QPushButton::clicked, this, [this] { step(1); });
  connect(later_, &QPushButton::clicked, this, &QuestionView::toggle_later);
  connect(hand_in_, &QPushButton::clicked, this, &QuestionView::hand_in);
  return row;
}

void QuestionView::step(int by) {
  const Sitting* sitting = run_.sitting();
  if (!sitting) return;
  if (by > 0 && sitting->at() + 1 == sitting->size()) return next_left();
  run_.change([by](Sitting& s) { by > 0 ? s.next() : s.back(); });
  show_question();
}

/// After the last question come those that are open or to be come back to; where none is left, the end.
void QuestionView::next_left() {
  const auto left = run_.sitting()->next_left();
  if (!left || *left == run_.sitting()->at()) return emit hand_in();
  run_.change([left](Sitting& s) { s.go_to(*left); });
  show_question();
}

void QuestionView::toggle_later() {
  run_.change([](Sitting& s) { s.toggle_later(); });
  if (run_.sitting()) show_foot(*run_.sitting());
}

std::string QuestionView::other_language(const Sitting& sitting) const {
  for (const std::string& language : sitting.bank().languages)
    if (language != sitting.state().attempt.language) return language;
  return {};
}

void QuestionView::toggle_beside() {
  run_.change([this](Sitting& s) {
    const bool shown = !s.state().beside.empty();
    s.set_beside(shown ? std::string() : other_language(s));
  });
  show_question();
}

void QuestionView::toggle_large() {
  run_.change([](Sitting& s) { s.set_large(!s.state().large); });
  show_question();
}

void QuestionView::show_question() {
  const Sitting* sitting = run_.sitting();
  if (!sitting) return;
  const StationType type = station_type(sitting->state().large);
  quiz_->setText(item_label(sitting->bank().name));
  place_->setText(tr("Question %1 of %2").arg(sitting->at() + 1).arg(sitting->size()));
  critical_->setText(sitting->question().critical ? tr("critical: needed to pass") : QString());
  for (QLabel* label : {quiz_, place_, time_, critical_}) {
    const bool heavy = label == quiz_ || label == time_;
    label->setFont(sized(type.small, heavy));
  }
  for (StationButton* button : {back_, later_, next_, hand_in_, beside_, large_, leave_})
    button->set_size(type.small + 2);
  show_words(*sitting);
  show_answer(*sitting);
  show_foot(*sitting);
  show_time();
}

void QuestionView::show_words(const Sitting& sitting) {
  const int size = station_type(sitting.state().large).question;
  const auto* wording = teach::wording_of(sitting.question(), sitting.state().attempt.language);
  const auto* beside = teach::wording_of(sitting.question(), sitting.state().beside);
  words_->setFont(sized(size, true));
  beside_words_->setFont(sized(size, true));
  words_->setText(wording ? QString::fromStdString(wording->text) : QString());
  beside_words_->setText(beside ? QString::fromStdString(beside->text) : QString());
  beside_words_->setVisible(beside != nullptr);
  how_->setFont(sized(station_type(sitting.state().large).small));
  how_->setText(std::visit(HowTo{}, sitting.question().kind));
  how_->setVisible(!how_->text().isEmpty());
}

void QuestionView::show_answer(const Sitting& sitting) {
  if (answer_) {
    body_->removeWidget(answer_);
    answer_->hide();
    // Later, since it may be what its key came from.
    answer_->setParent(nullptr);
    answer_->deleteLater();
  }
  const teach::Question& question = sitting.question();
  const auto choices = [&](const std::string& language) {
    const teach::Wording* wording = teach::wording_of(question, language);
    return wording ? wording->choices : std::vector<std::string>();
  };
  answer_ = answer_view({question.kind, sitting.asked().order, choices(sitting.state().attempt.language),
                         choices(sitting.state().beside), picture_of(run_.bank()->issued, question.picture),
                         station_type(sitting.state().large).body},
                        nullptr);
  body_->addWidget(answer_, 1);
  answer_->show_given(sitting.given());
  answer_->setAccessibleName(answer_->accessibleName() + ". " + words_->text());
  connect(answer_, &AnswerView::given, this, [this](const teach::Given& given) {
    run_.change([&](Sitting& s) { s.answer(given); });
    if (run_.sitting()) show_foot(*run_.sitting());
  });
  answer_->show();
  scroll_->ensureVisible(0, 0);
  answer_->setFocus();
}

void QuestionView::show_foot(const Sitting& sitting) {
  strip_->show_sitting(sitting);
  later_->setChecked(sitting.later(sitting.at()));
  later_->say(sitting.later(sitting.at()) ? tr("No need to come back") : tr("Come back to this one"));
  back_->setEnabled(sitting.at() > 0);
  const std::string other = other_language(sitting);
  beside_->setVisible(!other.empty());
  beside_->say(sitting.state().beside.empty() ? tr("%1 beside it", "a language").arg(language_name(other))
                                              : tr("One language"));
  large_->say(sitting.state().large ? tr("Smaller type") : tr("Large type"));
}

void QuestionView::show_time() {
  if (run_.sitting()) time_->setText(time_words(*run_.sitting()));
}

void QuestionView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return step(1);
  QWidget::keyPressEvent(event);
}

}  // namespace wm::app
