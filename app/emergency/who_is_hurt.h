#pragma once
// Who is hurt, and at once whom to call for them.
//
// It is shown whether somebody sits here or not: whoever stands at the desk then may be nobody's colleague,
// and has no PIN in their head; what a family would lose by a minute is more than what a stranger learns by a
// telephone number. That it was shown while nobody sat here is noted in the journal.
#include <QFrame>
#include <QVBoxLayout>
#include <set>

#include "app/widgets/person_box.h"

namespace wm::app {

class WhoIsHurt : public QFrame {
  Q_OBJECT
 public:
  explicit WhoIsHurt(Session& session, QWidget* parent = nullptr);
  /// Whom to call for these, and for nobody else.
  void show_people(std::vector<PersonId> people);
  /// The same once more, after something was entered or somebody sat down or left.
  void refresh();

 signals:
  /// Somebody was chosen here.
  void hurt(const wm::PersonId& person);

 private:
  void write();
  void note_shown();

  Session& session_;
  PersonBox* who_;
  QVBoxLayout* contacts_;
  std::vector<PersonId> people_;
  std::set<PersonId> noted_;  // since nobody sits here
};

}  // namespace wm::app
