#include "app/diary/fitting.h"

#include <algorithm>
#include <chrono>
#include <utility>

#include "app/diary/slots.h"
#include "app/diary/why_words.h"

namespace wm::app {
namespace {

using Clock = std::chrono::steady_clock;
constexpr double seconds_in_all = 10, least_to_solve = 1;
// What the solver takes beyond its time until it asks again, why each is left out, and the lists.
constexpr double to_end = 0.8;

double since(Clock::time_point then) { return std::chrono::duration<double>(Clock::now() - then).count(); }

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
  Patience(const std::atomic<bool>& stopped, double seconds, std::function<void(int)> tell)
      : stopped_(stopped), seconds_(seconds), tell_(std::move(tell)), began_(Clock::now()) {}
  bool operator()(Aim aim, const Measures& so_far) {
    if (so_far.served != told_) tell_(static_cast<int>(told_ = so_far.served));
    return !stopped_ && since(began_) < seconds_ * done_by(aim);
  }

 private:
  const std::atomic<bool>& stopped_;
  double seconds_;
  std::function<void(int)> tell_;
  Clock::time_point began_;
  std::int64_t told_ = -1;
};

}  // namespace

Fitting::Fitting(Session& session, QObject* parent) : QObject(parent), session_(session) {
  next_.setInterval(0);
  behind_.setMaxThreadCount(1);
  say_.setInterval(0);
  connect(&next_, &QTimer::timeout, this, &Fitting::gather_one);
  connect(&say_, &QTimer::timeout, this, &Fitting::say_one);
}

Fitting::~Fitting() {
  stopped_ = true;
  behind_.waitForDone();
}

void Fitting::begin(int days) {
  if (going_on_) return;
  going_on_ = true;
  stopped_ = false;
  began_ = Clock::now();
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
  fitted_ = std::make_shared<Fitted>();
  fitted_->question = std::move(*gathering_).done();
  fitted_->lines = lines_;
  said_ = 0;
  solved_ = false;
  say_.start();
  const double seconds = std::max(least_to_solve, seconds_in_all - to_end - since(began_));
  behind_.start([this, seconds, fitted = fitted_] {
    Patience patience(stopped_, seconds, [this](int served) { emit found(served); });
    fitted->proposal = fit_everyone(fitted->question, std::ref(patience));
    fitted->left = left_out(fitted->question, fitted->proposal.placed);
    QMetaObject::invokeMethod(
        this,
        [this] {
          solved_ = true;
          end_if_done();
        },
        Qt::QueuedConnection);
  });
}

/// Whom nothing fits is left out whatever is proposed, so the search for why need not wait for that. It asks
/// the session, which is the window's thread's alone.
void Fitting::say_one() {
  const std::vector<Waiter>& waiters = fitted_->question.waiters;
  const auto some_fit = [&](const Waiter& who) {
    return std::any_of(who.fits.begin(), who.fits.end(), [&](OpeningIndex each) {
      return !fitted_->question.openings[each].assesses(who.person);
    });
  };
  while (said_ < waiters.size() && some_fit(waiters[said_])) ++said_;
  if (said_ == waiters.size()) {
    say_.stop();
    return end_if_done();
  }
  const Wish wish{waiters[said_].person, waiters[said_].target};
  const Day today = session_.zone().day(session_.now());
  fitted_->none[said_] = none_words(session_, slot_question(session_, wish, today, days_), wish);
  ++said_;
}

void Fitting::end_if_done() {
  if (!solved_ || say_.isActive()) return;
  going_on_ = false;
  emit done(std::exchange(fitted_, nullptr));
}

}  // namespace wm::app
