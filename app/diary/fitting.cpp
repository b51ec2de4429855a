#include "app/diary/fitting.h"

#include <algorithm>
#include <chrono>

#include "app/diary/slots.h"

namespace wm::app {
namespace {

using Clock = std::chrono::steady_clock;
constexpr double seconds_given = 10;

Day next_monday(Day day) { return day + (7 - ((day.number + 3) % 7)); }

FitQuestion whole(Session& session, Day today, int days) {
  FitQuestion out;
  out.zone = session.zone();
  // Whoever is at a machine just now gives no one-on-one; that they are not free is in each one's question.
  out.booked =
      session.store().booked({session.now() - 2 * 86400, session.zone().start(today + days) + 2 * 86400});
  out.limits = limits_of(session.store().hours());
  out.longest_wait = session.store().diary_rules().longest_wait.value_or(out.longest_wait);
  out.next_week = session.zone().start(next_monday(today));
  return out;
}

/// Goes on until time is up for an aim, or somebody stops it. `tell` hears of every better count.
class Patience {
 public:
  Patience(const std::atomic<bool>& stopped, std::function<void(int)> tell)
      : stopped_(stopped), tell_(std::move(tell)), began_(Clock::now()) {}
  bool operator()(Aim aim, const Measures& so_far) {
    if (so_far.served != told_) tell_(static_cast<int>(told_ = so_far.served));
    const double passed = std::chrono::duration<double>(Clock::now() - began_).count();
    return !stopped_ && passed < seconds_given * done_by(aim);
  }

 private:
  const std::atomic<bool>& stopped_;
  std::function<void(int)> tell_;
  Clock::time_point began_;
  std::int64_t told_ = -1;
};

}  // namespace

Fitting::Fitting(Session& session, QObject* parent) : QObject(parent), session_(session) {
  next_.setInterval(0);
  behind_.setMaxThreadCount(1);
  connect(&next_, &QTimer::timeout, this, &Fitting::gather_one);
}

Fitting::~Fitting() {
  stopped_ = true;
  behind_.waitForDone();
}

void Fitting::begin(int days) {
  if (going_on_) return;
  going_on_ = true;
  stopped_ = false;
  days_ = days;
  taken_ = 0;
  lines_ = waiting(session_);
  leave_out_booked();
  gathering_ = std::make_unique<Gathering>(whole(session_, session_.zone().day(session_.now()), days_),
                                           session_.now());
  next_.start();
}

/// Whoever has a time, certain or held, to be checked out there needs no other.
void Fitting::leave_out_booked() {
  const std::vector<BookingLine> to_come = bookings(session_, {session_.now(), last_instant});
  std::erase_if(lines_, [&](const WaitingLine& line) {
    return std::any_of(to_come.begin(), to_come.end(), [&](const BookingLine& each) {
      return each.booking.purpose == db::Purpose::check_out && each.turnout != db::Turnout::not_come &&
             !each.signed_as &&
             session_.joined(each.booking.person) == session_.joined(line.waiting.person) &&
             class_of(each.booking.target) == class_of(line.waiting.target);
    });
  });
}

void Fitting::gather_one() {
  if (taken_ == lines_.size() || stopped_) {
    lines_.resize(taken_);
    next_.stop();
    return solve();
  }
  const WaitingLine& line = lines_[taken_];
  const Day today = session_.zone().day(session_.now());
  const int waited = today.number - session_.zone().day(line.since).number;
  gathering_->add(slot_question(session_, {line.waiting.person, line.waiting.target}, today, days_),
                  line.waiting.target, std::max(0, waited));
  ++taken_;
  emit gathered(static_cast<int>(taken_), static_cast<int>(lines_.size()));
}

void Fitting::solve() {
  auto fitted = std::make_shared<Fitted>();
  fitted->question = std::move(*gathering_).done();
  fitted->lines = lines_;
  behind_.start([this, fitted] {
    Patience patience(stopped_, [this](int served) { emit found(served); });
    fitted->proposal = fit_everyone(fitted->question, std::ref(patience));
    fitted->left = left_out(fitted->question, fitted->proposal.placed);
    QMetaObject::invokeMethod(
        this,
        [this, fitted] {
          going_on_ = false;
          emit done(fitted);
        },
        Qt::QueuedConnection);
  });
}

}  // namespace wm::app
