#pragma once
// After what happened was recorded: what else follows from the rules, and what is usually done next, a key
// each.
#include <QFrame>
#include <QLabel>
#include <QVBoxLayout>

#include "app/emergency/incident_form.h"
#include "app/page/page.h"

namespace wm::app {

class WhatFollows : public QFrame {
  Q_OBJECT
 public:
  explicit WhatFollows(Session& session, QWidget* parent = nullptr);
  void show_of(Recorded what, const ShopNow& shop);
  /// The same once more, after something else was entered.
  void refresh(const ShopNow& shop);

 signals:
  void go(const wm::app::Place& place);
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);
  /// Something else is to be recorded.
  void over();

 private:
  void write(const ShopNow& shop);
  QString heading(const ShopNow& shop) const;
  QStringList standings() const;
  QStringList bookings() const;
  /// Who is still noted as at the machine, or as working or supervising elsewhere.
  QStringList at_machines(const ShopNow& shop) const;
  void offers(const ShopNow& shop);
  /// What those need whose standings changed, and where it is noted that somebody left.
  void offer_desk(const ShopNow& shop);
  void offer_pauses(int key);
  void say(const QString& title, const QStringList& lines);
  std::vector<db::AtMachine> still_at(const ShopNow& shop) const;
  void button(const QString& name, const QString& words, const QKeySequence& key, std::function<void()> act);
  void put_out(const QString& machine);
  void pause(const PersonId& person);

  Session& session_;
  QVBoxLayout* column_;
  Recorded what_;
  bool shown_ = false;
};

}  // namespace wm::app
