#pragma once
// The text of a question bank or a run sheet, with what stands in its way, what it changes, and how it is
// seen in the end.
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTimer>

#include "app/lists/list_view.h"
#include "app/session.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"
#include "app/works/work_files.h"
#include "app/works/work_text.h"

namespace wm::app {

class WorkEditor : public QWidget {
  Q_OBJECT
 public:
  /// `may_issue`: else the text can only be read. `instead`: the text as it was left before, shown in its
  /// place.
  void open(const WorkFile& file, bool may_issue, const std::optional<WorkFile>& instead = std::nullopt);
  WorkFile file() const;
  /// Looks at the text once more, since what it is compared with may have changed.
  void look_again();
  void take_cursor();

 signals:
  /// Back to the list.
  void left();
  /// A revision was issued and published.
  void issued(const QString& sentence);
  void refused(const wm::Problem& problem);
  void save_wanted();
  /// The text was typed in, and is another than the one that was opened; or it is that one again.
  void typed(bool another);

 protected:
  /// `kind` ("bank") begins the objects' names; `text` and `seen` say what the field and the picture beside
  /// it are, `back` where Escape leads.
  struct Words {
    const char* kind;
    QString text, seen, back;
  };
  WorkEditor(Session& session, const Words& words, QWidget* preview, QWidget* parent);

  /// A revision that can be issued. `item`: what is published with it.
  struct Ready {
    db::Issued work;
    std::string item;
    bool published = false;  // it is already, so that only its text is issued
  };

  Session& session() const { return session_; }
  bool read_only() const { return text_->isReadOnly(); }
  /// Reads it: what stands in the way of issuing it.
  virtual std::vector<WorkProblem> look(const WorkFile& file) = 0;
  /// What that changes and, where it can be issued to count `from` then, for whom.
  virtual QStringList effects(std::optional<Instant> from) = 0;
  /// `line`: where the cursor stands, from 1. `anew`: the text may be another one.
  virtual void show_preview(int line, bool anew) = 0;
  /// What was looked at last, where nothing stands in its way.
  virtual Ready ready(const WorkFile& file, const std::string& news) const = 0;

 private:
  QWidget* right_side(QWidget* preview, const Words& words);
  QWidget* foot(const Words& words);
  void show_problems();
  void show_effects();
  void show_seen(bool anew);
  void go_to_problem(const QString& id);
  void issue();
  /// The text that was opened again; what was typed comes back with Undo.
  void start_over();
  std::optional<Instant> counts_from() const;

  Session& session_;
  QPlainTextEdit* text_;
  ListView* problems_;
  QLabel *state_, *effects_;
  QWidget* issuing_;
  QLineEdit* changed_;
  DateField* from_;
  KeyButton *issue_, *save_, *start_over_, *leave_;
  QString opened_;
  std::vector<db::Enclosure> pictures_;
  std::vector<WorkProblem> found_;
  QTimer soon_;
};

}  // namespace wm::app
