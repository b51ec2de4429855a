#pragma once
// Figures: what the answers to quizzes say of the quizzes, the questions to look at first on top. For
// instructors and managers, since it tells which answers are right.
#include <QLabel>
#include <QScrollArea>
#include <QThreadPool>

#include "app/figures/sat_texts.h"
#include "app/lists/list_view.h"
#include "app/page/page.h"
#include "app/widgets/key_button.h"
#include "core/sheet/agreed.h"
#include "core/teach/bank_figures.h"

namespace wm::app {

class FiguresPage : public Page {
  Q_OBJECT
 public:
  explicit FiguresPage(Session& session, QWidget* parent = nullptr);
  /// What is being worked out is finished first.
  ~FiguresPage() override;

  QString id() const override { return QStringLiteral("figures"); }
  QString title() const override { return tr("Figures"); }
  void refresh() override;
  void open(const Place& place) override;

  /// Write all of it; say so, or why not.
  void save_csv(const QString& path);
  void save_pdf(const QString& path);

 signals:
  /// The figures of what is known have been worked out and are shown.
  void worked_out();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* head();
  KeyButton* button(const char* name, const QString& words, const QKeySequence& key,
                    void (FiguresPage::*act)());
  bool may_look() const;
  void take(std::vector<teach::BankFigures> figures);
  void show_rows();
  void show_chosen();
  void show_words(const QString& words);
  QString summary() const;
  void ask_for_csv();
  void ask_for_pdf();
  void print();

  QLabel* summary_;
  ListView* list_;
  QScrollArea* view_;
  std::vector<KeyButton*> buttons_;
  std::optional<SatTexts> texts_;  // that `figures_` are of, or will be
  std::vector<teach::BankFigures> figures_;
  std::vector<MarkedTwice> marked_;
  std::vector<SheetAgreed> agreed_;  // out of `marked_`
  bool working_ = false;
  int asked_ = 0;  // counts the times that figures were asked for
  QThreadPool behind_;
};

}  // namespace wm::app
