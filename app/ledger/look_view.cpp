#include "app/ledger/look_view.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>
#include <memory>

#include "app/ledger/look_words.h"
#include "app/ledger/own_roots.h"
#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

/// Every root that this computer has kept, and the one from the paper.
Expected<verify::Ask> asked(const std::string& store, const std::string& root) {
  verify::Ask ask;
  if (!root.empty()) {
    auto known = verify::read_known_root(LookView::tr("The root from the paper").toStdString(), root);
    if (!known) return tl::unexpected(known.error());
    ask.against.push_back(std::move(*known));
  }
  if (const auto own = add_own_roots(store, ask); !own) return tl::unexpected(own.error());
  return ask;
}

}  // namespace

LookView::LookView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      root_(new QLineEdit),
      verdict_(role_label("large")),
      lines_(role_label("body")),
      look_(new KeyButton(tr("Look it through"), QKeySequence("Ctrl+Return"), true)),
      leave_(new KeyButton(tr("Back to the journal"), QKeySequence("Esc"))) {
  root_->setObjectName("root");
  root_->setAccessibleName(tr("Root from the foot of a paper"));
  root_->setPlaceholderText(tr("the root at the foot of a printed paper, where one is at hand"));
  verdict_->setObjectName("verdict");
  lines_->setObjectName("look_lines");
  lines_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  look_->setObjectName("look_through");
  leave_->setObjectName("leave_look");
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(22, 18, 20, 14);
  layout->setSpacing(10);
  layout->addWidget(role_label("large", tr("Look the shop's file through")));
  layout->addWidget(role_label(
      "body",
      tr("Everything is worked out again from the records, and every signature since the last look is "
         "verified: what was altered, added, removed or cut off behind the program's back is found and "
         "named. Against a root from a paper that was printed earlier, nothing before it can have been "
         "made anew.")));
  layout->addWidget(root_);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(look_);
  buttons->addWidget(leave_);
  buttons->addStretch(1);
  layout->addLayout(buttons);
  layout->addWidget(verdict_);
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  lines_->setAlignment(Qt::AlignTop);
  scroll->setWidget(lines_);
  layout->addWidget(scroll, 1);
  connect(leave_, &QPushButton::clicked, this, &LookView::left);
  connect(look_, &QPushButton::clicked, this, &LookView::look);
}

LookView::~LookView() { behind_.waitForDone(); }

void LookView::begin() {
  if (!look_->isEnabled()) return;
  verdict_->clear();
  lines_->clear();
  root_->setFocus(Qt::OtherFocusReason);
  root_->selectAll();
}

void LookView::look() {
  const std::string store = session_.store().path();
  auto ask = asked(store, root_->text().trimmed().toStdString());
  if (!ask) return show_report(tl::unexpected(ask.error()));
  look_->setEnabled(false);
  verdict_->setText(tr("The file is being looked through. The other pages can be used meanwhile."));
  lines_->clear();
  behind_.start([this, store, ask = std::move(*ask)] {
    auto report = std::make_shared<Expected<verify::Report>>(verify::look_through(store, ask));
    QMetaObject::invokeMethod(
        this, [this, report] { show_report(*report); }, Qt::QueuedConnection);
  });
}

void LookView::show_report(const Expected<verify::Report>& report) {
  look_->setEnabled(true);
  if (!report) {
    verdict_->setText(tr("It could not be looked through."));
    return lines_->setText(problem_sentence(report.error()));
  }
  const LookWords look(*report);
  QStringList lines = look.findings();
  lines << look.roots() << look.tree() << look.checkouts() << look.unknown();
  if (look.fine())
    if (const auto kept = keep_verified(session_.store().path(), report->head); !kept)
      lines << problem_sentence(kept.error());
  lines.removeAll(QString());
  verdict_->setText(look.verdict());
  lines_->setText(lines.join("\n\n"));
}

}  // namespace wm::app
