#pragma once
// A group that had a lesson together: names pasted, who instructed, and what that will come to.
#include <QCheckBox>
#include <QComboBox>
#include <QListWidget>
#include <QPlainTextEdit>

#include "app/lists/form.h"
#include "app/people/match.h"
#include "app/session.h"
#include "app/widgets/date_field.h"

namespace wm::app {

class GroupEntry : public Form {
  Q_OBJECT
 public:
  explicit GroupEntry(Session& session, QWidget* parent = nullptr);
  /// The whole list or nothing; a line that is wrong is the problem.
  Expected<db::Committed> enter();
  /// "12 people had the lesson; 3 of them are new."
  QString done_words() const { return done_; }

 private:
  void add_names();
  void add_lesson();
  void add_instructors();
  db::GroupForm typed() const;
  void preview();
  QString summary(const db::GroupPlan& plan) const;
  QString line_words(const db::GroupLine& line) const;
  QString near_words(const db::Person& entered) const;

  Session& session_;
  std::vector<KnownPerson> known_;
  QPlainTextEdit* names_;
  QComboBox *lesson_, *paper_;
  DateField* until_;
  QListWidget *instructors_, *lines_ = nullptr;
  QLabel* summary_ = nullptr;
  QString done_;
};

}  // namespace wm::app
