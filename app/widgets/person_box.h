#pragma once
// A field for one person, for forms: type part of a name, Enter or Down chooses.
#include <QLineEdit>
#include <QListWidget>
#include <functional>
#include <optional>

#include "app/session.h"

namespace wm::app {

/// The field, with those who fit listed below it as one types. `keep` says who may be chosen (nothing:
/// everybody).
class PersonBox : public QWidget {
  Q_OBJECT
 public:
  using Keep = std::function<bool(const db::Person&)>;
  explicit PersonBox(Session& session, Keep keep = {}, QWidget* parent = nullptr);
  std::optional<PersonId> person() const { return chosen_; }
  void set_person(const std::optional<PersonId>& person);
  /// Whether the list shows everybody who may be chosen while nothing is typed.
  void show_all_when_empty(bool all);
  QLineEdit* field() { return field_; }

 signals:
  void chosen();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void list();
  void choose(int row);

  Session& session_;
  Keep keep_;
  QLineEdit* field_;
  QListWidget* list_;
  std::optional<PersonId> chosen_;
  bool all_ = false;
};

}  // namespace wm::app
