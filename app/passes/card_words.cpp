#include "app/passes/card_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>

#include "app/words/length_words.h"
#include "app/words/words.h"
#include "core/measure/show.h"

namespace wm::app {
namespace {

struct Passes {
  Q_DECLARE_TR_FUNCTIONS(Passes)
};

/// To a tenth of a division or a hundredth of a turn; "about" where that is not exact.
QString counted(const Fraction& number, int decimals) {
  const double value = number.get_d();
  QString text = QLocale().toString(value, 'f', decimals);
  while (text.contains(QLocale().decimalPoint()) &&
         (text.endsWith('0') || text.endsWith(QLocale().decimalPoint())))
    text.chop(1);
  const Fraction scaled = number * fraction(std::lround(std::pow(10, decimals)));
  return scaled.get_den() == 1 ? text : Passes::tr("about %1", "a number").arg(text);
}

QString turns_words(const Fraction& turns) {
  const QString number = counted(turns, 2);
  return turns > 1 ? Passes::tr("%1 turns").arg(number) : Passes::tr("%1 turn").arg(number);
}

QString how_words(PassKind kind) {
  switch (kind) {
    case PassKind::by_scale:
      return Passes::tr("Set by the scale");
    case PassKind::feel:
      return Passes::tr("Find the high spot");
    case PassKind::take:
      return Passes::tr("Take off");
    case PassKind::last:
      return Passes::tr("Last, light");
  }
  return {};
}

QString measure_words(bool before, bool after) {
  if (before && after) return Passes::tr("before and after");
  if (before) return Passes::tr("before");
  return after ? Passes::tr("after") : QString();
}

QString depths_words(const std::vector<DepthForWidth>& depths) {
  QStringList out;
  for (const DepthForWidth& step : depths)
    out << Passes::tr("%1 up to %2 wide", "a depth, a width")
               .arg(length_words(step.deepest), length_words(step.width));
  return out.join(QStringLiteral("; "));
}

QString floor_words(const Inches& off, const Inches& deepest, const Whole& floor) {
  return Passes::tr("Arithmetic: %1 to come off at %2 a pass at most is %3; no plan has fewer passes.")
      .arg(length_words(off), length_words(deepest), QString::fromStdString(floor.get_str()));
}

}  // namespace

std::vector<std::pair<QString, QString>> card_lines(const AnyCard& card) {
  const LimitsCard& limits = limits_of(card);
  std::vector<std::pair<QString, QString>> out{
      {Passes::tr("Deepest pass"), depths_words(limits.depths)},
      {Passes::tr("Shortest stock"),
       limits.shortest ? length_words(*limits.shortest) : Passes::tr("missing: no plan is made without it")},
      {Passes::tr("Thinnest left"), length_words(limits.thinnest)},
      {Passes::tr("Light pass"), Passes::tr("%1 at most", "a depth").arg(length_words(limits.light))},
      {Passes::tr("Scale"), Passes::tr("marks %1 apart, within %2")
                                .arg(length_words(limits.scale_marks), length_words(limits.scale_error))}};
  if (const auto* jointer = std::get_if<JointerCard>(&card))
    out.emplace_back(Passes::tr("Narrowest left by an edge"), length_words(narrowest_left(*jointer)));
  if (const auto* planer = std::get_if<PlanerCard>(&card))
    out.emplace_back(Passes::tr("Wheel"), Passes::tr("%1 a turn, %2 divisions")
                                              .arg(length_words(planer->wheel.turn))
                                              .arg(planer->wheel.divisions));
  return out;
}

QString card_caution() {
  return Passes::tr(
      "As the maker's manual says: where this card and the manual differ, the manual counts, and the card is "
      "to be mended.");
}

QString wheel_words(const WheelMove& move, const Wheel& wheel) {
  const Fraction turns = fraction(move.turns) + move.divisions / wheel.divisions;
  QStringList parts;
  if (move.turns > 0) parts << turns_words(fraction(move.turns));
  if (move.divisions > 0 || move.turns == 0)
    parts << Passes::tr("%1 of %2", "divisions of a wheel")
                 .arg(counted(move.divisions, 1))
                 .arg(wheel.divisions);
  return Passes::tr("%1 (%2)", "turns and divisions, in turns alone")
      .arg(parts.join(Passes::tr(" and ")), turns_words(turns));
}

QString setting_words(const Pass& pass, const Inches& caliper) {
  if (!pass.setting) return {};
  if (pass.kind != PassKind::take) return length_words(*pass.setting);
  const bool metric = to_text(caliper).ends_with("mm");
  return length_words(
      shown(*pass.setting, in_unit(caliper, metric ? LengthUnit::millimetre : LengthUnit::inch)).text);
}

static QString wheel_words(const Pass& pass, const Wheel& wheel) {
  if (pass.kind == PassKind::by_scale) return {};
  return pass.wheel ? wheel_words(*pass.wheel, wheel) : Passes::tr("by what is measured");
}

std::vector<PassLine> pass_lines(const std::vector<Pass>& passes, const Wheel& wheel, const Inches& caliper) {
  std::vector<PassLine> out;
  for (const Pass& pass : passes)
    out.push_back({how_words(pass.kind), setting_words(pass, caliper), wheel_words(pass, wheel),
                   length_words(pass.most), measure_words(pass.measured_before, pass.measured_after)});
  return out;
}

std::vector<PassLine> pass_lines(const JointPlan& plan) {
  std::vector<PassLine> out;
  for (const JointPass& pass : plan.passes)
    out.push_back({pass.last ? Passes::tr("Last, light") : Passes::tr("Set by the scale"),
                   length_words(pass.setting), QString(), length_words(pass.most),
                   Passes::tr("look at it after")});
  return out;
}

static QString board_words(const Stock& stock) {
  return Passes::tr("Board: %1 long, %2 wide, %3 at the thickest place, by a caliper to %4.")
      .arg(length_words(stock.length), length_words(stock.width), length_words(stock.thickest),
           length_words(stock.marks));
}

static QString deepest_words(const Inches& deepest, const Wheel& wheel) {
  return Passes::tr("The deepest pass, %1, is %2 of the wheel, which moves %3 a turn.")
      .arg(length_words(deepest), turns_words(deepest / wheel.turn), length_words(wheel.turn));
}

QStringList plan_sentences(const PassPlan& plan, const Stock& stock, const Wheel& wheel) {
  return {
      board_words(stock),
      Passes::tr("Passes: %1 at most, %2 where the first cuts as much as it can.")
          .arg(plan.passes.size())
          .arg(plan.fewest),
      Passes::tr("Those that find the high spot end as soon as one has cut: measure it there and type what "
                 "is measured, since all that comes after is set by that."),
      floor_words(stock.thickest - stock.final, plan.deepest, plan.floor),
      deepest_words(plan.deepest, wheel)};
}

QStringList plan_sentences(const PassesLeft& left, const Stock& stock, const Inches& measured,
                           const Wheel& wheel) {
  const QString read = length_words(measured), final = length_words(stock.final);
  QStringList out{board_words(stock)};
  if (measured == stock.final)
    return out << Passes::tr("Measured: %1, as asked. Nothing more comes off.", "a size").arg(read);
  if (measured < stock.final)
    return out << Passes::tr("Measured: %1, thinner than the %2 that was asked for. Nothing more comes off.",
                             "two sizes")
                      .arg(read, final);
  const Inches rest = measured - stock.final;
  return out << Passes::tr("Measured where it was cut: %1, so %2 is still to come off.", "two sizes")
                    .arg(read, length_words(rest))
             << Passes::tr(
                    "Turn the wheel on from where it stood for that cut; the scale says nothing any "
                    "more.")
             << Passes::tr(
                    "Passes left: %1. Measure again after any of them, and type that: the rest goes by "
                    "it.")
                    .arg(left.passes.size())
             << floor_words(rest, left.deepest, left.floor) << deepest_words(left.deepest, wheel);
}

QStringList plan_sentences(const JointPlan& plan, const BoardToJoint& board) {
  return {Passes::tr("Board: %1 long, %2 wide, %3 thick.")
              .arg(length_words(board.length), length_words(board.width), length_words(board.thickness)),
          Passes::tr("Passes: %1 where each takes what the scale says; stop as soon as it is flat, and plan "
                     "anew from what is still hollow.")
              .arg(plan.passes.size()),
          floor_words(board.hollow, plan.deepest, plan.floor)};
}

QStringList plan_cautions(bool planer) {
  QStringList out;
  if (planer)
    out << Passes::tr(
               "One face flat and down, no metal, no loose knots; stand to the side, hands away from the "
               "rollers, let it feed.")
        << Passes::tr(
               "Come up to each setting from the side that the maker's manual says. Measure only when "
               "the board is out.");
  else
    out << Passes::tr("Crown up, grain down the cut, guard over all of the cutterhead that is not in use.")
        << Passes::tr("Push blocks: no hand over the cutterhead, none behind the board.");
  return out << Passes::tr("Stop, isolate and wait for it to come to rest before reaching in.")
             << Passes::tr(
                    "This is arithmetic on the card's figures. Local codes, the maker's manual and a "
                    "qualified instructor come first.");
}

}  // namespace wm::app
