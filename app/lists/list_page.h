#pragma once
// What the plain list pages share: a search field, filters, the list, and the side panel for the chosen row.
#include <QLabel>
#include <QLineEdit>
#include <functional>

#include "app/lists/form.h"
#include "app/lists/list_view.h"
#include "app/lists/side_panel.h"
#include "app/page/page.h"

class QHBoxLayout;
class QStackedWidget;
class QTimer;

namespace wm::app {

class ListPage : public Page {
  Q_OBJECT
 public:
  ListPage(Session& session, const QString& search_words, std::vector<ListColumn> columns, QWidget* parent);
  void refresh() override;

 protected:
  /// The rows for what is typed, and the panel's details for one of them.
  virtual std::vector<ListRow> rows(const QString& typed) = 0;
  virtual void describe(const QString& id) = 0;

  QString typed() const { return search_->text().trimmed(); }
  QString chosen() const { return list_->chosen(); }
  /// Where Problems are shown while a form is open, and the cursor otherwise.
  void put_cursor_back();
  /// Shows a form whose `save` commits something; it closes and is reported where that went well.
  void run_form(Form* form, const QString& said, const std::function<Expected<db::Committed>()>& save);
  /// Tells `said` and whose standings changed, or the problem; whether it went well.
  bool report(const Expected<db::Committed>& result, const QString& said);
  /// A form that does what it says by itself: `done` is given to it, to be told in the end.
  void show_own_form(const std::function<Form*(const std::function<void(const QString& said)>& done)>& make);
  void describe_again() { describe(chosen()); }

  QLineEdit* search_;
  QHBoxLayout* filters_;
  ListView* list_;
  SidePanel* panel_;
  QLabel* count_;
  /// Another view of the page can be laid over the list (an import), index 1 and up.
  QStackedWidget* views_;

 private:
  void list_rows();
};

}  // namespace wm::app
