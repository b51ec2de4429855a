#pragma once
// The shop's file looked through, against a root from a paper where there is one, while the desk goes on.
#include <QLabel>
#include <QLineEdit>
#include <QThreadPool>
#include <QWidget>

#include "app/session.h"
#include "db/verify/verify.h"

namespace wm::app {

class KeyButton;

class LookView : public QWidget {
  Q_OBJECT
 public:
  explicit LookView(Session& session, QWidget* parent = nullptr);
  /// A look that has begun is finished first.
  ~LookView() override;
  /// Empties the page and puts the cursor into the field.
  void begin();

 signals:
  void left();

 private:
  void look();
  void show_report(const Expected<verify::Report>& report);

  Session& session_;
  QLineEdit* root_;
  QLabel *verdict_, *lines_;
  KeyButton *look_, *leave_;
  QThreadPool behind_;
};

}  // namespace wm::app
