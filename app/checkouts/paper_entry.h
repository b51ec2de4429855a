#pragma once
// A check-out that was marked on a printed sheet, taken in from the paper: what stands there, by its number.
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <vector>

#include "app/session.h"
#include "app/widgets/date_field.h"
#include "app/widgets/person_box.h"
#include "core/sheet/sheet.h"

namespace wm::app {

class KeyButton;
class SheetView;

class PaperEntry : public QWidget {
  Q_OBJECT
 public:
  /// `sheets` must outlive it.
  PaperEntry(Session& session, const std::vector<Sheet>& sheets, QWidget* parent = nullptr);
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
  void show_sheet();
  const Sheet* sheet() const;
  Expected<db::EnterPaperSheet> read();
  void enter();

  Session& session_;
  const std::vector<Sheet>& sheets_;
  QLineEdit *form_, *time_, *restrictions_, *note_;
  QComboBox *sheet_, *unit_, *outcome_;
  PersonBox *member_, *assessor_;
  DateField* day_;
  QCheckBox* countersigned_;
  QLabel* said_;
  SheetView* lines_;
};

}  // namespace wm::app
