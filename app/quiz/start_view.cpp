#include "app/quiz/start_view.h"

#include <QKeyEvent>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/lists/answer_reader.h"
#include "app/words/words.h"
#include "core/teach/lesson.h"

namespace wm::app {

StartView::StartView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      name_(station_label(30, true)),
      not_now_(station_label(22, true)),
      title_(station_label(26, true)),
      list_(new QListWidget),
      told_holder_(new QWidget),
      choices_(new QWidget),
      language_(new QComboBox),
      beside_(new QComboBox),
      language_name_(station_label(18, false, tr("Language"))),
      beside_name_(station_label(18, false, tr("Beside it"))),
      start_(new StationButton(tr("Begin"), Qt::CTRL | Qt::Key_Return, true)),
      leave_(new StationButton(tr("Leave it"), Qt::Key_Escape)) {
  name_->setObjectName("quiz_person");
  not_now_->setObjectName("not_now");
  title_->setObjectName("quiz_name");
  list_->setObjectName("quizzes");
  list_->setAccessibleName(tr("Lessons and quizzes"));
  list_->setFont(sized(20));
  list_->setFixedWidth(330);
  list_->setSpacing(3);
  start_->setObjectName("begin");
  leave_->setObjectName("leave_it");
  language_->setObjectName("language");
  beside_->setObjectName("language_beside");
  auto* choices = new QGridLayout(choices_);
  choices->setContentsMargins(0, 0, 0, 0);
  choices->setHorizontalSpacing(16);
  int row = 0;
  for (const auto& [label, box] : {std::pair(language_name_, language_), {beside_name_, beside_}}) {
    box->setFont(sized(18));
    box->setMinimumWidth(260);
    label->setBuddy(box);
    choices->addWidget(label, row, 0);
    choices->addWidget(box, row++, 1, Qt::AlignLeft);
  }
  for (const auto& [help, words, name] :
       {std::tuple(db::Help::interpreter, tr("An interpreter sits beside me"), "interpreter"),
        {db::Help::read_aloud, tr("Somebody reads it aloud to me"), "read_aloud"},
        {db::Help::large_type, tr("Large type"), "large_type"}}) {
    auto* box = new QCheckBox(words);
    box->setObjectName(name);
    box->setFont(sized(18));
    helps_.emplace_back(help, box);
    choices->addWidget(box, row++, 0, 1, 2);
  }
  choices->setColumnStretch(1, 1);
  auto* side = new QVBoxLayout;
  side->setSpacing(14);
  for (QWidget* widget : std::initializer_list<QWidget*>{title_, told_holder_, not_now_, choices_})
    side->addWidget(widget);
  side->addStretch(1);
  auto* small = station_label(14, false, caution());
  side->addWidget(small);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(leave_);
  buttons->addStretch(1);
  buttons->addWidget(start_);
  side->addLayout(buttons);
  told_holder_->setLayout(new QVBoxLayout);
  told_holder_->layout()->setContentsMargins(0, 0, 0, 0);
  auto* middle = new QHBoxLayout;
  middle->setSpacing(40);
  middle->addWidget(list_);
  middle->addLayout(side, 1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(56, 36, 56, 32);
  column->setSpacing(20);
  column->addWidget(name_);
  column->addLayout(middle, 1);
  connect(list_, &QListWidget::currentRowChanged, this, &StartView::show_offer);
  connect(language_, &QComboBox::currentIndexChanged, this, [this] {
    // The same twice is not side by side.
    if (beside_->currentData() == language_->currentData()) beside_->setCurrentIndex(0);
  });
  connect(start_, &QPushButton::clicked, this, &StartView::start);
  connect(leave_, &QPushButton::clicked, this, &StartView::left);
}

void StartView::show_person(const PersonId& person, const std::string& quiz) {
  person_ = person;
  offers_.clear();
  const auto add = [this](const auto& all, bool needed) {
    for (const auto& each : all)
      if (each.needed == needed) offers_.emplace_back(each);
  };
  const std::vector<LessonOffer> lessons = lesson_offers(session_, person);
  const std::vector<QuizOffer> quizzes = quiz_offers(session_, person);
  // What is needed first, and of that a lesson before the quiz that asks for it.
  add(lessons, true);
  add(quizzes, true);
  add(quizzes, false);
  add(lessons, false);
  name_->setText(
      tr("%1: what comes next?", "what somebody is called").arg(called(session_.store().person(person))));
  const QSignalBlocker quiet(list_);
  list_->clear();
  int row = 0;
  for (const Offer& offer : offers_) {
    const auto* lesson = std::get_if<LessonOffer>(&offer);
    const auto* asked = std::get_if<QuizOffer>(&offer);
    if (asked && asked->quiz == quiz) row = list_->count();
    const QString words = lesson ? tr("Lesson: %1").arg(item_label(lesson->lesson))
                                 : tr("Quiz: %1").arg(item_label(asked->quiz));
    const bool needed = lesson ? lesson->needed : asked->needed;
    auto* item = new QListWidgetItem(needed ? words : words + QStringLiteral("  ✓"), list_);
    item->setData(Qt::AccessibleTextRole, needed ? words : tr("%1, counts now").arg(words));
  }
  list_->setCurrentRow(row);
  for (const auto& [help, box] : helps_) box->setChecked(false);
  show_offer();
  list_->setFocus();
}

void StartView::show_offer() {
  const auto row = static_cast<std::size_t>(list_->currentRow());  // none: beyond all
  if (row >= offers_.size()) {
    show_quiz({});
    title_->clear();
    not_now_->setText(tr("The rulebook asks for no lesson and no quiz."));
    not_now_->show();
    for (QWidget* widget : std::initializer_list<QWidget*>{choices_, start_}) widget->hide();
    return;
  }
  if (const auto* quiz = std::get_if<QuizOffer>(&offers_[row])) return show_quiz(*quiz);
  show_lesson(std::get<LessonOffer>(offers_[row]));
}

void StartView::show_quiz(const QuizOffer& offer) {
  title_->setText(item_label(offer.quiz));
  fill_told(offer.told);
  fill_languages(offer);
  not_now_->setText(offer.begun ? tr("This quiz has been begun: the same questions come again, with "
                                     "the time that is left.")
                                : offer.not_now);
  not_now_->setVisible(!not_now_->text().isEmpty());
  choices_->setVisible(offer.not_now.isEmpty());
  start_->setVisible(offer.not_now.isEmpty());
  start_->say(offer.begun ? tr("Go on") : tr("Begin"));
}

void StartView::show_lesson(const LessonOffer& offer) {
  title_->setText(item_label(offer.lesson));
  std::vector<std::pair<QString, QString>> told;
  if (offer.text) {
    const auto parts = teach::parts_of(offer.text->work->text).size();
    told = {{tr("Revision"), QString::number(offer.text->work->revision)},
            {tr("Parts"), tr("%1, each to be read to its end").arg(parts)}};
  }
  if (!offer.stands.isEmpty()) told.emplace_back(tr("How it stands"), offer.stands);
  fill_told(told);
  not_now_->setText(offer.not_here);
  not_now_->setVisible(!offer.not_here.isEmpty());
  choices_->hide();
  start_->setVisible(offer.text.has_value());
  start_->say(offer.not_here.isEmpty() ? tr("Go through it") : tr("Read it"));
}

void StartView::fill_told(const std::vector<std::pair<QString, QString>>& told) {
  delete told_holder_->layout();
  qDeleteAll(told_holder_->findChildren<QLabel*>(Qt::FindDirectChildrenOnly));
  told_ = new QGridLayout(told_holder_);
  told_->setContentsMargins(0, 0, 0, 0);
  told_->setHorizontalSpacing(24);
  told_->setColumnStretch(1, 1);
  int row = 0;
  for (const auto& [name, words] : told) {
    auto* left = station_label(18, false, name);
    left->setMinimumWidth(160);
    auto* right = station_label(18, true, words);
    told_->addWidget(left, row, 0, Qt::AlignTop);
    told_->addWidget(right, row++, 1);
  }
}

void StartView::fill_languages(const QuizOffer& offer) {
  language_->clear();
  beside_->clear();
  beside_->addItem(tr("nothing"), QString());
  for (const std::string& tag : offer.languages) {
    language_->addItem(language_name(tag), QString::fromStdString(tag));
    beside_->addItem(language_name(tag), QString::fromStdString(tag));
  }
  const bool several = offer.languages.size() > 1;
  language_->setEnabled(several);
  beside_->setVisible(several);
  beside_name_->setVisible(several);
}

void StartView::start() {
  const int row = list_->currentRow();
  if (row < 0 || !start_->isVisible()) return;
  const Offer& offer = offers_[static_cast<std::size_t>(row)];
  if (const auto* lesson = std::get_if<LessonOffer>(&offer)) return emit read(person_, *lesson);
  QuizWish wish;
  wish.person = person_;
  wish.quiz = std::get<QuizOffer>(offer).quiz;
  wish.language = language_->currentData().toString().toStdString();
  wish.beside = beside_->currentData().toString().toStdString();
  for (const auto& [help, box] : helps_)
    if (box->isChecked()) wish.helps.push_back(help);
  emit begin(wish);
}

void StartView::show_problem(const Problem& problem) {
  not_now_->setText(problem_sentence(problem));
  not_now_->show();
}

void StartView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return start();
  QWidget::keyPressEvent(event);
}

}  // namespace wm::app
