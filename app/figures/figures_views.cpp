#include "app/figures/figures_views.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <algorithm>

#include "app/figures/agreed_words.h"
#include "app/figures/charts.h"
#include "app/figures/figure_words.h"
#include "app/figures/figures_page.h"
#include "app/figures/group_table.h"
#include "app/figures/question_card.h"
#include "app/theme/theme.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

/// A column of words and cards, from top to bottom.
class Column {
 public:
  Column() : widget_(new QWidget), layout_(new QVBoxLayout(widget_)) {
    layout_->setContentsMargins(0, 0, 10, 0);
    layout_->setSpacing(10);
  }
  void say(const char* role, const QString& words) {
    if (words.isEmpty()) return;
    QLabel* label = role_label(role, words);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    layout_->addWidget(label);
  }
  void section(const QString& words) {
    layout_->addSpacing(8);
    say("heading", words);
  }
  void add(QWidget* widget) {
    if (widget) layout_->addWidget(widget);
  }
  QWidget* done() {
    layout_->addStretch(1);
    return widget_;
  }

 private:
  QWidget* widget_;
  QVBoxLayout* layout_;
};

bool is_wrong(const teach::LookAt& look) { return look.reasons.front().doubt < teach::Doubt::tells_nothing; }

QString little_sentence(const teach::LookIn& in) {
  const auto& figures = in.look->figures;
  const teach::Wording* wording =
      shown_wording(teach::question_of(*in.bank, figures.question, figures.revision));
  return FiguresPage::tr("%1: %2 %3", "a quiz, a question, what is odd about it")
      .arg(item_label(in.bank->bank),
           wording ? QString::fromStdString(wording->text) : QString::fromStdString(figures.question),
           doubt_sentence(in.look->reasons.front(), figures, wording));
}

QLabel* cell(const QString& words, bool heavy, Qt::Alignment alignment) {
  QLabel* label = role_label("body", words);
  label->setFont(type(TypeSize::small, heavy));
  label->setAlignment(alignment);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QWidget* groups_of(const teach::BankFigures& bank) {
  auto* frame = new QFrame;
  frame->setProperty("role", "paper");
  frame->setObjectName("groups");
  auto* grid = new QGridLayout(frame);
  grid->setContentsMargins(16, 10, 16, 12);
  grid->setHorizontalSpacing(14);
  grid->setVerticalSpacing(6);
  int column = 1, row = 1;
  for (const QString& title : group_titles())
    grid->addWidget(cell(title, true, Qt::AlignRight | Qt::AlignBottom), 0, column++);
  for (const GroupRow& group : group_rows(bank)) {
    grid->addWidget(cell(group.name, row == 1, Qt::AlignLeft), row, 0);
    column = 1;
    for (const QString& words : group.cells) {
      QLabel* figure = cell(words, row == 1, Qt::AlignRight);
      figure->setWordWrap(false);
      grid->addWidget(figure, row, column++);
    }
    ++row;
  }
  grid->setColumnStretch(0, 1);
  return frame;
}

QWidget* pictures_of(const teach::BankFigures& bank) {
  QWidget* const both[] = {spread_chart(bank), question_chart(bank)};
  if (!both[0] && !both[1]) return nullptr;
  auto* frame = new QFrame;
  frame->setProperty("role", "paper");
  auto* row = new QHBoxLayout(frame);
  row->setContentsMargins(6, 6, 6, 6);
  for (QWidget* picture : both)
    if (picture) row->addWidget(picture, 1);
  return frame;
}

const teach::LookAt* look_of(const teach::BankFigures& bank, const teach::QuestionFigures& figures) {
  const auto found = std::ranges::find(bank.look_first, figures, &teach::LookAt::figures);
  return found == bank.look_first.end() ? nullptr : &*found;
}

}  // namespace

QString attempts_sentence(const teach::BankFigures& bank) {
  QString words = bank.all.people == 0 ? FiguresPage::tr("Nobody has sat this quiz yet.")
                                       : FiguresPage::tr("Attempts: %1. Passed: %2.")
                                             .arg(QString::number(bank.all.people),
                                                  share_with_interval(bank.all.passed, bank.all.people));
  if (bank.unread > 0)
    words += ' ' + FiguresPage::tr("Left out, since their revision can't be read: %1.").arg(bank.unread);
  return words;
}

QWidget* look_first_view(const std::vector<teach::BankFigures>& banks) {
  const auto all = teach::look_first(banks);
  Column column;
  column.say("large", FiguresPage::tr("Questions to look at first"));
  const bool some = std::ranges::any_of(all, [](const teach::LookIn& in) { return is_wrong(*in.look); });
  column.say("quiet",
             some ? FiguresPage::tr("Something is wrong with these, as far as answers can tell. A "
                                    "question is looked at once it has %1 answers; of those with "
                                    "nothing wrong, about one in twenty comes up by chance.")
                        .arg(teach::Strictness{}.least)
                  : FiguresPage::tr("No question stands out. One is looked at once it has %1 answers.")
                        .arg(teach::Strictness{}.least));
  for (const teach::LookIn& in : all)
    if (is_wrong(*in.look)) column.add(new QuestionCard(*in.bank, in.look->figures, in.look));
  const auto little = [&](teach::Doubt doubt, const QString& title) {
    bool begun = false;
    for (const teach::LookIn& in : all) {
      if (in.look->reasons.front().doubt != doubt) continue;
      if (!begun) column.section(title);
      begun = true;
      column.say("body", little_sentence(in));
    }
  };
  little(teach::Doubt::tells_nothing, FiguresPage::tr("These tell little"));
  little(teach::Doubt::never_chosen, FiguresPage::tr("These have a choice that nobody takes"));
  return column.done();
}

QWidget* agreed_view(const std::vector<SheetAgreed>& sheets) {
  Column column;
  column.say("large", FiguresPage::tr("Assessors who differ"));
  for (const QString& words : agreed_explanations(sheets))
    column.say(sheets.empty() ? "body" : "quiet", words);
  for (const SheetAgreed& sheet : sheets) {
    column.section(agreed_title(sheet));
    column.say("body", FiguresPage::tr("All lines together. %1").arg(agreed_sentence(sheet.all)));
    for (const LineAgreed& line : sheet.lines)
      column.say("body", FiguresPage::tr("%1. %2", "a line, how far they agree")
                             .arg(agreed_line(line), agreed_sentence(line.agreed)));
  }
  return column.done();
}

std::vector<const teach::QuestionFigures*> in_order_of_bank(const teach::BankFigures& bank) {
  std::vector<const teach::QuestionFigures*> all;
  for (const teach::QuestionFigures& each : bank.questions) all.push_back(&each);
  const auto place = [&bank](const teach::QuestionFigures* figures) {
    const auto& newest = bank.revisions.back().questions;
    const auto at = std::ranges::find_if(newest, [&](const teach::Question& q) {
      return q.id == figures->question && q.revision == figures->revision;
    });
    return at - newest.begin();  // behind all others: no longer in the bank
  };
  std::ranges::stable_sort(all, {}, place);
  return all;
}

QWidget* bank_view(const teach::BankFigures& bank) {
  Column column;
  column.say("large", item_label(bank.bank));
  column.say("body", attempts_sentence(bank));
  if (bank.all.people == 0) return column.done();
  column.add(pictures_of(bank));
  column.add(groups_of(bank));
  for (const QString& words : missing_sentences(bank) + group_explanations()) column.say("quiet", words);
  column.section(FiguresPage::tr("Every question"));
  column.say(
      "quiet",
      FiguresPage::tr("With the rest of the paper: from \u22121 to 1; above 0 the strong have it right more "
                      "often than the weak, as they should. Each revision of a question stands by itself."));
  for (const teach::QuestionFigures* each : in_order_of_bank(bank))
    column.add(new QuestionCard(bank, *each, look_of(bank, *each)));
  return column.done();
}

}  // namespace wm::app
