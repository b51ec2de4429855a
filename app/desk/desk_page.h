#pragma once
// The Desk: tonight while nobody is chosen; a person's strips and answer when somebody is.
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QStackedWidget>

#include "app/desk/answer_panel.h"
#include "app/desk/strip_list.h"
#include "app/desk/tonight_panel.h"
#include "app/page/page.h"

namespace wm::app {

class DeskPage : public Page {
  Q_OBJECT
 public:
  explicit DeskPage(Session& session, QWidget* parent = nullptr);
  QString id() const override { return "desk"; }
  QString title() const override { return tr("Desk"); }
  void refresh() override;
  void open(const Place& place) override;

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* middle();
  QWidget* person_side();
  void typed();
  void list_matches();
  void choose_match();
  void show_tonight();
  void show_person(const PersonId& person, const TargetName& target);
  void show_answer();
  TargetName best_target() const;
  void wire();

  QLineEdit* search_;
  QStackedWidget* middle_;
  QStackedWidget* right_;
  TonightPanel* tonight_;
  QListWidget* matches_;
  QLabel* name_;
  QLabel* summary_;
  StripList* strips_;
  TonightSide* tonight_side_;
  AnswerPanel* answer_;
  PersonId person_;
  ShopNow shop_;
};

}  // namespace wm::app
