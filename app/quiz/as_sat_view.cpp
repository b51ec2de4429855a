#include "app/quiz/as_sat_view.h"

#include <QVBoxLayout>

#include "app/quiz/tr.h"
#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {

AsSatView::AsSatView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      title_(role_label("large")),
      quiet_(role_label("body")),
      language_(new QComboBox),
      text_(new AttemptText) {
  title_->setObjectName("as_sat_title");
  quiet_->setObjectName("as_sat_told");
  text_->setObjectName("as_sat");
  language_->setAccessibleName(tr("Language shown"));
  language_->setMinimumWidth(140);
  auto* back = new KeyButton(tr("Back"), Qt::Key_Escape);
  back->setObjectName("as_sat_back");
  auto* top = new QHBoxLayout;
  top->addWidget(title_, 1);
  top->addWidget(language_);
  top->addWidget(back);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(20, 14, 20, 14);
  column->setSpacing(10);
  column->addLayout(top);
  column->addWidget(quiet_);
  column->addWidget(text_, 1);
  setFocusProxy(text_);
  connect(language_, &QComboBox::activated, this, &AsSatView::show_text);
  connect(back, &KeyButton::clicked, this, &AsSatView::left);
}

bool AsSatView::open(const RecordId& record) {
  sat_ = sat_attempt(session_, record);
  if (!sat_) return false;
  language_->clear();
  for (const std::string& tag : sat_->bank.bank.languages)
    language_->addItem(language_name(tag), QString::fromStdString(tag));
  language_->setCurrentIndex(language_->findData(QString::fromStdString(sat_->attempt.language)));
  language_->setVisible(language_->count() > 1);
  const Zone& zone = session_.zone();
  title_->setText(tr("%1: %2%3, as sat", "who, which quiz, revision")
                      .arg(person_name(session_.person(sat_->person)), item_label(sat_->bank.bank.name),
                           revision_words(sat_->bank.bank.revision)));
  QStringList told{
      tr("%1, %2 to %3.", "day, from, to")
          .arg(long_day(sat_->from, zone), clock_time(sat_->from, zone), clock_time(sat_->to, zone)),
      tr("%1.", "marks")
          .arg(marks_words(sat_->marking.correct, sat_->marking.total, sat_->marking.critical_missed)),
      tr("Sat in: %1.", "a language").arg(language_name(sat_->attempt.language))};
  if (!sat_->helps.empty()) told << tr("With help: %1.").arg(help_words(sat_->helps));
  quiet_->setText(told.join(' '));
  show_text();
  return true;
}

void AsSatView::show_text() {
  text_->show_attempt(*sat_, HowMuch::as_sat, language_->currentData().toString().toStdString(), 15);
}

}  // namespace wm::app
