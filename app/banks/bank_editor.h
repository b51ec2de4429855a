#pragma once
// A bank's text, with what stands in its way, what it changes, and each question as the member sees it.
#include <QLabel>
#include <QPlainTextEdit>
#include <QTimer>

#include "app/banks/bank_problems.h"
#include "app/banks/question_preview.h"
#include "app/lists/list_view.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"

namespace wm::app {

class BankEditor : public QWidget {
  Q_OBJECT
 public:
  explicit BankEditor(Session& session, QWidget* parent = nullptr);

  /// `may_issue`: else the text can only be read. `instead`: the text as it was left before, shown in its
  /// place.
  void open(const BankFile& file, bool may_issue, const std::optional<BankFile>& instead = std::nullopt);
  BankFile file() const;
  /// Looks at the text once more, since what it is compared with may have changed.
  void look_again();
  void take_cursor();

 signals:
  /// Back to the list of banks.
  void left();
  /// A revision was issued and published.
  void issued(const QString& sentence);
  void refused(const wm::Problem& problem);
  void save_wanted();
  /// The text was typed in, and is another than the one that was opened; or it is that one again.
  void typed(bool another);

 private:
  QWidget* right_side();
  QWidget* foot();
  void show_problems();
  void show_question();
  void show_effects();
  void go_to_problem(const QString& id);
  void issue();
  /// The text that was opened again; what was typed comes back with Undo.
  void start_over();
  std::optional<Instant> counts_from() const;

  Session& session_;
  QPlainTextEdit* text_;
  ListView* problems_;
  QLabel *state_, *effects_;
  QuestionPreview* preview_;
  QWidget* issuing_;
  QLineEdit* changed_;
  DateField* from_;
  KeyButton *issue_, *save_, *start_over_, *leave_;
  QString opened_;
  std::vector<db::Enclosure> pictures_;
  std::vector<BankRevision> issued_;
  BankLook look_;
  std::string previewed_;
  QTimer soon_;
};

}  // namespace wm::app
