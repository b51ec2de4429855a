#pragma once
// A lesson gone through part by part: the parts at the left, the one that is read beside them, what it shows
// under it.
#include <QLabel>
#include <QListWidget>
#include <QStackedWidget>
#include <vector>

#include "app/lessons/lesson_browser.h"
#include "core/problem.h"
#include "core/teach/lesson.h"

class QHBoxLayout;
class QPdfDocument;
class QPdfView;

namespace wm::app {

class KeyButton;

class LessonReader : public QWidget {
  Q_OBJECT
 public:
  explicit LessonReader(QWidget* parent = nullptr);

  /// `under` stands under the title: the revision, for whom. `store_path`: videos lie in a folder beside it.
  void show_lesson(const db::Issued& lesson, const QString& title, const QString& under,
                   const std::string& store_path);
  /// Under the title, in place of what stood there.
  void say(const QString& words) { under_->setText(words); }
  /// Whether every part was on the screen to its end.
  bool gone_through() const;

 signals:
  /// The last part was read to its end.
  void read_through();
  /// Somebody is there: another part, or further down in one.
  void moved();
  void left();
  void tell_problem(const wm::Problem& problem);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* make_parts();
  QWidget* make_page();
  QWidget* make_buttons();
  void go_to(int part);
  void note_read();
  void go_on();
  void show_files(const std::string& markdown);
  void open_link(const QString& name);
  void open_pdf(const QString& name);
  void open_video(const QString& name);
  void leave();
  void show_state();

  std::vector<teach::LessonPart> parts_;
  std::vector<bool> read_;
  std::vector<db::Enclosure> enclosures_;
  std::string store_path_;
  int part_ = 0;
  bool large_ = false, told_ = false;

  QLabel *title_, *under_;
  QListWidget* list_;
  QStackedWidget* pages_;
  LessonBrowser* text_;
  QPdfDocument* pdf_;
  QPdfView* pdf_view_;
  QHBoxLayout* files_;
  KeyButton *on_, *size_;
};

}  // namespace wm::app
