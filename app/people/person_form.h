#pragma once
// The details of one person, new or corrected, with likely doubles shown while they are typed.
#include <QLabel>
#include <QPushButton>

#include "app/lists/form.h"
#include "app/people/match.h"
#include "app/widgets/date_field.h"

namespace wm::app {

class PersonForm : public Form {
  Q_OBJECT
 public:
  /// `before`: whose details are corrected; nothing: somebody new, who is asked for a birth date.
  PersonForm(std::vector<KnownPerson> known, const std::optional<db::Person>& before, Day today,
             QWidget* parent = nullptr);

  db::Person person() const;
  /// As typed now; nothing where it is empty or no date.
  std::optional<Day> born() const;
  /// What can't be saved as it stands: no name at all, or a birth date that is none.
  std::optional<Problem> mistake() const;
  const std::vector<LikelyDouble>& doubles() const { return doubles_; }

 signals:
  /// The likeliest double is the person meant.
  void take_double(const wm::PersonId& person);

 private:
  void look_for_doubles();
  QString double_line(const LikelyDouble& found) const;

  std::vector<KnownPerson> known_;
  db::Person before_;
  Day today_;
  QLineEdit *given_, *family_, *nickname_, *number_, *card_, *email_, *phone_, *emergency_;
  DateField* born_ = nullptr;
  QLabel* found_;
  QPushButton* take_;
  std::vector<LikelyDouble> doubles_;
};

}  // namespace wm::app
