#include "app/diary/waiting_list.h"

#include <set>

#include "app/diary/two_lines.h"
#include "app/theme/theme.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

int days_waited(const Session& session, const WaitingLine& line) {
  return session.zone().day(session.present()).number - session.zone().day(line.since).number;
}

QString days_words(int days) {
  if (days == 1) return WaitingList::tr("1 day");
  return days < 1 ? WaitingList::tr("since today") : WaitingList::tr("%1 days").arg(days);
}

}  // namespace

WaitingList::WaitingList(QWidget* parent) : QListWidget(parent) {
  setObjectName("waiting");
  setAccessibleName(tr("Waiting list"));
  setItemDelegate(new TwoLines(this));
  setVerticalScrollMode(ScrollPerPixel);
  const auto choose = [this] {
    const auto row = static_cast<std::size_t>(currentRow());
    if (currentRow() >= 0 && row < lines_.size())
      emit chosen(lines_[row].waiting.person, lines_[row].waiting.target);
  };
  connect(this, &QListWidget::itemActivated, this, choose);
  connect(this, &QListWidget::itemClicked, this, choose);
}

void WaitingList::set(const Session& session, const std::vector<WaitingLine>& lines) {
  const int row = currentRow();
  lines_ = lines;
  clear();
  for (const WaitingLine& line : lines_) {
    auto* item = new QListWidgetItem(name_of(session, line.waiting.person), this);
    const QString machine = target_label(line.waiting.target), days = days_words(days_waited(session, line));
    item->setData(TwoLines::below_role, machine);
    item->setData(TwoLines::right_role, days);
    item->setData(Qt::AccessibleTextRole, QStringList{item->text(), machine, days}.join(", "));
  }
  if (row >= 0 && row < count()) setCurrentRow(row);
}

QString WaitingList::summary(const Session& session, const std::vector<WaitingLine>& lines) {
  if (lines.empty()) return tr("nobody");
  std::set<PersonId> people;
  for (const WaitingLine& line : lines) people.insert(line.waiting.person);
  const QString longest = days_words(days_waited(session, lines.front()));
  if (people.size() == 1) return tr("1 person, %1", "how long").arg(longest);
  return tr("%1 people, longest %2").arg(people.size()).arg(longest);
}

}  // namespace wm::app
