#pragma once
// After the last question: the marks with the reasons, what they changed, and the one-on-one to ask for.
#include <QTextBrowser>
#include <QVBoxLayout>

#include "app/quiz/sat_attempt.h"
#include "app/quiz/station_type.h"

namespace wm::app {

/// An attempt in a scrolled page.
class AttemptText : public QTextBrowser {
  Q_OBJECT
 public:
  explicit AttemptText(QWidget* parent = nullptr);
  void show_attempt(const SatAttempt& sat, HowMuch shown, const std::string& language, int size);
};

class EndView : public QWidget {
  Q_OBJECT
 public:
  explicit EndView(Session& session, QWidget* parent = nullptr);
  /// `why`: how it ended, where that was not by the person.
  void show_end(const SatAttempt& sat, bool large, const QString& why);

 signals:
  void done();

 private:
  QString result(const SatAttempt& sat) const;
  QStringList standings(const SatAttempt& sat) const;
  void offer_one_on_ones(const SatAttempt& sat, int size);
  void ask_for(const TargetName& target);

  Session& session_;
  PersonId person_;
  QLabel *result_, *standings_, *told_;
  AttemptText* text_;
  QWidget* asks_;
  QVBoxLayout* asks_column_;
  StationButton* done_;
};

}  // namespace wm::app
