#include "app/desk/tonight_panel.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <algorithm>
#include <ranges>

#include "app/backups/backup_words.h"
#include "app/desk/answer.h"
#include "app/desk/shop_lines.h"
#include "app/diary/diary_rows.h"
#include "app/diary/not_countersigned.h"
#include "app/diary/trouble.h"
#include "app/quiz/offered.h"
#include "app/theme/theme.h"
#include "app/widgets/blocks.h"
#include "app/widgets/key_button.h"
#include "app/words/record_words.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

constexpr std::size_t most_told = 4;

void shape(QTableWidget& table) {
  table.setShowGrid(false);
  table.verticalHeader()->hide();
  table.verticalHeader()->setDefaultSectionSize(row_height());
  table.setSelectionBehavior(QAbstractItemView::SelectRows);
  table.setSelectionMode(QAbstractItemView::SingleSelection);
  table.setEditTriggers(QAbstractItemView::NoEditTriggers);
  table.setTabKeyNavigation(false);
  table.setWordWrap(false);
  table.horizontalHeader()->setHighlightSections(false);
  table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table.horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table.horizontalHeader()->setSectionResizeMode(2, QHeaderView::Stretch);
}

}  // namespace

TonightPanel::TonightPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      title_(new QLabel),
      table_(new QTableWidget(0, 5)),
      keys_(new QLabel) {
  title_->setProperty("role", "large");
  keys_->setProperty("role", "quiet");
  table_->setObjectName("due");
  table_->setAccessibleName(tr("Due tonight"));
  table_->setHorizontalHeaderLabels(
      {tr("Time"), tr("Member"), tr("Machine"), tr("With"), tr("How it stands")});
  shape(*table_);
  table_->installEventFilter(this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(title_);
  column->addWidget(table_, 1);
  column->addWidget(keys_);
  auto* visitor = new KeyButton(tr("A visitor for the day…"), Qt::CTRL | Qt::SHIFT | Qt::Key_D);
  visitor->setObjectName("visitor");
  connect(visitor, &KeyButton::clicked, this, [this] {
    Place place;
    place.page = "people";
    place.item = "visitor";
    emit go(place);
  });
  column->addWidget(visitor, 0, Qt::AlignLeft);
  setFocusProxy(table_);
  connect(table_, &QTableWidget::cellDoubleClicked, this, &TonightPanel::open_person);
}

QString TonightPanel::state(const Due& due) const {
  if (!due.turnout) {
    const auto minutes = (due.booking.from.seconds - session_.now().seconds) / 60;
    if (due.held)
      return due.booking.from > session_.now() ? tr("held, not for certain") : tr("held, begun, still free");
    if (minutes < 0 || minutes >= 100) return tr("due");
    return tr("due in %1 min").arg(minutes);
  }
  switch (*due.turnout) {
    case db::Turnout::arrived:
      return due.check_out_signed ? tr("arrived") : tr("arrived, check-out open");
    case db::Turnout::late:
      return due.check_out_signed ? tr("came late") : tr("came late, check-out open");
    case db::Turnout::not_come:
      return tr("did not come");
  }
  return {};
}

void TonightPanel::show_shop(const ShopNow& shop) {
  due_ = shop.due;
  title_->setText(tr("Tonight, %1").arg(long_day(session_.now(), session_.zone())));
  const int row = table_->currentRow();
  table_->setRowCount(static_cast<int>(due_.size()));
  for (int i = 0; i < table_->rowCount(); ++i) {
    const Due& due = due_[static_cast<std::size_t>(i)];
    const Zone& zone = session_.zone();
    const QString cells[] = {
        tr("%1–%2", "from, to").arg(clock_time(due.booking.from, zone), clock_time(due.booking.to, zone)),
        person_name(session_.person(due.booking.person)),
        tr("%1, %2", "machine, unit")
            .arg(target_label(due.booking.target), shop.unit_label(due.booking.machine)),
        assessors_of(session_, due.booking), state(due)};
    for (int c = 0; c < 5; ++c) table_->setItem(i, c, new QTableWidgetItem(cells[c]));
  }
  table_->setCurrentCell(qBound(0, row, qMax(0, table_->rowCount() - 1)), 0);
  keys_->setText(due_.empty()
                     ? tr("Nobody is booked for today.")
                     : tr("On a line: A arrived, L came late, N did not come, Z none of that, Enter opens "
                          "the person."));
}

void TonightPanel::mark(db::Turnout turnout) {
  const int row = table_->currentRow();
  if (row < 0 || row >= static_cast<int>(due_.size())) return;
  const Due due = due_[static_cast<std::size_t>(row)];
  const QString name = person_name(session_.person(due.booking.person));
  const auto done = session_.commit(db::EnterShopFact{db::Attendance{due.id, turnout}});
  if (!done) return emit tell_problem(done.error());
  switch (turnout) {
    case db::Turnout::arrived:
      return emit tell(tr("%1 has arrived.").arg(name));
    case db::Turnout::late:
      return emit tell(tr("%1 came late.").arg(name));
    case db::Turnout::not_come:
      return emit tell(tr("%1 did not come.").arg(name));
  }
}

/// What was marked by mistake is struck out: what had been marked before holds again.
void TonightPanel::unmark() {
  const int row = table_->currentRow();
  if (row < 0 || row >= static_cast<int>(due_.size())) return;
  const Due due = due_[static_cast<std::size_t>(row)];
  if (due.marked.empty()) return;
  const auto done = session_.commit(db::StrikeOutRecord{due.marked, tr("marked by mistake").toStdString()});
  if (!done) return emit tell_problem(done.error());
  emit tell(tr("What was marked of %1 is taken back.").arg(person_name(session_.person(due.booking.person))));
}

void TonightPanel::open_person() {
  const int row = table_->currentRow();
  if (row < 0 || row >= static_cast<int>(due_.size())) return;
  Place place;
  place.page = "desk";
  place.person = due_[static_cast<std::size_t>(row)].booking.person;
  place.target = due_[static_cast<std::size_t>(row)].booking.target;
  emit go(place);
}

bool TonightPanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched != table_ || event->type() != QEvent::KeyPress) return false;
  auto* key = static_cast<QKeyEvent*>(event);
  if (key->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) return false;
  switch (key->key()) {
    case Qt::Key_A:
      mark(db::Turnout::arrived);
      return true;
    case Qt::Key_L:
      mark(db::Turnout::late);
      return true;
    case Qt::Key_N:
      mark(db::Turnout::not_come);
      return true;
    case Qt::Key_Z:
      unmark();
      return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      open_person();
      return true;
    default:
      return false;
  }
}

TonightSide::TonightSide(Session& session, QWidget* parent)
    : QFrame(parent), session_(session), column_(new QVBoxLayout) {
  setProperty("role", "paper");
  column_->setContentsMargins(16, 12, 16, 10);
  column_->setSpacing(4);
  auto* inside = new QWidget;
  inside->setLayout(column_);
  auto* scroll = new QScrollArea;
  scroll->setAccessibleName(tr("Who is here, and what is open"));
  scroll->setWidget(inside);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::TabFocus);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(4, 4, 4, 4);
  whole->addWidget(scroll);
}

void TonightSide::offer_to_leave(const db::VisitorIn& visitor) {
  const db::Action end = db::EnterShopFact{db::VisitEnd{visitor.visit}};
  if (session_.known() || !session_.permitted(end)) return;
  auto* left = new QPushButton(tr("%1 has left").arg(said_words(visitor.name)));
  left->setObjectName("visitor_left");
  connect(left, &QPushButton::clicked, this, [this, end] {
    if (const auto done = session_.commit(end); !done) return emit tell_problem(done.error());
    emit tell(tr("The visitor has left."));
  });
  column_->insertWidget(column_->count() - 1, left, 0, Qt::AlignLeft);
}

void TonightSide::add_block(const QString& title, const QStringList& lines, const QString& none) {
  wm::app::add_block(*column_, title, lines.isEmpty() ? QStringList{none} : lines);
  column_->addSpacing(14);
}

/// Whoever is in can be asked; anybody else can't.
QStringList TonightSide::to_countersign(const ShopNow& shop) const {
  QStringList lines;
  for (const NotCountersigned& each : not_countersigned(session_)) {
    if (!shop.is_present(session_.joined(each.checkout->person))) continue;
    lines << tr("%1, %2, on %3: on Check-outs", "who, machine, day")
                 .arg(person_name(session_.person(each.checkout->person)), class_label(each.machine_class),
                      short_day(each.entry->at, session_.zone()));
  }
  return lines;
}

void TonightSide::show_shop(const ShopNow& shop) {
  empty_column(*column_);
  const auto name = [&](const PersonId& id) { return person_name(session_.person(id)); };
  QStringList staff, others, open;
  for (const PersonId& id : shop.staff) staff << name(id);
  for (const PersonId& id : shop.present)
    if (!std::binary_search(shop.staff.begin(), shop.staff.end(), id)) others << name(id);
  for (const Due& due : shop.due)
    if (due.turnout && *due.turnout != db::Turnout::not_come && !due.check_out_signed)
      open << tr("%1, %2, with %3", "who, machine, assessor")
                  .arg(name(due.booking.person), target_label(due.booking.target),
                       assessors_of(session_, due.booking));
  if (const QString reminder = backup_reminder(session_); !reminder.isEmpty())
    add_block(tr("Backup"), {reminder}, {});
  QStringList wrong;
  const std::vector<Trouble> all = troubles(session_, session_.now());
  for (const Trouble& each : all | std::views::take(most_told))
    wrong << tr("%1, %2: %3", "who; when; why, and what to do")
                 .arg(name(each.line.booking.person), short_time(each.line.booking.from, session_.zone()),
                      problem_sentence(each.problem));
  if (all.size() > most_told) wrong << tr("And %1 more: see the Diary.").arg(all.size() - most_told);
  if (!wrong.isEmpty()) add_block(tr("Bookings that are no longer possible"), wrong, {});
  QStringList quizzes;
  if (!session_.known())
    for (const OfferedQuiz& offered : offered_quizzes(session_))
      quizzes << tr("%1, %2", "who, which quiz").arg(name(offered.person), item_label(offered.quiz));
  if (!quizzes.isEmpty()) add_block(tr("Quizzes offered"), quizzes, {});
  add_block(tr("Staff here"), staff, tr("Nobody on duty has come in."));
  add_block(tr("Members here"),
            others.isEmpty() ? others : QStringList{others.join(tr(", ", "between names"))},
            tr("Nobody has been noted as here."));
  if (!shop.visitors.empty())
    add_block(tr("Visitors for the day"), visitor_lines(shop.visitors, name, session_.zone()), {});
  for (const db::VisitorIn& each : shop.visitors) offer_to_leave(each);
  QStringList at;
  for (const db::AtMachine& each : shop.at_machines) {
    const auto time = [&](Instant t) { return time_words(t, session_.zone(), session_.present()); };
    const QString since = time(each.since), where = unit_words(shop, each.machine);
    at << (each.supervisor.empty()
               ? tr("%1: %2, since %3", "who, machine, time").arg(name(each.person), where, since)
               : tr("%1: %2, since %3, supervised by %4")
                     .arg(name(each.person), where, since, name(each.supervisor)));
    if (each.gone)
      at.back() += ' ' + tr("(%1 is noted as gone since %2: enter when the machine was left)", "name, time")
                             .arg(name(each.gone->person), time(each.gone->at));
  }
  add_block(tr("At the machines"), at, tr("Nobody is noted as at a machine."));
  add_block(tr("Out of service"), out_lines(shop, name, session_.zone()),
            tr("No machine is out of service."));
  add_block(tr("Check-outs open"), open, tr("No check-out is open."));
  if (const QStringList missing = to_countersign(shop); !missing.isEmpty())
    add_block(tr("Here, and have not countersigned"), missing, {});
  column_->addStretch(1);
  auto* small = new QLabel(caution());
  small->setWordWrap(true);
  small->setProperty("role", "quiet");
  column_->addWidget(small);
}

}  // namespace wm::app
