#include "app/figures/group_table.h"

#include <QCoreApplication>
#include <QLocale>
#include <set>

#include "app/figures/figure_words.h"

namespace wm::app {
namespace {

struct Groups {
  Q_DECLARE_TR_FUNCTIONS(wm::app::Groups)
};

/// A topic has no pass rate of its own.
GroupRow row_of(const QString& name, const teach::PaperFigures& figures, bool topic = false) {
  return {name,
          {QString::number(figures.people),
           topic ? QString() : share_with_interval(figures.passed, figures.people), figure_cell(figures.mean),
           figure_cell(figures.deviation), figure_cell(figures.kr20), figure_cell(figures.kr21),
           figure_cell(figures.alpha), figure_cell(figures.standard_error)}};
}

QString language_name(const std::string& tag) {
  const QString words = QString::fromStdString(tag);
  const QString name = QLocale::languageToString(QLocale(words).language());
  return QLocale(words).language() == QLocale::C ? words : name;
}

}  // namespace

QStringList group_titles() {
  return {Groups::tr("Attempts"), Groups::tr("Passed"), Groups::tr("Mean"),  Groups::tr("Deviation"),
          Groups::tr("KR-20"),    Groups::tr("KR-21"),  Groups::tr("Alpha"), Groups::tr("Standard error")};
}

QStringList group_explanations() {
  return {
      Groups::tr("Attempts are counted, not persons. Passed: by the quiz's own pass mark, with Wilson's 95 % "
                 "interval. Mean, deviation and standard error are in questions."),
      Groups::tr(
          "KR-20, KR-21 and Cronbach's alpha tell how far another paper of the same kind would rank people "
          "alike: 1 is perfect, and at 0 or below scores differ no more than by luck. They need people "
          "who differ: where nearly everybody passes, they are low, and that is no fault of the quiz."),
      Groups::tr("Standard error: about how far a score lies from what the person would have on average over "
                 "many such papers.")};
}

std::vector<GroupRow> group_rows(const teach::BankFigures& bank) {
  std::vector<GroupRow> rows{row_of(Groups::tr("All"), bank.all)};
  if (bank.by_revision.size() > 1)
    for (const auto& [revision, figures] : bank.by_revision)
      rows.push_back(row_of(Groups::tr("Revision %1").arg(revision), figures));
  if (bank.by_language.size() > 1)
    for (const auto& [language, figures] : bank.by_language)
      rows.push_back(row_of(Groups::tr("In %1", "a language").arg(language_name(language)), figures));
  for (const auto& [topic, figures] : bank.by_topic)
    rows.push_back(row_of(QString::fromStdString(topic), figures, true));
  return rows;
}

QStringList missing_sentences(const teach::BankFigures& bank) {
  std::set<teach::NoFigure> why;
  const auto look = [&why](const teach::PaperFigures& figures) {
    for (const teach::Figure* each : {&figures.mean, &figures.deviation, &figures.kr20, &figures.kr21,
                                      &figures.alpha, &figures.standard_error})
      if (!*each) why.insert(each->error());
  };
  look(bank.all);
  for (const auto& [revision, figures] : bank.by_revision) look(figures);
  for (const auto& [language, figures] : bank.by_language) look(figures);
  for (const auto& [topic, figures] : bank.by_topic) look(figures);
  for (const teach::QuestionFigures& each : bank.questions)
    for (const teach::Figure* figure : {&each.with_rest, &each.with_total})
      if (!*figure) why.insert(figure->error());
  QStringList sentences;
  for (const teach::NoFigure each : why) sentences << no_figure_sentence(each);
  return sentences;
}

}  // namespace wm::app
