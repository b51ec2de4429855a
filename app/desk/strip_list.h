#pragma once
// The list of a person's strips: a row a machine, headings for the tiers, moved through with the arrow keys
// or by typing a machine's first letters.
#include <QAbstractListModel>
#include <QListView>

#include "app/desk/strip_rows.h"
#include "app/widgets/strip.h"

namespace wm::app {

/// What a row is higher by where something is restricted.
inline constexpr int restricted_height = 15;

class StripModel : public QAbstractListModel {
  Q_OBJECT
 public:
  using QAbstractListModel::QAbstractListModel;
  void set(Strips strips);
  const Strips& strips() const { return strips_; }
  const StripRow& row(int i) const { return strips_.rows[static_cast<std::size_t>(i)]; }
  int row_of(const TargetName& target) const;
  /// How many rows have something restricted, which takes a line of its own.
  int restricted() const;
  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 private:
  Strips strips_;
};

class StripList : public QListView {
  Q_OBJECT
 public:
  explicit StripList(Session& session, QWidget* parent = nullptr);
  void show_person(const PersonId& person);
  /// Keeps what is chosen where it can, else the first machine.
  void choose(const TargetName& target);
  TargetName target() const;
  const Strips& strips() const { return model_->strips(); }
  Scale scale() const;
  /// As high as the list has room for, 21 to 36.
  int height_of_row() const { return height_; }

 signals:
  void target_chosen();
  /// Enter on a machine.
  void entered();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool viewportEvent(QEvent* event) override;
  void currentChanged(const QModelIndex& now, const QModelIndex& before) override;

 private:
  void fit_rows();

  Session& session_;
  StripModel* model_;
  PersonId person_;
  int height_ = 30;
};

/// The years above the strips.
class StripHeader : public QWidget {
  Q_OBJECT
 public:
  explicit StripHeader(StripList* list, const Zone& zone, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {300, 26}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  StripList* list_;
  Zone zone_;
};

}  // namespace wm::app
