#pragma once
// Before the first question: which quiz, what is told about it, in which language, and with what help.
#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QListWidget>

#include "app/quiz/run.h"
#include "app/quiz/station_type.h"

namespace wm::app {

class StartView : public QWidget {
  Q_OBJECT
 public:
  explicit StartView(Session& session, QWidget* parent = nullptr);
  /// `quiz` empty: the first that is needed.
  void show_person(const PersonId& person, const std::string& quiz);
  void show_problem(const Problem& problem);

 signals:
  void begin(const wm::app::QuizWish& wish);
  void left();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void show_offer();
  void fill_told(const QuizOffer& offer);
  void fill_languages(const QuizOffer& offer);
  void start();

  Session& session_;
  PersonId person_;
  std::vector<QuizOffer> offers_;
  QLabel *name_, *not_now_, *quiz_;
  QListWidget* list_;
  QWidget* told_holder_;
  QGridLayout* told_ = nullptr;
  QWidget* choices_;
  QComboBox *language_, *beside_;
  QLabel *language_name_, *beside_name_;
  std::vector<std::pair<db::Help, QCheckBox*>> helps_;
  StationButton *start_, *leave_;
};

}  // namespace wm::app
