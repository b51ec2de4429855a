#pragma once
// The proposal for everyone who waits: what is ticked is booked, and nothing that is not seen here.
#include <QLabel>
#include <QListWidget>

#include "app/diary/helping.h"

namespace wm::app {

class KeyButton;

class FitView : public QWidget {
  Q_OBJECT
 public:
  explicit FitView(Session& session, QWidget* parent = nullptr);
  void begin();

 signals:
  void left();
  void book(const std::vector<wm::db::Booking>& ticked);

 private:
  void show_proposal(std::shared_ptr<const Fitted> fitted);
  void add_left_out(const LeftOut& each);
  void leave();
  void count_ticked();
  std::vector<db::Booking> ticked() const;

  Session& session_;
  Fitting fitting_;
  Helping helping_;
  std::shared_ptr<const Fitted> fitted_;
  QLabel *state_, *left_heading_, *helps_;
  QListWidget *proposal_, *left_out_;
  KeyButton *book_, *leave_;
};

}  // namespace wm::app
