#include "app/figures/question_card.h"

#include <QGridLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "app/figures/figure_words.h"
#include "app/theme/theme.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

/// A share as a bar: filled where the choice is right, outlined and hatched where it is wrong, so that print
/// without colour tells them apart too. Its words stand beside it.
class ShareBar : public QWidget {
 public:
  ShareBar(double share, bool right) : share_(share), right_(right) {
    setFixedHeight(14);
    setMinimumWidth(120);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    const Palette& colours = wm::app::palette();
    QPainter painter(this);
    const QRectF room = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(colours.line);
    painter.drawRect(room);
    if (share_ <= 0) return;
    const QRectF bar(room.topLeft(), QSizeF(room.width() * share_, room.height()));
    painter.setPen(right_ ? colours.full : colours.half);
    painter.setBrush(right_ ? QBrush(colours.full) : QBrush(colours.half, Qt::BDiagPattern));
    painter.drawRect(bar);
  }

 private:
  double share_;
  bool right_;
};

QLabel* selectable(const char* role, const QString& words) {
  QLabel* label = role_label(role, words);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QLayout* choices_of(const teach::QuestionFigures& figures, const teach::Wording* wording) {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(14);
  grid->setVerticalSpacing(4);
  for (std::size_t i = 0; i < figures.choices.size(); ++i) {
    const teach::ChoiceFigures& choice = figures.choices[i];
    const int row = static_cast<int>(i);
    const double share = static_cast<double>(choice.chosen) / static_cast<double>(figures.asked);
    grid->addWidget(selectable("quiet", choice.right ? QuestionCard::tr("right") : QString()), row, 0);
    grid->addWidget(selectable("body", choice_words(wording, i)), row, 1);
    grid->addWidget(new ShareBar(share, choice.right), row, 2);
    QLabel* count = selectable("quiet", QuestionCard::tr("%1 of %2, %3", "a choice: how often, a percentage")
                                            .arg(choice.chosen)
                                            .arg(figures.asked)
                                            .arg(share_words(choice.chosen, figures.asked)));
    count->setWordWrap(false);
    grid->addWidget(count, row, 3);
  }
  grid->setColumnMinimumWidth(0, 34);
  grid->setColumnStretch(1, 3);
  grid->setColumnStretch(2, 2);
  return grid;
}

QString place_words(const teach::BankFigures& bank, const teach::QuestionFigures& figures) {
  const QString where = QuestionCard::tr("%1, %2, question %3", "a quiz, a topic, a question's id")
                            .arg(item_label(bank.bank), QString::fromStdString(figures.topic),
                                 QString::fromStdString(figures.question));
  return figures.revision == 1 ? where : where + revision_words(figures.revision);
}

}  // namespace

QuestionCard::QuestionCard(const teach::BankFigures& bank, const teach::QuestionFigures& figures,
                           const teach::LookAt* look, QWidget* parent)
    : QFrame(parent) {
  const teach::Question* question = teach::question_of(bank, figures.question, figures.revision);
  const teach::Wording* wording = shown_wording(question);
  setProperty("role", "paper");
  setObjectName("question_" + QString::fromStdString(figures.question));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(18, 12, 18, 14);
  layout->setSpacing(6);
  layout->addWidget(selectable("quiet", place_words(bank, figures)));
  if (wording) {
    QLabel* text = selectable("body", QString::fromStdString(wording->text));
    text->setFont(type(TypeSize::body, true));
    layout->addWidget(text);
  }
  if (look) {
    for (const teach::Reason& reason : look->reasons)
      layout->addWidget(selectable("body", doubt_sentence(reason, figures, wording)));
    layout->addWidget(selectable("quiet", doubt_advice(look->reasons.front().doubt)));
  }
  if (!figures.choices.empty()) layout->addLayout(choices_of(figures, wording));
  layout->addWidget(selectable("quiet", question_sentence(figures)));
}

}  // namespace wm::app
