#pragma once
// The right side of a list page: what is known of the chosen row, what can be done with it, and forms to do
// it.
#include <QFrame>
#include <QKeySequence>
#include <functional>

class QStackedWidget;
class QVBoxLayout;

namespace wm::app {

class Form;
class KeyButton;

class SidePanel : public QFrame {
  Q_OBJECT
 public:
  explicit SidePanel(QWidget* parent = nullptr);

  /// Empties the details, which are then written from top to bottom with the calls below.
  void start();
  void heading(const QString& words);
  void quiet(const QString& words);
  void section(const QString& words);
  void paragraph(const QString& words);
  /// A name and its value beside it; nothing where the value is empty.
  void line(const QString& name, const QString& value);
  KeyButton* button(const QString& words, const QKeySequence& key, const std::function<void()>& act);

  /// Shows a form in place of the details until it is saved or left. The panel owns it.
  void show_form(Form* form);
  void close_form();
  bool form_open() const;

 signals:
  /// A form was left or saved: the page puts the cursor back where it was.
  void form_closed();

 private:
  void give_room();

  QStackedWidget* stack_;
  QWidget* details_ = nullptr;
  QVBoxLayout* lines_ = nullptr;
};

}  // namespace wm::app
