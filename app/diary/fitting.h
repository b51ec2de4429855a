#pragma once
// Everyone who waits, fitted: gathered a person at a time between other events, worked out on a thread of its
// own, while the window's finds the words for those whom nothing fits. Gathering and working out share ten
// seconds; working out has one of its own at least.
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>
#include <atomic>
#include <chrono>
#include <map>
#include <memory>

#include "app/diary/bookings.h"
#include "core/match/gather.h"
#include "core/match/why.h"

namespace wm::app {

struct Fitted {
  FitQuestion question;
  std::vector<WaitingLine> lines;  // as the question's waiters
  Proposal proposal;
  std::vector<LeftOut> left;
  /// Why nothing fits a waiter even by themselves, as sentences.
  std::map<std::size_t, QString> none;
};

class Fitting : public QObject {
  Q_OBJECT
 public:
  explicit Fitting(Session& session, QObject* parent = nullptr);
  ~Fitting() override;
  /// From now on, for so many days. Nothing where one is going on.
  void begin(int days);
  /// What was found so far is told as the end.
  void stop() { stopped_ = true; }
  bool going_on() const { return going_on_; }

 signals:
  void gathered(int people, int of);
  void found(int served);
  void done(std::shared_ptr<const wm::app::Fitted> fitted);

 private:
  void leave_out_booked();
  void gather_one();
  void solve();
  void say_one();
  void end_if_done();

  Session& session_;
  QTimer next_, say_;
  QThreadPool behind_;
  std::atomic<bool> stopped_ = false;
  bool going_on_ = false;
  int days_ = 14;
  std::vector<WaitingLine> lines_;
  std::size_t taken_ = 0;
  std::unique_ptr<Gathering> gathering_;
  std::chrono::steady_clock::time_point began_;
  std::shared_ptr<Fitted> fitted_;
  std::size_t said_ = 0;  // waiters for whom words were found, or need not be
  bool solved_ = false;
};

}  // namespace wm::app
