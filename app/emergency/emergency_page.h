#pragma once
// Somebody is hurt, or a machine is broken: whom to call and what to do in its usual order, whom to call for
// whoever is hurt, then what to enter. All but what is entered needs nobody to sit here.
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>

#include "app/emergency/call_steps.h"
#include "app/emergency/here_now.h"
#include "app/emergency/what_follows.h"
#include "app/emergency/who_is_hurt.h"

namespace wm::app {

class EmergencyPage : public Page {
  Q_OBJECT
 public:
  explicit EmergencyPage(Session& session, QWidget* parent = nullptr);
  QString id() const override { return "emergency"; }
  QString title() const override { return tr("Somebody hurt, machine broken"); }
  void refresh() override;
  void open(const Place& place) override;

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* first();
  QWidget* steps();
  QWidget* then();
  QWidget* machine_block();
  QWidget* stop_block();
  QWidget* happened();
  void put_out_of_service();
  void stop_somebody();

  void show_call();

  QScrollArea* scroll_;
  CallSteps* steps_;
  QPushButton* to_number_;
  WhoIsHurt* who_;
  QLabel* nobody_;    // while nobody sits here
  QBoxLayout* then_;  // what is entered: side by side, or below each other where there is no room
  QComboBox* machine_;
  QLineEdit* tag_;
  QLineEdit* reason_;
  PersonBox* stopped_;
  QLineEdit* why_;
  QStackedWidget* happened_;
  IncidentForm* form_;
  WhatFollows* follows_;
  HereNow* here_;
};

}  // namespace wm::app
