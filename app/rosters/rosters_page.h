#pragma once
// Rosters: people by machines on the day asked about, on the screen, printed, or as a PDF.
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include "app/page/page.h"
#include "app/rosters/call_fields.h"
#include "app/rosters/roster_grid.h"
#include "app/rosters/roster_paper.h"

class QHBoxLayout;

namespace wm::app {

class RostersPage : public Page {
  Q_OBJECT
 public:
  explicit RostersPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("rosters"); }
  QString title() const override { return tr("Rosters"); }
  void refresh() override;
  void open(const Place& place) override;

  RosterChoice choice() const;
  /// Writes the roster that is shown; says so, or why not.
  void save_pdf(const QString& path);

 private:
  QWidget* controls();
  void show_tiers();
  void ask_for_path();
  void print();
  /// Enters that a paper is out; false where that failed, which is told.
  bool note(const RosterWords& words);
  QString summary() const;

  QLabel* heading_;
  QLabel* summary_;
  QHBoxLayout* tier_boxes_;
  std::vector<std::pair<int, QCheckBox*>> tiers_;
  QCheckBox* everybody_;
  QComboBox *form_, *paper_;
  CallFields* call_;  // for cards alone
  RosterGrid* grid_;
};

}  // namespace wm::app
