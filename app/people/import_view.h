#pragma once
// Taking in a CSV file of a shop: which file, which column is what, what would come of it, and only then
// doing it.
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QWidget>
#include <map>

#include "app/session.h"
#include "db/import/plan.h"

class QFormLayout;
class QTableWidget;

namespace wm::app {

class KeyButton;

class ImportView : public QWidget {
  Q_OBJECT
 public:
  explicit ImportView(Session& session, QWidget* parent = nullptr);

  /// Reads the file and guesses its columns; what is wrong with it stands in the list of bad rows.
  void open_file(const QString& path);
  void take_cursor();

 signals:
  void done(const QString& sentence);
  void left();

 private:
  QWidget* left_side();
  QWidget* right_side();
  void ask_for_file();
  void read();
  void show_mapping();
  void plan();
  void show_rows(const db::import::ImportPlan& plan);
  void show_problems(const std::vector<QString>& lines);
  void run();

  db::import::FileKind kind() const;
  db::import::ReadOptions read_options() const;
  db::import::PlanOptions plan_options() const;
  db::import::Mapping mapping() const;

  Session& session_;
  QString path_;
  std::string bytes_;
  std::optional<db::import::Table> table_;
  std::optional<db::import::ImportPlan> plan_;
  std::map<std::string, QComboBox*> columns_;

  KeyButton* choose_;
  KeyButton* run_;
  QComboBox *kind_, *encoding_, *separator_, *order_;
  QFormLayout* fields_;
  QLabel *file_, *summary_, *problem_;
  QTableWidget* preview_;
  QListWidget* problems_;
};

}  // namespace wm::app
