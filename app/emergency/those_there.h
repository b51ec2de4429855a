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
  /// Whom to call for those who were hurt, as far as whoever sits here may read it; drawn again.
  void refresh();
  void clear();

 private:
  struct Line {
    std::optional<PersonId> person;  // nothing: somebody not named
    QString name;
    QWidget* row = nullptr;
    std::array<QCheckBox*, 4> ticks{};
  };

  void add(const std::optional<PersonId>& person);
  void take_out(QWidget* row);
  QString contact(const Line& line) const;

  Session& session_;
  PersonBox* who_;
  QVBoxLayout* rows_;
  QLabel* contacts_;
  std::vector<Line> lines_;
};

}  // namespace wm::app
