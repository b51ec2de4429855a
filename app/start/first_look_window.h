#pragma once
// The window while a large shop is being read: somebody can be looked up already.
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>

#include "app/emergency/cover.h"
#include "db/first_look.h"

namespace wm::app {

class FirstLookWindow : public QWidget {
  Q_OBJECT
 public:
  explicit FirstLookWindow(db::FirstLook look);
  /// Who is being looked at; nothing at first.
  const std::optional<PersonId>& person() const { return person_; }
  /// Whether what to do when somebody is hurt is shown just now.
  bool somebody_hurt() const { return cover_->isVisible(); }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* banner();
  void lay_out();
  void list();
  void show_person();
  /// What the person may use, a sentence for each target of the rulebook in force.
  Expected<QStringList> sentences_of(const PersonId& person);

  db::FirstLook look_;
  std::vector<db::Person> people_;  // of joined entries the one that counts
  std::optional<PersonId> person_;
  QLineEdit* search_;
  QListWidget* found_;
  QLabel *name_, *answers_;
  EmergencyCover* cover_;
};

}  // namespace wm::app
