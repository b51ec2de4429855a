#include "app/figures/agreed_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/figures/figure_words.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct AgreedWords {
  Q_DECLARE_TR_FUNCTIONS(wm::app::AgreedWords)
};

QString no_kappa(stats::NoKappa why) {
  switch (why) {
    case stats::NoKappa::chance_is_all:
      return AgreedWords::tr(
          "All gave one and the same mark each time. Chance would do that too, so it tells nothing of how "
          "they "
          "judge.");
    case stats::NoKappa::nothing_scored:
      return AgreedWords::tr("Nothing was marked by more than one.");
    case stats::NoKappa::one_category:
    case stats::NoKappa::one_rater:
    case stats::NoKappa::unequal_raters:
      break;
  }
  return AgreedWords::tr("No number can be worked out of these marks.");
}

QString strength(double kappa) {
  switch (stats::strength_of(kappa)) {
    case stats::Strength::poor:
      return AgreedWords::tr("They agree no better than chance");
    case stats::Strength::slight:
      return AgreedWords::tr("They agree slightly beyond chance");
    case stats::Strength::fair:
      return AgreedWords::tr("They agree fairly beyond chance");
    case stats::Strength::moderate:
      return AgreedWords::tr("They agree moderately beyond chance");
    case stats::Strength::substantial:
      return AgreedWords::tr("They agree substantially beyond chance");
    case stats::Strength::almost_perfect:
      return AgreedWords::tr("They agree almost perfectly");
  }
  return {};
}

QString kappa_sentence(const stats::Kappa& kappa) {
  const QString value = number(kappa.kappa, 2);
  const bool perhaps = kappa.kappa > 0 && kappa.interval && kappa.interval->low <= 0;
  const QString words = kappa.kappa <= 0 ? AgreedWords::tr("They agree no better than chance")
                        : perhaps        ? AgreedWords::tr("They may agree no better than chance")
                                         : strength(kappa.kappa);
  if (!kappa.interval)
    return AgreedWords::tr("%1 (kappa %2, and no interval can be worked out).").arg(words, value);
  return AgreedWords::tr("%1 (kappa %2; %3 to %4).", "in words, a number, an interval")
      .arg(words, value, number(kappa.interval->low, 2), number(kappa.interval->high, 2));
}

}  // namespace

QString agreed_sentence(const Agreed& agreed) {
  const QString alike = AgreedWords::tr("Marked alike: %1 of %2.", "how many, of how many")
                            .arg(QString::number(agreed.alike), QString::number(agreed.things));
  const QString none = no_number_words(agreed);
  return alike + ' ' + (none.isEmpty() ? kappa_sentence(*agreed.kappa) : none);
}

QString no_number_words(const Agreed& agreed) {
  if (!agreed.kappa) return no_kappa(agreed.kappa.error());
  if (!agreed.few()) return {};
  return AgreedWords::tr("That is too few to tell agreement from chance: a number is given from %1 on.")
      .arg(least_to_judge);
}

QString agreed_title(const SheetAgreed& sheet) {
  return AgreedWords::tr("%1, sheet revision %2. Performances: %3. Assessors of each: %4.")
      .arg(item_label(sheet.sheet), QString::number(sheet.revision), QString::number(sheet.performances),
           QString::number(sheet.assessors));
}

QString agreed_line(const LineAgreed& line) {
  const QString number = AgreedWords::tr("Line %1").arg(line.line + 1);
  return line.words.empty() ? number
                            : AgreedWords::tr("%1: %2", "a line's number, its words")
                                  .arg(number, QString::fromStdString(line.words));
}

QStringList agreed_explanations(const std::vector<SheetAgreed>& sheets) {
  if (sheets.empty())
    return {
        AgreedWords::tr("No performance has been marked by two assessors here, so there is nothing to "
                        "compare: how far assessors "
                        "agree beyond chance can be told once a second one marks a check-out apart.")};
  return {AgreedWords::tr(
              "Kappa: 1 is perfect agreement, 0 what chance would make by itself. Of two assessors it is "
              "Cohen's, "
              "in which a mark next to the other's counts as half; of more it is Fleiss'. Behind it stands "
              "its 95 % interval."),
          AgreedWords::tr(
              "Lines of one performance hang together, so the interval of a whole sheet is narrower than it "
              "should be. Where nearly everything is marked shown, kappa is low though they hardly differ: "
              "look at how many were marked alike too."),
          AgreedWords::tr(
              "It tells of the sheet and of how assessors read it, not of one of them: talk a line through "
              "that they mark apart from each other, before anybody is blamed.")};
}

}  // namespace wm::app
