#include "app/diary/fit_view.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/diary/diary_rows.h"
#include "app/diary/fit_words.h"
#include "app/diary/slots.h"
#include "app/theme/theme.h"
#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

constexpr int days_fitted = 28;

QListWidget* list(const char* name, const QString& spoken) {
  auto* out = new QListWidget;
  out->setObjectName(name);
  out->setAccessibleName(spoken);
  out->setWordWrap(true);
  out->setSpacing(5);
  out->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  return out;
}

}  // namespace

FitView::FitView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      fitting_(session, this),
      helping_(session),
      state_(role_label("body")),
      left_heading_(role_label("body")),
      helps_(role_label("body")),
      proposal_(list("proposal", tr("Proposed one-on-ones"))),
      left_out_(list("left_out", tr("Left out, and why"))),
      book_(new KeyButton(tr("Book what is ticked"), Qt::CTRL | Qt::Key_Return, true)),
      leave_(new KeyButton(tr("Back to the diary"), QKeySequence("Esc"))) {
  state_->setObjectName("fit_state");
  left_heading_->setObjectName("left_heading");
  helps_->setObjectName("helps");
  book_->setObjectName("book_ticked");
  leave_->setObjectName("leave_fit");
  setMaximumWidth(1300);  // a reason stays near its name
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(6);
  down->addWidget(role_label("large", tr("Fit everyone who waits")));
  down->addWidget(state_);
  down->addWidget(proposal_, 3);
  down->addWidget(left_heading_);
  down->addWidget(left_out_, 2);
  down->addWidget(helps_);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(book_);
  buttons->addWidget(leave_);
  buttons->addStretch(1);
  down->addLayout(buttons);
  down->addWidget(role_label("quiet", caution()));
  connect(&fitting_, &Fitting::gathered, this, [this](int people, int of) {
    state_->setText(tr("Looking for times: %1 of %2 people. Esc stops.").arg(people).arg(of));
  });
  connect(&fitting_, &Fitting::found, this, [this](int served) {
    state_->setText(tr("Working out who is served when: %1 so far. Esc stops and shows that.").arg(served));
  });
  connect(&fitting_, &Fitting::done, this, &FitView::show_proposal);
  connect(&helping_, &Helping::helped, this, [this](const std::vector<Help>& helps) {
    helps_->setText(help_words(helps));
    helps_->setVisible(!helps.empty());
  });
  connect(proposal_, &QListWidget::itemChanged, this, &FitView::count_ticked);
  connect(leave_, &QPushButton::clicked, this, &FitView::leave);
  connect(book_, &QPushButton::clicked, this, [this] {
    book_->setEnabled(false);
    emit book(ticked());
  });
}

void FitView::begin() {
  fitted_.reset();
  proposal_->clear();
  left_out_->clear();
  left_heading_->clear();
  helping_.stop();
  helps_->hide();
  count_ticked();
  leave_->say(tr("Stop"));
  state_->setText(tr("Looking for times."));
  proposal_->setFocus();
  fitting_.begin(days_fitted);
}

void FitView::leave() {
  if (fitting_.going_on()) return fitting_.stop();
  helping_.stop();
  emit left();
}

void FitView::show_proposal(std::shared_ptr<const Fitted> fitted) {
  fitted_ = std::move(fitted);
  state_->setText(proposal_words(*fitted_));
  for (const Placed& each : fitted_->proposal.placed) {
    auto* item = new QListWidgetItem(placed_words(session_, *fitted_, each), proposal_);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item->setCheckState(Qt::Checked);
  }
  for (const LeftOut& each : fitted_->left) add_left_out(each);
  left_heading_->setText(fitted_->left.empty() ? tr("Nobody is left out.") : tr("Left out, and why"));
  if (proposal_->count() > 0) proposal_->setCurrentRow(0);
  leave_->say(tr("Back to the diary"));
  helping_.begin(fitted_, days_fitted);
  count_ticked();
}

void FitView::add_left_out(const LeftOut& each) {
  const Waiter& waiter = fitted_->question.waiters[each.waiter];
  left_out_->addItem(tr("%1, %2: %3", "member; machine; why")
                         .arg(name_of(session_, waiter.person), target_label(waiter.target),
                              left_out_words(session_, *fitted_, each)));
}

void FitView::count_ticked() {
  const std::size_t count = ticked().size();
  book_->setEnabled(count > 0);
  book_->say(count > 1 ? tr("Book the %1 that are ticked").arg(count) : tr("Book what is ticked"));
}

std::vector<db::Booking> FitView::ticked() const {
  std::vector<db::Booking> out;
  for (int i = 0; fitted_ && i < proposal_->count(); ++i) {
    if (proposal_->item(i)->checkState() != Qt::Checked) continue;
    const Placed& placed = fitted_->proposal.placed[static_cast<std::size_t>(i)];
    const Opening& opening = fitted_->question.openings[placed.opening];
    const db::Waiting& waiting = fitted_->lines[placed.waiter].waiting;
    Slot slot;
    slot.when = opening.when;
    slot.assessor = opening.assessor;
    slot.unit = opening.unit;
    slot.second = opening.second;
    out.push_back(booking_of(slot, {waiting.person, waiting.target}));
  }
  return out;
}

}  // namespace wm::app
