#pragma once
// What the desk enters for a person: a paper with its last day, a lesson attested, a quiz marked on paper.
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSpinBox>
#include <QWidget>

#include "app/session.h"
#include "app/widgets/date_field.h"

namespace wm::app {

class PaperForm : public QWidget {
  Q_OBJECT
 public:
  enum class Kind { paper, lesson, quiz };

  explicit PaperForm(Session& session, QWidget* parent = nullptr);
  /// `item` is chosen beforehand where the rulebook has it.
  void start(Kind kind, const PersonId& person, const std::string& item);

 signals:
  /// Entered or left: the form is done with.
  void closed();
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void enter();
  Fact fact() const;
  std::optional<Instant> taken_at() const;
  int revision(const std::string& item) const;

  Session& session_;
  Kind kind_ = Kind::paper;
  PersonId person_;
  QLabel *title_, *quiet_;
  QFormLayout* form_;
  QComboBox* item_;
  DateField *last_, *taken_;
  QSpinBox *correct_, *total_, *critical_;
};

}  // namespace wm::app
