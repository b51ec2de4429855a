#pragma once
// Question banks: every revision that was issued, its text and its questions as members see them, and issuing
// the next. For instructors and managers, since it tells which answers are right.
#include "app/banks/bank_drafts.h"
#include "app/banks/bank_editor.h"
#include "app/banks/issued_banks.h"
#include "app/lists/list_page.h"

namespace wm::app {

class BanksPage : public ListPage {
  Q_OBJECT
 public:
  explicit BanksPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("banks"); }
  QString title() const override { return tr("Questions"); }
  void refresh() override;
  void open(const Place& place) override;

  /// Opens a text file in the editor; says why not, where it can't be read.
  void open_file(const QString& path);
  /// Writes what is shown: the chosen revision, or the text in the editor.
  void save_file(const QString& path);

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& id) override;

 private:
  bool may_look() const;
  bool may_issue() const { return session().role() == db::Role::manager; }
  const BankRevision* chosen_bank() const;
  void describe_bank(const BankRevision& bank);
  void look_through();
  void edit();
  /// `of`: as BankDrafts has it; what was left of it before is shown instead.
  void show_editor(const BankFile& file, bool may_issue, const QString& of);
  void keep_draft(bool another);
  void back();
  void close_editor();
  void ask_for_file();
  void ask_where();

  BankEditor* editor_;
  BankDrafts drafts_;
  QString edited_;  // what the editor has open, as BankDrafts has it; empty: only to be read
  std::vector<BankRevision> banks_;
};

}  // namespace wm::app
