#pragma once
// A pass plan: sizes typed at the left, the passes one by one, and the drawing.
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>

#include "app/passes/plan_paper.h"
#include "app/passes/shown_plan.h"

namespace wm::app {

class KeyButton;

class PlanView : public QWidget {
  Q_OBJECT
 public:
  explicit PlanView(Session& session, QWidget* parent = nullptr);

  /// With the card of that target, or of its class, or with none where there is none. `of`: whose board it
  /// is, the key of a one-on-one; what was typed of another's, or where it says nothing, is gone. `final` is
  /// what the piece is to become, where a sheet says so.
  void begin(const std::string& of, const TargetName& target, const std::optional<Length>& final);
  /// The cards again, and the plan under them.
  void refresh();
  void save_pdf(const QString& path);

 signals:
  void left();
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);

 private:
  QWidget* make_fields();
  QWidget* make_plan();
  QWidget* make_buttons();
  QLineEdit* size_field(const QString& words, const char* name);
  void fill_machines(const TargetName& wanted);
  void clear_sizes();
  /// Of another board, joint or machine nothing was looked at, and nothing measured.
  void forget_what_was_seen();
  QString why_no_card() const;
  const IssuedCard* card() const;
  PlanSizes sizes() const;
  void show_fields();
  void show_plan();
  void show_lines(const std::vector<PassLine>& lines);
  PlanPaper paper() const;
  void ask_for_path();
  void print();
  void note(const PlanPaper& paper);

  Session& session_;
  std::vector<IssuedCard> cards_;
  std::optional<ShownPlan> plan_;
  std::string of_;
  TargetName wanted_;

  QComboBox *machine_, *joint_;
  QLineEdit *length_, *width_, *thickest_, *uneven_, *final_, *marks_, *measured_, *hollow_;
  QCheckBox *crown_, *fence_;
  std::vector<std::pair<QLineEdit*, QWidget*>> rows_;  // a size and what holds it with its name
  QWidget* joint_row_;
  QLabel *title_, *card_words_, *said_, *cautions_;
  QTableWidget* lines_;
  PlanDrawing* drawing_;
  KeyButton *pdf_, *print_;
};

}  // namespace wm::app
