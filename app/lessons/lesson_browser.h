#pragma once
// One part of a lesson, drawn from its Markdown with the pictures that were issued with it.
#include <QTextBrowser>
#include <map>

#include "db/facts.h"

namespace wm::app {

class LessonBrowser : public QTextBrowser {
  Q_OBJECT
 public:
  explicit LessonBrowser(QWidget* parent = nullptr);
  void set_enclosures(const std::vector<db::Enclosure>& enclosures);
  /// `large`: for whoever reads from further away, or with difficulty.
  void show_part(const QString& markdown, bool large);
  bool at_end() const;

 protected:
  QVariant loadResource(int type, const QUrl& name) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void draw();
  int room_across() const;
  std::map<QString, QByteArray> files_;
  QString markdown_;
  bool large_ = false;
  int drawn_for_ = 0;  // the room that pictures were fitted to
};

}  // namespace wm::app
