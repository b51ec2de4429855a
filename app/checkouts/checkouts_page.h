#pragma once
// Check-outs: the run sheet of one person on one machine, marked at the machine and signed by the assessor.
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QStackedWidget>
#include <map>
#include <optional>
#include <set>

#include "app/checkouts/drafts.h"
#include "app/page/page.h"
#include "app/sheets/sheet_book.h"

namespace wm::app {

class CountersignFields;
class CountersignLater;
class KeyButton;
class PaperEntry;
class PlanView;
class SheetView;

class CheckoutsPage : public Page {
  Q_OBJECT
 public:
  explicit CheckoutsPage(Session& session, QWidget* parent = nullptr);
  /// With these sheets in place of those that were issued.
  CheckoutsPage(Session& session, QWidget* parent, const std::vector<Sheet>& sheets);
  ~CheckoutsPage() override;

  QString id() const override { return QStringLiteral("checkouts"); }
  QString title() const override { return tr("Check-outs"); }
  void refresh() override;
  /// By the booking's id, or by person and target: their booking, or a check-out without one.
  void open(const Place& place) override;
  /// The member of the sheet in hand countersigns with it, or of one that is signed.
  bool take_card(const QString& card) override;

 private:
  CheckoutsPage(Session& session, QWidget* parent, SheetBook book);
  QWidget* make_list();
  QWidget* make_sheet();
  QWidget* make_left_behind();
  QWidget* make_foot();
  QWidget* make_after();
  QWidget* make_plan();
  QWidget* make_paper_entry();
  void add_second(QGridLayout* grid, int row);
  void add_countersign(QGridLayout* grid, int row);

  void fill_list();
  void choose(const std::string& key);
  const OneOnOne* current() const;
  /// The one that it is marked on: of a check-out that is signed, the revision that it was signed on.
  const Sheet* sheet_of(const OneOnOne& one);
  void issue_sheet();
  void show_current();
  void show_heading(const OneOnOne& one, const Sheet* sheet);
  void fill_assessors(const OneOnOne& one);
  void fill_second(const OneOnOne& one, const std::vector<PersonId>& able);
  void show_result();
  /// Whether two assessors witness it, and so both sign.
  bool asks_for_two(const OneOnOne& one) const;
  std::optional<Outcome> outcome() const;
  void keep_draft();
  /// What was marked at another station, or before today, comes in; what was marked here goes out.
  void bring_in(const OneOnOne& one, const Sheet& sheet);
  Expected<void> send_marks(bool all);
  void send_in_passing();
  void show_kept();
  /// What of a draft is shown on the sheet: nothing where the sheet has become another one since.
  const Draft* draft_for(const Sheet& sheet);
  void take_up_drafts();
  /// Those whose sheet was signed, struck out or left go, and what of them is in no store is told.
  void let_go_of_drafts();
  void let_go(const std::string& key, const QString& became);
  void put_away();
  void show_left_behind();
  void report(const std::optional<Problem>& problem);

  void sign();
  /// A second assessor's marks of one that is signed, on a sheet of their own.
  void begin_apart();
  void sign_apart(const OneOnOne& one);
  bool is_apart(const OneOnOne& one) const { return apart_ == one.key(); }
  /// Whether whoever sits here could mark it apart, not having seen how it was marked.
  bool may_mark_apart(const OneOnOne& one) const;
  void show_marks();
  /// The record of the check-out that was signed; empty where it is not known here.
  RecordId checkout_of(const OneOnOne& one) const;
  /// Whose marks apart are made now; empty: nobody's.
  PersonId second() const;
  /// Under which what is marked now is kept.
  std::string draft_key() const;
  void show_foot(bool apart);
  /// What stands in the way of a signature, before the store is asked.
  std::optional<Problem> not_yet(const OneOnOne& one) const;
  std::optional<Problem> second_missing(const OneOnOne& one) const;
  /// To the first field at the foot in which a signature or a choice is missing.
  void take_cursor_to_missing(const OneOnOne& one);
  void show_signed(const OneOnOne& one);
  /// How it went that was signed; nothing where it was not, or where it was passed.
  const Checkout* not_passed(const OneOnOne& one) const;
  void book_next();
  void to_desk();
  /// Stops here, and books the day to go on.
  void put_by();
  void choose_member_pin();
  void print_blank();
  void enter_from_paper();
  void show_pass_plan();
  /// From the pass plan, a paper or a PIN.
  void back_to_sheet();

  QListWidget* list_;
  QLabel *heading_, *under_, *how_, *suggested_, *after_, *practise_, *kept_, *left_behind_;
  SheetView* sheet_;
  QWidget *list_box_, *no_sheet_;  // takes the sheet's place where none is seen
  QStackedWidget* views_;
  PlanView* plan_;
  PaperEntry* paper_entry_;
  CountersignFields* countersign_;
  CountersignLater* later_;  // where the member did not countersign
  QWidget *foot_, *after_box_, *left_behind_box_;
  QLineEdit *restrictions_, *note_, *pin_, *second_pin_;
  QComboBox *outcome_, *assessor_, *second_;
  KeyButton *sign_, *desk_, *pass_plan_, *mark_apart_, *show_marks_, *next_, *another_day_, *member_pin_,
      *blank_, *from_paper_, *issue_sheet_;
  std::vector<QWidget*> of_the_first_;  // what of the foot a second assessor has no use for
  std::vector<QWidget*> of_two_;        // shown where two assessors sign

  SheetBook book_;
  std::vector<OneOnOne> all_;
  std::vector<OneOnOne> without_;  // opened without a booking
  std::string current_;            // its key
  Drafts drafts_;
  std::map<std::string, QString> signed_;            // what changed, by key
  std::map<std::string, RecordId> signed_record_;    // by key
  std::string apart_;                                // the key of what is being marked apart
  std::set<std::pair<std::string, PersonId>> seen_;  // who has looked at which marks
  const Sheet* shown_sheet_ = nullptr;
  std::string shown_key_;
  bool filling_ = false, taken_up_ = false;
  bool sending_ = false;           // a commit of its own, after which it draws itself anew
  std::optional<Problem> unsent_;  // why what was marked is not in the store yet
};

}  // namespace wm::app
