#pragma once
// What would serve the most of those whom a proposal leaves out: hours of one more assessor, weekday by
// weekday. Gathered a person at a time between other events, worked out on a thread of its own.
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <map>
#include <memory>

#include "app/diary/fitting.h"

namespace wm::app {

/// One more who assesses a machine class and is in on a weekday (0 = Monday), whenever the shop is open.
struct Help {
  std::string machine_class;
  int weekday = 0;
  std::size_t serves = 0;
};

class Helping : public QObject {
  Q_OBJECT
 public:
  explicit Helping(Session& session, QObject* parent = nullptr);
  ~Helping() override;
  /// Leaves off what was begun before.
  void begin(std::shared_ptr<const wm::app::Fitted> fitted, int days);
  void stop();

 signals:
  /// The best weekday of each class, the most served first; those that would serve nobody left out.
  void helped(const std::vector<wm::app::Help>& helps);

 private:
  using Kind = std::pair<std::string, int>;  // a class, a weekday
  void gather_one();
  void work_out();
  void add(std::size_t waiter, const Slot& slot);

  Session& session_;
  QTimer next_;
  QThreadPool behind_;
  std::shared_ptr<const Fitted> fitted_;
  int days_ = 0;
  std::size_t taken_ = 0;
  int begun_ = 0;  // so that what was left off is not told
  std::map<Kind, Extra> extras_;
  std::map<std::tuple<Kind, Instant, MachineId, PersonId>, OpeningIndex> openings_;
};

/// "Hours every Saturday of one more able to assess Lathe would serve 7 people.", a line each.
QString help_words(const std::vector<Help>& helps);

}  // namespace wm::app
