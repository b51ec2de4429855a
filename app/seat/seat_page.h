#pragma once
// Who sits here: a name and a PIN.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include "app/page/page.h"
#include "app/widgets/person_box.h"

namespace wm::app {

class SeatPage : public Page {
  Q_OBJECT
 public:
  explicit SeatPage(Session& session, QWidget* parent = nullptr);
  QString id() const override { return "seat"; }
  QString title() const override { return tr("Sit down"); }
  void refresh() override {}
  void open(const Place& place) override;

 signals:
  /// Somebody sat down, or it was left as it was.
  void done();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void sit_down();

  PersonBox* who_;
  QLineEdit* pin_;
  QComboBox* alone_;
};

/// "front desk", "instructor", "manager", "quiz station".
QString role_words(db::Role role);

}  // namespace wm::app
