#pragma once
// Somebody is hurt, or a machine is broken: what to do in its usual order, then what to enter.
#include <QComboBox>
#include <QLineEdit>
#include <QScrollArea>
#include <QStackedWidget>

#include "app/emergency/here_now.h"
#include "app/emergency/what_follows.h"

namespace wm::app {

class EmergencyPage : public Page {
  Q_OBJECT
 public:
  explicit EmergencyPage(Session& session, QWidget* parent = nullptr);
  QString id() const override { return "emergency"; }
  QString title() const override { return tr("Somebody hurt, machine broken"); }
  void refresh() override;
  void open(const Place& place) override;

 private:
  QWidget* steps();
  QWidget* machine_block();
  QWidget* stop_block();
  QWidget* happened();
  void put_out_of_service();
  void stop_somebody();

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
