#pragma once
// Everyone who waits, fitted: gathered a person at a time between other events, worked out on a thread of its
// own.
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <atomic>
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

  Session& session_;
  QTimer next_;
  QThreadPool behind_;
  std::atomic<bool> stopped_ = false;
  bool going_on_ = false;
  int days_ = 14;
  std::vector<WaitingLine> lines_;
  std::size_t taken_ = 0;
  std::unique_ptr<Gathering> gathering_;
};

}  // namespace wm::app
