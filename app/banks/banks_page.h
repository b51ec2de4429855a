#pragma once
// Question banks: every revision that was issued, its text and its questions as members see them, and issuing
// the next. For instructors and managers, since it tells which answers are right.
#include "app/banks/bank_editor.h"
#include "app/banks/issued_banks.h"
#include "app/works/work_page.h"

namespace wm::app {

class BanksPage : public WorkPage {
  Q_OBJECT
 public:
  explicit BanksPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("banks"); }
  QString title() const override { return tr("Questions"); }
  void open(const Place& place) override;

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& id) override;
  FileWords file_words() const override;
  std::optional<WorkFile> chosen_file() const override;
  void read_issued() override;
  bool may_look() const override;

 private:
  const BankRevision* chosen_bank() const;
  void describe_bank(const BankRevision& bank);
  void look_through();
  void edit();

  std::vector<BankRevision> banks_;
};

}  // namespace wm::app
