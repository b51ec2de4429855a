#pragma once
// The window: the left edge, one page at a time beside it, and the message bar at the foot.
#include <QLabel>
#include <QStackedWidget>
#include <QWidget>
#include <map>
#include <memory>

#include "app/frame/side.h"
#include "app/page/page.h"
#include "app/seat/left_alone.h"
#include "app/widgets/card_reader.h"
#include "app/widgets/message_bar.h"

namespace wm::app {

class KeyButton;
class QuizStation;

class MainWindow : public QWidget {
  Q_OBJECT
 public:
  explicit MainWindow(Session& session, QWidget* parent = nullptr);
  ~MainWindow() override;

  /// Shows the page, made when first asked for.
  void go(const Place& where);
  Page* page(const QString& id);
  Page* current() const;
  MessageBar& messages() { return *messages_; }
  /// Shows the quiz that was being taken when the program ended, if there is one.
  void take_up_quiz();
  /// The quiz station that the desk has opened; null while there is none.
  QuizStation* quiz() { return quiz_.get(); }

 private:
  void add(Page* page);
  void leave_seat_page();
  void show_banner();
  void scanned(const QString& card);
  QWidget* banner();
  QWidget* clock_banner();
  void show_clock(qint64 jump);
  void confirm_clock();
  void open_quiz(const Place& where);
  bool make_quiz();
  void show_quiz();

  Session& session_;
  Side* side_;
  QStackedWidget* stack_;
  MessageBar* messages_;
  QFrame* banner_;
  QLabel* banner_words_;
  QFrame* clock_;  // shown while the clock can't be believed
  QLabel* clock_words_;
  KeyButton* clock_right_;
  CardReader* reader_;
  LeftAlone* left_alone_;
  std::map<QString, Page*> made_;
  QString before_seat_ = "desk";
  std::unique_ptr<QuizStation> quiz_;
};

}  // namespace wm::app
