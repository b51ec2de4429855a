#pragma once
// What somebody can do at the station: a lesson to go through, or a quiz; what is told about it before, in
// which language, and with what help.
#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QListWidget>

#include "app/quiz/lesson_offer.h"
#include "app/quiz/run.h"
#include "app/quiz/station_type.h"

namespace wm::app {

class StartView : public QWidget {
  Q_OBJECT
 public:
  explicit StartView(Session& session, QWidget* parent = nullptr);
  /// `quiz` empty: what is needed first.
  void show_person(const PersonId& person, const std::string& quiz);
  void show_problem(const Problem& problem);

 signals:
  void begin(const wm::app::QuizWish& wish);
  void read(const wm::PersonId& person, const wm::app::LessonOffer& lesson);
  void left();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  using Offer = std::variant<LessonOffer, QuizOffer>;
  void show_offer();
  void show_quiz(const QuizOffer& offer);
  void show_lesson(const LessonOffer& offer);
  void fill_told(const std::vector<std::pair<QString, QString>>& told);
  void fill_languages(const QuizOffer& offer);
  void start();

  Session& session_;
  PersonId person_;
  std::vector<Offer> offers_;  // as in the list
  QLabel *name_, *not_now_, *title_;
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
