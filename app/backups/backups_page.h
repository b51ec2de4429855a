#pragma once
// Backups: what there is in the folder, making one, how they are made, and putting one back.
#include "app/backups/restore_view.h"
#include "app/lists/list_page.h"

namespace wm::app {

class BackupsPage : public ListPage {
  Q_OBJECT
 public:
  explicit BackupsPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("backups"); }
  QString title() const override { return tr("Backups"); }
  void refresh() override;
  void open(const Place& place) override;

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& id) override;

 private:
  bool by_manager() const;
  const db::BackupFile* file(const QString& id) const;
  void describe_file(const db::BackupFile& file);
  void describe_settings();
  void tell_made(const db::BackupFile& file);
  void set_up();
  Expected<BackupSettings> typed_settings(const QString& folder, int every, const QString& remind) const;
  void leave_restore();

  RestoreView* restore_;
};

}  // namespace wm::app
