#pragma once
// The Diary: what is booked and what would fit, in order of time; the day by machine; who waits.
#include <QComboBox>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QStackedWidget>
#include <optional>

#include "app/diary/diary_delegate.h"
#include "app/diary/diary_rows.h"
#include "app/page/page.h"

namespace wm::app {

class DateField;
class DayStrip;
class FitView;
class KeyButton;
class PersonBox;
class WaitingList;

class DiaryPage : public Page {
  Q_OBJECT
 public:
  explicit DiaryPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("diary"); }
  QString title() const override { return tr("Diary"); }
  void refresh() override;
  void open(const Place& place) override;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* make_diary();
  QWidget* make_choice();
  QWidget* make_list();
  QWidget* make_side();
  QWidget* make_actions();

  void choose_person(const PersonId& person);
  void choose_target(const TargetName& target);
  Wish wish() const;
  void fill_targets();
  void fill_list();
  QString words_of_wrong();
  void say_what_is_shown(bool some_slot);
  void show_selected();
  void show_turnout_buttons(const BookingLine* line);
  void select_again(const std::optional<RecordId>& booking, const std::optional<Slot>& slot);
  const DiaryRow* selected() const;
  Day first() const;

  void book();
  void book_slot(const Slot& slot, std::optional<Instant> held_through);
  // In diary_life.cpp: what becomes of a booking.
  void show_life_buttons(const DiaryRow* row);
  QString standing_of_member() const;
  void hold();
  void confirm(const BookingLine& line);
  void begin_move();
  void keep_time();
  bool may_swap(const DiaryRow& row) const;
  void swap(const BookingLine& other);
  std::optional<BookingLine> moved_line() const;
  void copy_reminder();
  void print_day();
  /// Whether every part of a booking is still free, and the rules still allow it.
  bool still_fits(const db::Booking& booking);
  void fit_everyone();
  void book_all(const std::vector<db::Booking>& ticked);
  void back_to_the_diary();
  void turned_out(db::Turnout turnout);
  void ask_reason();
  void cancel();
  void wait_or_not();
  /// Commits, and says what was done or why not.
  bool enter(db::ShopFact fact, const QString& done);

  QStackedWidget* views_;
  FitView* fit_;
  PersonBox* person_;
  QComboBox *target_, *purpose_;
  DateField* day_;
  QLabel *heading_, *under_, *why_not_;
  QListView* list_;
  DiaryRows* rows_;
  DiaryDelegate* delegate_;
  QLabel *strip_heading_, *waiting_heading_;
  DayStrip* strip_;
  WaitingList* waiting_;
  KeyButton *hold_, *move_, *keep_, *remind_, *print_;
  QLabel* trouble_;
  KeyButton *book_, *fit_everyone_, *wait_, *arrived_, *late_, *not_come_, *cancel_;
  QLineEdit* reason_;

  PersonId member_;
  TargetName chosen_target_;
  RecordId moved_;  // the booking that another time is looked for
  std::optional<Day> first_;
};

}  // namespace wm::app
