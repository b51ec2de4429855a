#pragma once
// A run sheet that was marked on paper, taken in by its number: a check-out, or what a second assessor marked
// apart.
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <vector>

#include "app/sheets/sheet_book.h"
#include "app/widgets/date_field.h"
#include "app/widgets/person_box.h"

namespace wm::app {

class KeyButton;
class SheetView;

class PaperEntry : public QWidget {
  Q_OBJECT
 public:
  /// `book` must outlive it.
  PaperEntry(Session& session, SheetBook& book, QWidget* parent = nullptr);
  /// Begins with empty fields and the cursor in the number.
  void begin();

 signals:
  void left();
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);

 private:
  QWidget* fields();
  QWidget* paper();
  void fill_sheets();
  /// The sheet that was printed with the number typed.
  void choose_printed();
  void show_sheet();
  const Sheet* sheet() const;
  void show_kind();
  /// Whether two assessors signed it, by the rules of when it was; of today while that is not typed.
  bool asks_for_two() const;
  Expected<db::EnterPaperSheet> read();
  Expected<db::ScoredApart> read_apart(Instant at);
  /// What stands on the paper beside its marks: number, sheet, member, unit, who signed.
  Expected<void> check_paper();
  std::string number() const;
  /// When it was, by the paper; tells the problem where that can't be said.
  std::optional<Instant> moment();
  void enter();
  void enter_apart(Instant at);

  Session& session_;
  SheetBook& book_;
  std::vector<const Sheet*> sheets_;  // as they stand in the list
  QLineEdit *form_, *time_, *restrictions_, *note_;
  QComboBox *sheet_, *unit_, *outcome_;
  PersonBox *member_, *assessor_, *second_;
  DateField* day_;
  QCheckBox *countersigned_, *apart_;
  std::vector<QWidget*> of_two_;        // shown where two assessors signed
  std::vector<QWidget*> of_the_first_;  // what only the first assessor's paper has
  QLabel *said_, *how_;
  SheetView* lines_;
};

}  // namespace wm::app
