#include <algorithm>

#include "app/desk/strip_list.h"
#include "app/words/words.h"

namespace wm::app {

void StripModel::set(Strips strips) {
  beginResetModel();
  strips_ = std::move(strips);
  endResetModel();
}

int StripModel::row_of(const TargetName& target) const {
  for (int i = 0; i < rowCount(); ++i)
    if (row(i).target == target) return i;
  return -1;
}

int StripModel::restricted() const {
  return static_cast<int>(
      std::ranges::count_if(strips_.rows, [](const StripRow& row) { return !row.restricted.isEmpty(); }));
}

int StripModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(strips_.rows.size());
}

QVariant StripModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const StripRow& r = row(index.row());
  // The words a row is found by when its first letters are typed.
  if (role == Qt::DisplayRole) return r.heading() ? tr("Tier %1").arg(r.tier) : target_label(r.target);
  if (role == Qt::AccessibleDescriptionRole) return r.spoken;
  if (role != Qt::AccessibleTextRole) return {};
  if (r.heading()) return tr("Tier %1").arg(r.tier);
  QString words = r.paused ? tr("paused") : standing_words(r.rung);
  if (!r.restricted.isEmpty()) words = tr("%1, %2", "standing, what is restricted").arg(words, r.restricted);
  if (r.through.isEmpty()) return tr("%1: %2", "machine, standing").arg(target_label(r.target), words);
  return tr("%1: %2, through %3", "machine, standing, day").arg(target_label(r.target), words, r.through);
}

Qt::ItemFlags StripModel::flags(const QModelIndex& index) const {
  if (!index.isValid() || row(index.row()).heading()) return Qt::NoItemFlags;
  return Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

}  // namespace wm::app
