#pragma once
// Run sheets: every revision that was issued, its text and the blank sheet as it is printed; which machines
// have none; and issuing the next.
#include "app/sheets/issued_sheets.h"
#include "app/works/work_page.h"

namespace wm::app {

class SheetsPage : public WorkPage {
  Q_OBJECT
 public:
  explicit SheetsPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("sheets"); }
  QString title() const override { return tr("Sheets"); }
  /// The sheet of `place.target`'s class, or that it has none.
  void open(const Place& place) override;

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& id) override;
  FileWords file_words() const override;
  std::optional<WorkFile> chosen_file() const override;
  void read_issued() override;
  bool may_look() const override { return true; }

 private:
  const SheetRevision* chosen_sheet() const;
  const MissingSheet* chosen_missing() const;
  void describe_sheet(const SheetRevision& sheet);
  void describe_missing(const MissingSheet& missing);
  void add_contents(const Sheet& sheet);
  void edit();
  void edit_sheet(const SheetRevision& sheet);
  void edit_missing(const MissingSheet& missing);
  /// Asks which of the program's is most like it.
  void begin_like(const MissingSheet& missing);
  void look_through();
  void take_these_over(const std::vector<MissingSheet>& missing);

  std::vector<SheetRevision> sheets_;
  std::vector<MissingSheet> missing_;
};

}  // namespace wm::app
