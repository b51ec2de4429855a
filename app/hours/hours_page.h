#pragma once
// Hours: when the shop is open and staffed, who is in when, how long a one-on-one lasts, and how the shop
// books. What the Diary's free times rest on.
#include "app/lists/list_page.h"

namespace wm::app {

class HoursPage : public ListPage {
  Q_OBJECT
 public:
  explicit HoursPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("hours"); }
  QString title() const override { return tr("Hours"); }
  void open(const Place& place) override;

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& id) override;

 private:
  bool manages() const;
  bool speaks_for(const PersonId& person) const;
  std::vector<ListRow> shop_rows();
  std::vector<ListRow> other_rows();
  std::vector<ListRow> person_rows();
  std::vector<ListRow> class_rows();
  ListRow row(const QString& id, const QString& what, const QString& when, const QString& quiet = {}) const;

  void describe_shop();
  void describe_person(const PersonId& person);
  void describe_class(const std::string& machine_class);
  void shop_actions();
  void person_actions(const PersonId& person);
  /// A line of hours with the button that strikes it out, where this seat may.
  void said_line(const QString& words, const RecordId& record, bool may);

  void add_week_hours();
  void add_other_hours(const PersonId& person);
  void add_upkeep();
  void set_rules();
  void set_length(const std::string& machine_class);
  void add_person_hours(const PersonId& person, bool pause);
  void set_takes_on(const PersonId& person);
  Expected<db::Committed> enter(db::ShopFact fact);
};

}  // namespace wm::app
