#pragma once
// Machines: units by tier and class, out of service and back, changes that re-checks rest on.
#include "app/lists/list_page.h"
#include "app/lists/record_reader.h"
#include "app/machines/units.h"

namespace wm::app {

class MachinesPage : public ListPage {
  Q_OBJECT
 public:
  explicit MachinesPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("machines"); }
  QString title() const override { return tr("Machines"); }
  void refresh() override;
  void open(const Place& place) override;

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& id) override;

 private:
  ListRow row(const UnitState& unit) const;
  const UnitState* unit(const QString& id) const;
  QString lock_summary(const db::LockOn& lock) const;
  void describe_lock(const db::LockOn& lock, bool first);
  void lock_actions(const db::LockOn& lock, bool first);
  void actions(const UnitState& unit);
  void history(const UnitState& unit);
  void cards(const UnitState& unit);
  std::vector<TargetName> targets_of_class(const std::string& machine_class) const;
  void write_card(const TargetName& target);

  void put_out_of_service(const UnitState& unit);
  void record_attempt(const db::LockOn& lock);
  void take_off(const db::LockOn& lock);
  void record_change(const UnitState& unit);
  QString effect_words(const TargetName& target, Instant at) const;
  QString since_words(const db::Entry& change) const;
  void add_unit();

  std::vector<UnitState> units_;
  RecordReader reader_;
};

}  // namespace wm::app
