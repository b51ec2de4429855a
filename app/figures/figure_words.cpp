#include "app/figures/figure_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "app/words/listing.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct FigureWords {
  Q_DECLARE_TR_FUNCTIONS(wm::app::FigureWords)
};

QString why_none(teach::NoFigure why) {
  switch (why) {
    case teach::NoFigure::nobody:
      return FigureWords::tr("nobody");
    case teach::NoFigure::one_person:
      return FigureWords::tr("one attempt");
    case teach::NoFigure::one_question:
      return FigureWords::tr("one question");
    case teach::NoFigure::all_alike:
      return FigureWords::tr("all alike");
    case teach::NoFigure::other_questions:
      return FigureWords::tr("drawn papers");
    case teach::NoFigure::other_lengths:
      return FigureWords::tr("other lengths");
  }
  return {};
}

QString percent(double share) { return QString::number(std::lround(share * 100)); }

/// Inside of a sentence, which has a full stop of its own.
QString quoted_choice(const teach::Wording* wording, std::size_t choice) {
  QString words = choice_words(wording, choice);
  if (words.endsWith('.')) words.chop(1);
  return words;
}

}  // namespace

QString number(double value, int decimals) {
  const QString text = QLocale().toString(std::abs(value), 'f', decimals);
  const bool nothing = QString::number(std::abs(value), 'f', decimals).toDouble() == 0;
  return value < 0 && !nothing ? QChar(0x2212) + text : text;
}

QString figure_cell(const teach::Figure& figure, int decimals) {
  return figure ? number(*figure, decimals) : why_none(figure.error());
}

QString no_figure_sentence(teach::NoFigure why) {
  const auto with = [why](const QString& rest) {
    return FigureWords::tr("%1: %2", "two words that stand for a figure, why there is none")
        .arg(capital(why_none(why)), rest);
  };
  switch (why) {
    case teach::NoFigure::nobody:
      return with(FigureWords::tr("there is no attempt."));
    case teach::NoFigure::one_person:
      return with(FigureWords::tr("it takes two at least."));
    case teach::NoFigure::one_question:
      return with(FigureWords::tr("there is nothing beside it to compare it with."));
    case teach::NoFigure::all_alike:
      return with(FigureWords::tr("where nobody differs, nothing can be told apart."));
    case teach::NoFigure::other_questions:
      return with(FigureWords::tr("this figure needs everybody to have been asked the same questions."));
    case teach::NoFigure::other_lengths:
      return with(FigureWords::tr("this figure needs papers of one length."));
  }
  return {};
}

QString share_words(std::size_t count, std::size_t of) {
  if (of == 0) return FigureWords::tr("nobody");
  // Neither all nor none where that is not so.
  if (count < of && count * 200 >= of * 199) return FigureWords::tr("over 99 %");
  if (count > 0 && count * 200 < of) return FigureWords::tr("under 1 %");
  return FigureWords::tr("%1 %", "a percentage")
      .arg(percent(static_cast<double>(count) / static_cast<double>(of)));
}

QString share_with_interval(std::size_t count, std::size_t of) {
  const auto interval = stats::wilson(count, of);
  if (!interval) return share_words(count, of);
  return FigureWords::tr("%1 (%2 to %3 %)", "a percentage, the interval it lies in")
      .arg(share_words(count, of), percent(interval->low), percent(interval->high));
}

QString choice_words(const teach::Wording* wording, std::size_t choice) {
  if (wording && choice < wording->choices.size()) return QString::fromStdString(wording->choices[choice]);
  return FigureWords::tr("choice %1").arg(choice + 1);
}

const teach::Wording* shown_wording(const teach::Question* question) {
  if (!question || question->wordings.empty()) return nullptr;
  const auto* own = teach::wording_of(*question, QLocale().bcp47Name().section('-', 0, 0).toStdString());
  return own ? own : &question->wordings.front();
}

QString doubt_sentence(const teach::Reason& reason, const teach::QuestionFigures& figures,
                       const teach::Wording* wording) {
  switch (reason.doubt) {
    case teach::Doubt::strong_miss_it:
      return FigureWords::tr("The best members get this wrong more often than the weakest.");
    case teach::Doubt::strong_choose_wrong:
      return FigureWords::tr(
                 "The better somebody did on the rest of the paper, the more likely it was that they chose "
                 "\u201c%1\u201d, which counts as wrong.")
          .arg(quoted_choice(wording, reason.choice.value_or(0)));
    case teach::Doubt::below_guessing:
      return FigureWords::tr("Fewer get this right than would by guessing: %1, where guessing gives %2.")
          .arg(share_words(figures.right, figures.asked), share_words(1, figures.choices.size()));
    case teach::Doubt::tells_nothing:
      return FigureWords::tr("Strong and weak members get this right about alike.");
    case teach::Doubt::never_chosen:
      return FigureWords::tr("Nobody ever chose \u201c%1\u201d.")
          .arg(quoted_choice(wording, reason.choice.value_or(0)));
  }
  return {};
}

QString doubt_advice(teach::Doubt doubt) {
  switch (doubt) {
    case teach::Doubt::strong_miss_it:
    case teach::Doubt::strong_choose_wrong:
      return FigureWords::tr("See whether the key is right, and whether another choice is right as well.");
    case teach::Doubt::below_guessing:
      return FigureWords::tr("See whether its words are understood, and whether the lesson says the answer.");
    case teach::Doubt::tells_nothing:
      return FigureWords::tr("See whether it asks for what matters, and in plain words.");
    case teach::Doubt::never_chosen:
      return FigureWords::tr("A wrong choice that tempts nobody could as well be left out.");
  }
  return {};
}

QString question_sentence(const teach::QuestionFigures& figures) {
  return FigureWords::tr("Right: %1 of %2, %3. With the rest of the paper: %4. With the whole paper: %5.")
      .arg(QString::number(figures.right), QString::number(figures.asked),
           share_with_interval(figures.right, figures.asked), figure_cell(figures.with_rest),
           figure_cell(figures.with_total));
}

}  // namespace wm::app
