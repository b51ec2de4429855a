#include "core/match/fit.h"

#include "core/match/model.h"

namespace wm {
namespace {

using match::Model;
using match::Values;

std::int64_t sign(Aim aim) { return aim == Aim::trips || aim == Aim::gaps ? -1 : 1; }

class Fitting {
 public:
  Fitting(const FitQuestion& question, const GoOn& go_on)
      : question_(question), go_on_(go_on), indexed_(question), model_(indexed_) {
    take(model_.rounded({}));
  }

  Proposal run() {
    for (const Aim aim : all_aims) {
      if (aim == Aim::trips) {
        model_.add_days();
        take(model_.fewer_trips(best_.placed));
      }
      const auto open = settle(aim);
      if (!best_.open) best_.open = open;
      model_.keep(aim, sum(aim));
    }
    return best_;
  }

 private:
  /// What the program's sum is at the best so far.
  std::int64_t sum(Aim aim) const { return sign(aim) * of(best_.measures, aim) - model_.beside(aim); }

  void take(std::vector<Placed> placed) {
    const Measures measures = measure(question_, placed);
    if (!best_.placed.empty() && !better(measures, best_.measures)) return;
    best_.placed = std::move(placed);
    best_.measures = measures;
  }

  std::optional<Proposal::Open> settle(Aim aim) {
    const Values begin = model_.values(best_.placed);
    const auto round = [&](const Values& relaxed) -> std::optional<Values> {
      const std::vector<Placed> placed = model_.rounded(relaxed);
      take(placed);
      return allowed_before(aim, measure(question_, placed)) ? std::optional(model_.values(placed))
                                                             : std::nullopt;
    };
    const auto terms = model_.sum(aim);
    // Relaxed answers take half days, which no assessor can come for.
    const bool cuts = aim == Aim::trips || aim == Aim::gaps;
    const auto found =
        model_.program.most(terms, begin, {round, [&] { return go_on_(aim, best_.measures); }, cuts});
    if (found.better) take(model_.placed(*found.better));
    // What is shown as the best is counted in whole numbers, not as the solver has it.
    if (found.bound && sum(aim) >= static_cast<std::int64_t>(*found.bound)) return std::nullopt;
    if (!found.bound) return Proposal::Open{aim, std::nullopt};
    return Proposal::Open{aim, sign(aim) * (static_cast<std::int64_t>(*found.bound) + model_.beside(aim))};
  }

  /// As good as the best so far in all aims before this one, as the program asks.
  bool allowed_before(Aim aim, const Measures& measures) const {
    for (const Aim before : all_aims) {
      if (before == aim) return true;
      if (sign(before) * (of(measures, before) - of(best_.measures, before)) < 0) return false;
    }
    return true;
  }

  const FitQuestion& question_;
  const GoOn& go_on_;
  match::Indexed indexed_;
  Model model_;
  Proposal best_;
};

}  // namespace

double done_by(Aim aim) {
  switch (aim) {
    case Aim::first:
      return 0.3;
    case Aim::served:
      return 0.5;
    case Aim::waited:
      return 0.55;
    case Aim::trips:
      return 0.85;
    case Aim::gaps:
      break;
  }
  return 1;
}

Proposal fit_everyone(const FitQuestion& question, const GoOn& go_on) {
  return Fitting(question, go_on).run();
}

}  // namespace wm
