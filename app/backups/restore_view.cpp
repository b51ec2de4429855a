#include "app/backups/restore_view.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/backups/backup_words.h"
#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

QString plan_words(const db::RestorePlan& plan) {
  const auto lost = static_cast<int>(plan.lost.size());
  if (!plan.readable)
    return RestoreView::tr(
        "The backup is whole. What would be lost can't be told: the shop's file can't be read.");
  if (lost == 0)
    return RestoreView::tr("The backup is whole. Nothing has been entered since: nothing is lost.");
  if (lost == 1) return RestoreView::tr("The backup is whole. One entry made since would be lost.");
  return RestoreView::tr("The backup is whole. %n entries made since would be lost.", "", lost);
}

}  // namespace

RestoreView::RestoreView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      heading_(role_label("large")),
      summary_(role_label("body")),
      problem_(role_label("problem")),
      lost_(new ListView({{tr("Entered"), 150}, {tr("What would be lost"), 0}, {tr("By"), 160}})),
      put_back_(new KeyButton(tr("Put it back"), QKeySequence("Ctrl+Return"), true)),
      leave_(new KeyButton(tr("Leave it"), QKeySequence("Esc"))) {
  summary_->setObjectName("restore_summary");
  problem_->setObjectName("restore_problem");
  lost_->setObjectName("lost");
  lost_->setAccessibleName(tr("Entries that would be lost"));
  put_back_->setObjectName("put_back_now");
  leave_->setObjectName("leave");
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(22, 18, 20, 14);
  layout->setSpacing(10);
  layout->addWidget(heading_);
  layout->addWidget(summary_);
  layout->addWidget(lost_, 1);
  layout->addWidget(problem_);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(put_back_);
  buttons->addWidget(leave_);
  buttons->addStretch(1);
  layout->addLayout(buttons);
  layout->addStretch(0);
  connect(leave_, &QPushButton::clicked, this, &RestoreView::left);
  connect(put_back_, &QPushButton::clicked, this, [this] { session_.backups().put_back(file_.path); });
  connect(&session_.backups(), &Backups::planned, this,
          [this](const std::string& backup, const Expected<db::RestorePlan>& plan) {
            if (backup == file_.path) show_plan(plan);
          });
}

void RestoreView::ask(const db::BackupFile& file) {
  file_ = file;
  heading_->setText(tr("Put back the backup of %1, %2", "day, time")
                        .arg(long_day(file.made, session_.zone()), clock_time(file.made, session_.zone())));
  summary_->setText(tr("It is being read through and compared with the shop as it is now."));
  problem_->hide();
  lost_->hide();
  put_back_->setEnabled(false);
  leave_->setFocus(Qt::OtherFocusReason);
  session_.backups().plan(file.path);
}

void RestoreView::show_plan(const Expected<db::RestorePlan>& plan) {
  if (!plan) {
    summary_->setText(tr("It can't be put back."));
    problem_->setText(problem_sentence(plan.error()));
    problem_->show();
    return;
  }
  lost_->setVisible(!plan->lost.empty());
  summary_->setText(plan_words(*plan) + ' ' +
                    tr("The file of now is kept beside it, under a dated name. Every other window on this "
                       "shop must be closed first."));
  lost_->set_rows(rows(plan->lost));
  put_back_->setEnabled(true);
  if (!plan->lost.empty()) lost_->setFocus(Qt::OtherFocusReason);
}

/// The latest first, as the journal has them.
std::vector<ListRow> RestoreView::rows(const std::vector<db::MissingCommit>& lost) const {
  const RecordReader reader = record_reader(session_);
  std::vector<ListRow> rows;
  for (auto commit = lost.rbegin(); commit != lost.rend(); ++commit)
    rows.push_back(
        {QString::number(commit->number),
         {{tr("%1, %2", "day, time")
               .arg(short_day(commit->recorded, session_.zone()),
                    clock_time(commit->recorded, session_.zone())),
           {}},
          {lost_words(*commit, session_.store(), reader), {}},
          {commit->entered_by.empty() ? tr("import") : QString::fromStdString(commit->entered_by), {}}},
         false});
  return rows;
}

}  // namespace wm::app
