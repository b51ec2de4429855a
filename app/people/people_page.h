#pragma once
// People: find, enter, correct, join two entries of one person, roles and PINs.
#include <QCheckBox>

#include "app/lists/list_page.h"
#include "db/retention.h"

namespace wm::app {

class PeoplePage : public ListPage {
  Q_OBJECT
 public:
  explicit PeoplePage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("people"); }
  QString title() const override { return tr("People"); }
  void refresh() override;
  void open(const Place& place) override;

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& id) override;

 private:
  void details(const db::Person& person);
  void joined_entries(const PersonId& person);
  void quizzes_sat(const PersonId& person);
  void weekly_hours(const db::Person& person);
  void pauses(const db::Person& person);
  void end_pause(const RecordId& id);
  void appointments(const db::Person& person);
  void end_appointment(const RecordId& id);
  void appoint(const db::Person& person);
  void pause(const db::Person& person);
  void close_ones(const db::Person& person);
  void name_close(const db::Person& person);
  void actions(const db::Person& person);
  void manager_actions(const db::Person& person);

  void visitors();
  void enter_visitor();
  void enter_group();
  void visitors_names();
  void enter_new();
  void correct(const db::Person& person);
  void join(const db::Person& person);
  void give_role(const db::Person& person);
  void choose_pin(const db::Person& person);
  void add_hours(const db::Person& person);
  void blank(const db::Person& person);
  void give_out(const db::Person& person);
  Expected<QString> write_out(const PersonId& person, const QString& folder);
  void take_in_file();
  void go_to(const PersonId& person);
  const db::MayGo* may_go(const PersonId& person) const;

  QCheckBox* may_go_;
  std::vector<db::MayGo> go_;
  std::int64_t gone_at_ = -1;  // the commit after which that was worked out
};

}  // namespace wm::app
