#include "app/passes/shown_plan.h"

#include <QCoreApplication>
#include <QLocale>

#include "app/words/labels.h"
#include "app/words/length_words.h"

namespace wm::app {
namespace {

struct Plans {
  Q_DECLARE_TR_FUNCTIONS(Passes)
};

/// Reads one size after another; the first that is none is kept as the problem.
class Sizes {
 public:
  Inches read(const QString& name, const QString& typed) {
    const auto length = read_length(typed.trimmed().toStdString(), plain_unit(), decimal_mark());
    if (length) return in_inches(*length);
    if (!problem_) {
      problem_ = length.error();
      problem_->where = name.toStdString() + ", " + problem_->where;
      problem_->what = Plans::tr("%1: %2", "a field, what is wrong")
                           .arg(name, QString::fromStdString(problem_->what))
                           .toStdString();
    }
    return {};
  }
  const std::optional<Problem>& problem() const { return problem_; }

 private:
  std::optional<Problem> problem_;
};

QString title_for(const IssuedCard& card, const QString& from, const QString& to) {
  return Plans::tr("%1: %2 to %3", "a machine, two sizes").arg(target_label(card.target), from, to);
}

Expected<ShownPlan> planer_plan(const IssuedCard& issued, const PlanerCard& card, const PlanSizes& typed) {
  Sizes sizes;
  const Stock stock{sizes.read(Plans::tr("Length"), typed.length),
                    sizes.read(Plans::tr("Width"), typed.width),
                    sizes.read(Plans::tr("Thickest place"), typed.thickest),
                    sizes.read(Plans::tr("Thicker elsewhere by"), typed.uneven),
                    sizes.read(Plans::tr("Final thickness"), typed.final),
                    sizes.read(Plans::tr("Caliper reads to"), typed.marks)};
  const bool tied = !typed.measured.trimmed().isEmpty();
  const Inches measured =
      tied ? sizes.read(Plans::tr("Measured where it was cut"), typed.measured) : Inches();
  if (sizes.problem()) return tl::make_unexpected(*sizes.problem());
  const QString from = length_words(stock.thickest), to = length_words(stock.final);
  if (tied)
    return passes_left(card, stock, measured).map([&](const PassesLeft& left) {
      return ShownPlan{Plans::tr("%1, measured %2", "a plan, a size")
                           .arg(title_for(issued, from, to), length_words(measured)),
                       plan_sentences(left, stock, measured, card.wheel), plan_cautions(true),
                       pass_lines(left.passes, card.wheel, stock.marks), picture_of(left, stock, measured)};
    });
  return plan_passes(card, stock).map([&](const PassPlan& plan) {
    return ShownPlan{title_for(issued, from, to), plan_sentences(plan, stock, card.wheel),
                     plan_cautions(true), pass_lines(plan.passes, card.wheel, stock.marks),
                     picture_of(plan, stock)};
  });
}

Expected<ShownPlan> jointer_plan(const IssuedCard& issued, const JointerCard& card, const PlanSizes& typed) {
  Sizes sizes;
  const BoardToJoint board{typed.joint,
                           sizes.read(Plans::tr("Length"), typed.length),
                           sizes.read(Plans::tr("Width"), typed.width),
                           sizes.read(Plans::tr("Thickness"), typed.thickest),
                           sizes.read(Plans::tr("Hollow, under a straightedge"), typed.hollow),
                           typed.crown_up,
                           typed.fence_at_90};
  if (sizes.problem()) return tl::make_unexpected(*sizes.problem());
  return plan_joint(card, board).map([&](const JointPlan& plan) {
    const QString joint = board.joint == Joint::face ? Plans::tr("a face") : Plans::tr("an edge");
    const QString hollow = Plans::tr("hollow by %1", "a length").arg(length_words(board.hollow));
    return ShownPlan{Plans::tr("%1: %2, %3", "a machine, a face or an edge, how hollow")
                         .arg(target_label(issued.target), joint, hollow),
                     plan_sentences(plan, board), plan_cautions(false), pass_lines(plan),
                     picture_of(plan, board)};
  });
}

}  // namespace

LengthUnit plain_unit() {
  return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? LengthUnit::inch
                                                                    : LengthUnit::millimetre;
}

bool all_typed(const AnyCard& card, const PlanSizes& sizes) {
  const auto some = [](std::initializer_list<const QString*> texts) {
    return std::ranges::none_of(texts, [](const QString* text) { return text->trimmed().isEmpty(); });
  };
  if (!some({&sizes.length, &sizes.width, &sizes.thickest})) return false;
  return std::holds_alternative<JointerCard>(card) ? some({&sizes.hollow})
                                                   : some({&sizes.uneven, &sizes.final, &sizes.marks});
}

Expected<ShownPlan> shown_plan(const IssuedCard& issued, const PlanSizes& sizes) {
  if (const auto* planer = std::get_if<PlanerCard>(&issued.card)) return planer_plan(issued, *planer, sizes);
  return jointer_plan(issued, std::get<JointerCard>(issued.card), sizes);
}

}  // namespace wm::app
