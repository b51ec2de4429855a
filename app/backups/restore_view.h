#pragma once
// A backup that may be put back: what would be lost, entry by entry, and only then doing it.
#include <QLabel>
#include <QWidget>

#include "app/lists/list_view.h"
#include "app/session.h"

namespace wm::app {

class KeyButton;

class RestoreView : public QWidget {
  Q_OBJECT
 public:
  explicit RestoreView(Session& session, QWidget* parent = nullptr);

  /// Begins to compare it with the shop as it is.
  void ask(const db::BackupFile& file);

 signals:
  void left();

 private:
  void show_plan(const Expected<db::RestorePlan>& plan);
  std::vector<ListRow> rows(const std::vector<db::MissingCommit>& lost) const;

  Session& session_;
  db::BackupFile file_;
  QLabel *heading_, *summary_, *problem_;
  ListView* lost_;
  KeyButton *put_back_, *leave_;
};

}  // namespace wm::app
