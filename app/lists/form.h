#pragma once
// A short form in the side panel: Enter saves, Escape leaves, what is wrong stands under the fields.
#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <utility>
#include <vector>

#include "core/problem.h"

class QLabel;
class QVBoxLayout;

namespace wm::app {

class Form : public QWidget {
  Q_OBJECT
 public:
  Form(const QString& heading, const QString& save_words, QWidget* parent = nullptr);

  /// Each field has its name above it; `name` is its object name.
  QLineEdit* line(const QString& words, const QString& name, const QString& value = {});
  /// Two fields side by side.
  std::pair<QLineEdit*, QLineEdit*> two_lines(const QString& left, const QString& left_name,
                                              const QString& right, const QString& right_name);
  /// Choices as (value, words).
  QComboBox* choice(const QString& words, const QString& name,
                    const std::vector<std::pair<QString, QString>>& choices);
  /// A sentence between the fields.
  QLabel* say(const QString& words);
  /// A field of one's own with its name above it.
  void add_field(const QString& words, QWidget* field);
  void add(QWidget* widget);

  void show_problem(const Problem& problem);
  void show_problem(const QString& sentence);
  void take_cursor();

 signals:
  void saved();
  void left();

 private:
  QWidget* with_name(const QString& words, QWidget* field);
  QLineEdit* new_line(const QString& name);

  QVBoxLayout* fields_;
  QLabel* problem_;
  QWidget* first_ = nullptr;
};

}  // namespace wm::app
