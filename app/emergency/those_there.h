#pragma once
// Who was there, and with what part: a line each, and boxes to tick. One person may have several parts.
#include <QCheckBox>
#include <QLabel>
#include <array>
#include <memory>

#include "app/widgets/key_button.h"
#include "app/widgets/person_box.h"
#include "core/problem.h"
#include "db/command.h"

class QVBoxLayout;

namespace wm::app {

class ThoseThere : public QWidget {
  Q_OBJECT
 public:
  struct Parts {
    std::vector<db::Involved> people;
    std::vector<Part> unnamed;
  };

  explicit ThoseThere(Session& session, QWidget* parent = nullptr);
  /// Refuses a line without a part, and a name that is typed and not chosen.
  Expected<Parts> parts();
  /// Somebody who was hurt, ticked as that; the cursor stays where it is.
  void add_hurt(const PersonId& person);
  void clear();

 signals:
  /// Those who are ticked as hurt and named; not where all was cleared.
  void hurt_changed(const std::vector<wm::PersonId>& people);

 private:
  struct Line {
    std::optional<PersonId> person;  // nothing: somebody not named
    QString name;
    QWidget* row = nullptr;
    std::array<QCheckBox*, 4> ticks{};
  };

  /// Somebody who is there already is not added twice.
  Line& line_of(const std::optional<PersonId>& person);
  void add(const std::optional<PersonId>& person);
  QLayout* first_of(Line& line);
  QLayout* ticks_of(Line& line);
  void take_out(QWidget* row);
  void tell_hurt();

  Session& session_;
  PersonBox* who_;
  QVBoxLayout* rows_;
  std::vector<Line> lines_;
};

}  // namespace wm::app
