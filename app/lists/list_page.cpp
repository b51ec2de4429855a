#include "app/lists/list_page.h"

#include <QHBoxLayout>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/lists/effects.h"

namespace wm::app {

ListPage::ListPage(Session& session, const QString& search_words, std::vector<ListColumn> columns,
                   QWidget* parent)
    : Page(session, parent),
      search_(new QLineEdit),
      filters_(new QHBoxLayout),
      list_(new ListView(std::move(columns))),
      panel_(new SidePanel),
      count_(new QLabel),
      views_(new QStackedWidget) {
  search_->setObjectName("search");
  search_->setPlaceholderText(search_words);
  search_->setAccessibleName(search_words);
  search_->setMinimumHeight(38);
  search_->setClearButtonEnabled(true);
  list_->setObjectName("list");
  panel_->setObjectName("panel");
  count_->setObjectName("count");
  count_->setProperty("role", "quiet");

  auto* top = new QHBoxLayout;
  top->setSpacing(12);
  top->addWidget(search_, 1);
  filters_->setSpacing(12);
  top->addLayout(filters_);
  auto* left = new QVBoxLayout;
  left->setSpacing(10);
  left->addLayout(top);
  left->addWidget(list_, 1);
  left->addWidget(count_);
  auto* both = new QWidget;
  auto* across = new QHBoxLayout(both);
  across->setContentsMargins(22, 18, 20, 14);
  across->setSpacing(20);
  across->addLayout(left, 1);
  across->addWidget(panel_);
  views_->addWidget(both);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(views_);

  list_->led_by(search_);
  connect(search_, &QLineEdit::textChanged, this, [this] { list_rows(); });
  connect(list_, &ListView::choice_changed, this, [this](const QString& id) { describe(id); });
  connect(panel_, &SidePanel::form_closed, this, &ListPage::put_cursor_back);
  auto* find = new QShortcut(QKeySequence::Find, this);
  connect(find, &QShortcut::activated, this, [this] {
    search_->setFocus(Qt::ShortcutFocusReason);
    search_->selectAll();
  });
}

void ListPage::refresh() { list_rows(); }

void ListPage::list_rows() { list_->set_rows(rows(typed())); }

void ListPage::put_cursor_back() { search_->setFocus(Qt::OtherFocusReason); }

void ListPage::run_form(Form* form, const QString& said,
                        const std::function<Expected<db::Committed>()>& save) {
  connect(form, &Form::saved, this, [this, form, said, save] {
    const auto result = save();
    if (!result) return form->show_problem(result.error());
    panel_->close_form();
    report(result, said);
  });
  panel_->show_form(form);
}

void ListPage::show_own_form(
    const std::function<Form*(const std::function<void(const QString& said)>& done)>& make) {
  panel_->show_form(make([this](const QString& said) {
    panel_->close_form();
    emit tell(said);
  }));
}

bool ListPage::report(const Expected<db::Committed>& result, const QString& said) {
  if (result)
    emit tell((said + ' ' + changed_sentence(result->shifts, session().store())).trimmed());
  else
    emit tell_problem(result.error());
  return result.has_value();
}

}  // namespace wm::app
