#pragma once
// Journal: every record in the order it was entered, what it says in words, and striking out.
#include <QCheckBox>
#include <QComboBox>

#include <unordered_map>

#include "app/ledger/look_view.h"
#include "app/lists/list_page.h"
#include "app/lists/record_reader.h"
#include "app/quiz/as_sat_view.h"
#include "app/widgets/person_search.h"

namespace wm::app {

class JournalPage : public ListPage {
  Q_OBJECT
 public:
  explicit JournalPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("journal"); }
  QString title() const override { return tr("Journal"); }
  void refresh() override;
  void open(const Place& place) override;

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& id) override;

 private:
  /// What is kept of a record from one drawing to the next: it never changes.
  struct Line {
    QString sentence, kind, entered_by;
    QString searched;  // folded
    std::vector<PersonId> people;
  };

  void fill_filters();
  void read_lines();
  Line line_of(const db::Entry& entry) const;
  bool passes(const db::Entry& entry, const Line& line, const TypedWords& wanted) const;
  bool was_there(const db::Entry& entry) const;
  bool in_this_shift(const db::Entry& entry) const;
  ListRow row(const db::Entry& entry, const Line& line) const;
  QString struck_words(const db::Entry& entry) const;
  QString note_of(const db::Entry& entry) const;
  void strike_out(const db::Entry& entry);
  void erase_text(const db::Entry& entry);
  void look_through();
  void leave_look();
  void show_as_sat(const RecordId& record);

  LookView* look_;
  AsSatView* as_sat_;
  QComboBox* kind_;
  QComboBox* person_;
  QCheckBox* shift_;
  RecordReader reader_;
  std::vector<Line> lines_;
  std::unordered_map<RecordId, RecordId> struck_by_;
  std::int64_t read_at_ = -1;
  std::optional<Instant> read_as_known_;
};

}  // namespace wm::app
