#pragma once
// Somebody starts a machine, under whom where they need it; or has left the one that they are at.
#include <QVBoxLayout>
#include <QWidget>

#include "app/desk/shop_now.h"
#include "app/lists/form.h"

namespace wm::app {

class StartForm : public QWidget {
  Q_OBJECT
 public:
  explicit StartForm(Session& session, QWidget* parent = nullptr);
  /// Leaving, where the person is at a machine or supervises there; else starting a unit of the target.
  void begin(const ShopNow& shop, const PersonId& person, const TargetName& target);

 signals:
  /// Entered or left: the form is done with.
  void closed();
  void tell(const QString& sentence);

 private:
  Form* fresh(const QString& heading, const QString& save_words);
  void ask_to_leave(const db::AtMachine& at);
  void leave(const db::AtMachine& at, const QString& typed);
  bool may_be_now(const db::AtMachine& at) const;
  void ask_who_leaves(const std::vector<db::AtMachine>& at);
  void ask_to_start();
  void list_supervisors();
  void start();
  QString who() const;

  Session& session_;
  ShopNow shop_;
  PersonId person_;
  TargetName target_;
  QVBoxLayout* column_;
  Form* form_ = nullptr;
  QComboBox* unit_ = nullptr;
  QComboBox* supervisor_ = nullptr;
  QLabel* said_ = nullptr;
  QString hindered_;  // what stands in the way, as the form says it
};

}  // namespace wm::app
