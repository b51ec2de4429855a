#pragma once
// A question as a member sees it: its words, its choices unmarked, its picture; below it what counts as
// right.
#include <QFrame>

#include "core/teach/bank.h"
#include "db/facts.h"

class QVBoxLayout;

namespace wm::app {

class QuestionPreview : public QFrame {
  Q_OBJECT
 public:
  explicit QuestionPreview(QWidget* parent = nullptr);
  /// In every language that it is worded in, the bank's first one first.
  void show_question(const teach::Question& question, const std::vector<db::Enclosure>& pictures);
  /// Words in place of a question.
  void show_words(const QString& words);

 private:
  void start();
  void finish();
  void say(const char* role, const QString& words);
  void show_picture(const db::Enclosure* picture, const std::string& name);

  QWidget* content_ = nullptr;
  QVBoxLayout* lines_ = nullptr;
};

/// The answer in words: "1/8 in, within 0.2 mm", "Switch it off", "the steps in the order in which they
/// stand".
QString right_answer_words(const teach::Question& question, const teach::Wording& wording);

}  // namespace wm::app
