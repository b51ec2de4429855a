#include "app/checkouts/checkouts_page.h"

#include <QHBoxLayout>
#include <algorithm>

#include "app/checkouts/blank_sheet.h"
#include "app/checkouts/countersign_fields.h"
#include "app/checkouts/countersign_later.h"
#include "app/checkouts/in_hand.h"
#include "app/checkouts/let_go.h"
#include "app/checkouts/paper_entry.h"
#include "app/checkouts/result_words.h"
#include "app/checkouts/sheet_view.h"
#include "app/lists/answer_reader.h"
#include "app/passes/plan_view.h"
#include "app/people/pin_form.h"
#include "app/widgets/key_button.h"
#include "app/words/length_words.h"
#include "app/words/standing_words.h"
#include "app/words/words.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

constexpr int key_role = Qt::UserRole + 10;

Problem problem(const QString& where, const QString& what, const QString& remedy) {
  return {where.toStdString(), what.toStdString(), remedy.toStdString()};
}

/// What was signed, where it was on this very sheet: as it was read, with its unit.
OnSheet as_signed(const db::SheetMarks& signed_sheet, const Sheet& sheet) {
  if (signed_sheet.sheet != sheet.name || signed_sheet.sheet_revision != sheet.revision) return {};
  return on_sheet_of(signed_sheet.marks, signed_sheet.again, signed_sheet.measured, sheet);
}

/// The sheet of a check-out, where it was signed on one.
const db::SheetMarks* marks_about(const Session& session, const RecordId& checkout) {
  const db::SheetMarks* found = nullptr;
  for (const db::Entry* entry : session.store().of_kind("marks"))
    if (const auto* marks = db::as<db::SheetMarks>(entry->fact);
        !entry->voided && marks->checkout == checkout)
      found = marks;
  return found;
}

/// What the practice piece is to become, where the sheet measures its thickness.
std::optional<Length> final_thickness(const Sheet* sheet) {
  if (!sheet) return std::nullopt;
  for (const SheetLine* line : lines_of(*sheet))
    if (line->measure && line->measure->kind == MeasureKind::thickness)
      return std::get<SizeToMeasure>(line->measure->what).nominal;
  return std::nullopt;
}

}  // namespace

/// A field that loses the cursor as the page goes away says so to nobody.
CheckoutsPage::~CheckoutsPage() { sheet_->disconnect(this); }

const Sheet* CheckoutsPage::sheet_of(const OneOnOne& one) {
  const bool done = one.signed_as || signed_.contains(one.key());
  const db::SheetMarks* marks = done ? marks_about(session(), checkout_of(one)) : nullptr;
  const Sheet* signed_on = marks ? book_.revision(marks->sheet, marks->sheet_revision) : nullptr;
  return signed_on ? signed_on : book_.for_target(one.target);
}

void CheckoutsPage::open(const Place& place) {
  views_->setCurrentIndex(0);
  refresh();
  const auto wanted = std::find_if(all_.begin(), all_.end(), [&](const OneOnOne& one) {
    if (!place.record.empty()) return one.booking == place.record;
    return one.person == place.person && !one.signed_as && !signed_.contains(one.key()) &&
           (place.target.empty() || class_of(one.target) == class_of(place.target));
  });
  if (wanted != all_.end()) {
    choose(wanted->key());
  } else if (!place.person.empty() && !place.target.empty()) {
    const OneOnOne begun = without_booking(session(), place.person, place.target);
    const std::string key = begun.key();
    // One that was signed makes room for the next of the same person on the same machine.
    std::erase_if(without_, [&](const OneOnOne& one) { return one.key() == key; });
    signed_.erase(key);
    drafts_.drop(key);
    shown_key_.clear();
    without_.push_back(begun);
    refresh();
    choose(key);
  }
  QWidget* first = sheet_;
  if (!mark_apart_->isHidden()) first = mark_apart_;
  first->setFocus();
}

void CheckoutsPage::refresh() {
  if (sending_) return;
  take_up_drafts();
  all_ = one_on_ones(session());
  // What was signed here without a booking stands under what it was begun as.
  std::erase_if(all_, [&](const OneOnOne& one) {
    return !one.booking && one.signed_sheet && std::ranges::any_of(without_, [&](const OneOnOne& begun) {
      return checkout_of(begun) == one.signed_sheet->checkout;
    });
  });
  let_go_of_drafts();
  show_left_behind();
  for (const OneOnOne& one : without_)
    if (std::ranges::none_of(all_, [&](const OneOnOne& other) { return other.key() == one.key(); }))
      all_.push_back(one);
  if (!current() && !all_.empty()) {
    const auto open =
        std::find_if(all_.begin(), all_.end(), [](const OneOnOne& one) { return !one.signed_as; });
    current_ = (open != all_.end() ? *open : all_.front()).key();
  }
  fill_list();
  show_current();
  from_paper_->setVisible(session().role() == db::Role::manager && !session().known());
  if (views_->currentIndex() == 1) plan_->refresh();
}

void CheckoutsPage::fill_list() {
  filling_ = true;
  list_->clear();
  const std::vector<Unit> shop_units = units(session());
  const Day today = session().zone().day(session().now());
  for (const OneOnOne& one : all_) {
    const bool tonight = one.when && session().zone().day(one.when->from) == today;
    const QString time = !one.when ? QString()
                         : tonight ? clock_time(one.when->from, session().zone())
                                   : short_day(one.when->from, session().zone());
    const QString state = one.signed_as                         ? outcome_words(one.signed_as->outcome)
                          : signed_.contains(one.key())         ? tr("signed")
                          : one.open && one.open->put_by        ? tr("put by")
                          : one.open || drafts_.find(one.key()) ? tr("begun")
                          : !one.when                           ? tr("no booking")
                                                                : QString();
    // What is longer than a time stands below: a name needs the room.
    QStringList below_it;
    if (!state.isEmpty()) below_it << state;
    if (one.not_countersigned) below_it << tr("not countersigned");
    below_it << unit_label(shop_units, one.machine);
    const QString below = below_it.join(QStringLiteral(" · "));
    auto* item = new QListWidgetItem(name_of(session(), one.person), list_);
    item->setData(Qt::UserRole, below);
    item->setData(Qt::UserRole + 1, time);
    item->setData(key_role, QString::fromStdString(one.key()));
    item->setData(Qt::AccessibleTextRole, QStringList{item->text(), time, below}.join(", "));
    if (one.key() == current_) list_->setCurrentItem(item);
  }
  filling_ = false;
}

void CheckoutsPage::choose(const std::string& key) {
  current_ = key;
  apart_.clear();
  unsent_.reset();
  views_->setCurrentIndex(0);
  pin_->clear();
  second_pin_->clear();
  fill_list();
  show_current();
}

const OneOnOne* CheckoutsPage::current() const {
  const auto found =
      std::find_if(all_.begin(), all_.end(), [&](const OneOnOne& one) { return one.key() == current_; });
  return found == all_.end() ? nullptr : &*found;
}

void CheckoutsPage::show_current() {
  const OneOnOne* one = current();
  const Sheet* sheet = one ? sheet_of(*one) : nullptr;
  // Somebody else may sit here now.
  if (one && is_apart(*one) && !may_mark_apart(*one)) apart_.clear();
  const bool apart = one && is_apart(*one);
  const bool done = one && !apart && (one->signed_as || signed_.contains(one->key()));
  const bool covered = done && may_mark_apart(*one);
  blank_->setVisible(sheet);
  foot_->setVisible(sheet && !done);
  show_foot(apart);
  mark_apart_->setVisible(covered && sheet);
  show_marks_->setVisible(covered && sheet);
  next_->setVisible(done && not_passed(*one));
  later_->show_missing(done ? checkout_of(*one) : RecordId());
  after_box_->setVisible(done);  // last: all of its buttons at once would make the window wider than a screen
  sheet_->setVisible(sheet && !covered);
  no_sheet_->setVisible(sheet_->isHidden());
  issue_sheet_->setVisible(one && !sheet && session().role() == db::Role::manager);
  how_->setVisible(sheet && !done);
  sheet_->set_read_only(done);
  sheet_->set_first_only(apart);
  how_->setText(
      apart ? tr("Marked after a cut, never while stock is moving.  1 shown · 2 shown when asked · 3 not "
                 "shown · 0 no mark; the arrows move, Ctrl+Z takes a mark back.")
            : tr("Marked after a cut, never while stock is moving.  1 shown · 2 shown when asked · 3 not "
                 "shown · 0 no mark · M the measure; the arrows move, Right is the second time, Ctrl+Z takes "
                 "a mark back."));
  if (one && sheet && !done && !apart && !session().known()) {
    draft_for(*sheet);  // one of another sheet goes first
    bring_in(*one, *sheet);
  }
  if (!one) {
    heading_->setText(tr("No one-on-one tonight"));
    under_->setText(tr("Book one in the Diary, or open a person on the Desk and start from there."));
    shown_key_.clear();
    return;
  }
  show_heading(*one, sheet);
  // What is being marked stays as it is while others commit.
  if (shown_key_ != draft_key() || shown_sheet_ != sheet) {
    const Draft* kept = sheet ? draft_for(*sheet) : nullptr;
    const Draft draft = kept ? *kept : Draft();
    const bool as_it_was = one->signed_sheet && sheet && !apart;
    sheet_->show_sheet(sheet, as_it_was ? as_signed(*one->signed_sheet, *sheet) : draft.on_sheet);
    restrictions_->setText(draft.restrictions);
    note_->setText(draft.note);
    shown_key_ = draft_key();
    shown_sheet_ = sheet;
    countersign_->clear();
  } else if (const Draft* kept = drafts_.find(draft_key());
             kept && !done && kept->on_sheet != sheet_->on_sheet()) {
    sheet_->take(kept->on_sheet);
  }
  if (const Draft* kept = drafts_.find(draft_key()); kept && !done) {
    if (restrictions_->text() != kept->restrictions) restrictions_->setText(kept->restrictions);
    if (note_->text() != kept->note) note_->setText(kept->note);
  }
  countersign_->set_member(one->person);
  another_day_->setVisible(!apart);
  fill_assessors(*one);
  member_pin_->setVisible(!apart && !session().store().has_pin(one->person));
  send_in_passing();
  if (done) show_signed(*one);
  if (covered && sheet)
    after_->setText(
        after_->text() + '\n' +
        tr("The marks are covered: whoever watched it too can mark it apart, without having seen them."));
  show_result();
}

void CheckoutsPage::show_heading(const OneOnOne& one, const Sheet* sheet) {
  const QString title =
      sheet && !sheet->title.empty() ? QString::fromStdString(sheet->title) : target_label(one.target);
  heading_->setText(is_apart(one) ? tr("Marked apart: %1", "a machine").arg(title)
                                  : tr("Check-out: %1", "a machine").arg(title));
  QStringList said{name_of(session(), one.person), unit_label(units(session()), one.machine)};
  if (one.when)
    said << long_day(one.when->from, session().zone()) << clock_time(one.when->from, session().zone());
  if (!one.assessor.empty())
    said << tr("with %1", "an assessor").arg(names_of(session(), one.assessor, one.second));
  if (sheet) said << tr("sheet revision %1").arg(sheet->revision);
  QString words = said.join(", ");
  const QStringList left_open = restricted_now(session(), one.person, one.target);
  if (!left_open.isEmpty())
    words += '\n' + tr("%1 That stands through the next check-out that is passed.",
                       "what is restricted, as a sentence")
                        .arg(restricted_sentence(left_open));
  if (one.open && !is_apart(one)) {
    words += '\n' + in_hand_words(session(), *one.open);
    if (sheet && (one.open->sheet.sheet != sheet->name || one.open->sheet.sheet_revision != sheet->revision))
      words += ' ' + tr("That was revision %1 of the sheet; on this one it begins anew.")
                         .arg(one.open->sheet.sheet_revision);
  }
  const Draft* draft = drafts_.find(draft_key());
  const bool mine = draft && session().seated() && session().seated()->id == draft->marked_by;
  if (draft && !one.open && !mine && !draft->marked_by.empty())
    words += '\n' + tr("Marked so far while %1 sat here.").arg(name_of(session(), draft->marked_by));
  if (sheet && one.signed_sheet && one.signed_sheet->sheet_revision != sheet->revision)
    words += '\n' + tr("It was signed on revision %1 of the sheet, which is not the one shown here.")
                        .arg(one.signed_sheet->sheet_revision);
  if (!sheet) words += '\n' + book_.why_none(one.target);
  under_->setText(words);
}

bool CheckoutsPage::asks_for_two(const OneOnOne& one) const {
  return !is_apart(one) && session().two_check_out(one.target, session().now());
}

/// Of those who are booked the one who does not sign first.
void CheckoutsPage::fill_second(const OneOnOne& one, const std::vector<PersonId>& able) {
  const bool two = asks_for_two(one);
  for (QWidget* each : of_two_) each->setVisible(two);
  if (!two) return second_pin_->clear();
  const PersonId first = assessor_->currentData().toString().toStdString();
  const Draft* draft = drafts_.find(one.key());
  PersonId wanted;
  if (draft && draft->with)
    wanted = *draft->with;
  else
    for (const PersonId& each : {one.assessor, one.second})
      if (!each.empty() && session().joined(each) != session().joined(first)) wanted = each;
  second_->clear();
  second_->addItem(tr("choose"), QString());
  for (const PersonId& each : able) second_->addItem(name_of(session(), each), QString::fromStdString(each));
  second_->setCurrentIndex(std::max(0, second_->findData(QString::fromStdString(wanted))));
}

void CheckoutsPage::fill_assessors(const OneOnOne& one) {
  if (is_apart(one)) {
    fill_second(one, {});
    assessor_->clear();
    if (const auto seated = session().seated())
      assessor_->addItem(name_of(session(), seated->id), QString::fromStdString(seated->id));
    return;
  }
  std::vector<PersonId> able = session().decider(std::nullopt).assessors(one.target, session().now());
  std::erase(able, one.person);
  const auto is_able = [&](const PersonId& id) {
    return std::find(able.begin(), able.end(), id) != able.end();
  };
  // Whoever signs sits here; the booking's assessor is the next likely.
  PersonId wanted =
      session().seated() && is_able(session().seated()->id) ? session().seated()->id : one.assessor;
  const Draft* draft = drafts_.find(one.key());
  if (draft && draft->assessor) wanted = *draft->assessor;
  if (!one.assessor.empty() && !is_able(one.assessor)) able.insert(able.begin(), one.assessor);
  assessor_->clear();
  if (wanted.empty()) assessor_->addItem(tr("choose"), QString());
  for (const PersonId& each : able)
    assessor_->addItem(name_of(session(), each), QString::fromStdString(each));
  assessor_->setCurrentIndex(std::max(0, assessor_->findData(QString::fromStdString(wanted))));
  fill_second(one, able);
}

void CheckoutsPage::show_result() {
  const SheetResult now = sheet_->result();
  if (!apart_.empty() && apart_ == current_) {
    suggested_->setText(
        tr("Mark the first showing of each line, as you saw it. This counts for nothing in what anybody may "
           "use; "
           "Figures tells from it how far assessors agree."));
    return;
  }
  suggested_->setText(result_words(now));
  const Draft* draft = drafts_.find(current_);
  const auto by_hand = draft ? draft->outcome : std::nullopt;
  std::optional<Outcome> shown = by_hand;
  if (!shown && now.suggested == Suggested::passed) shown = Outcome::passed;
  if (!shown && now.suggested == Suggested::failed) shown = Outcome::failed;
  outcome_->setCurrentIndex(std::max(0, outcome_->findData(shown ? static_cast<int>(*shown) : -1)));
}

std::optional<Outcome> CheckoutsPage::outcome() const {
  const int chosen = outcome_->currentData().toInt();
  return chosen < 0 ? std::nullopt : std::optional(static_cast<Outcome>(chosen));
}

void CheckoutsPage::keep_draft() {
  const OneOnOne* one = current();
  if (!one || !shown_sheet_) return;
  Draft& draft = drafts_.at(draft_key());
  draft.one = *one;
  draft.second = second();
  draft.sheet = shown_sheet_->name;
  draft.sheet_revision = shown_sheet_->revision;
  draft.marked_by = session().seated() ? session().seated()->id : PersonId();
  draft.changed = session().now();
  if (draft.apart())
    draft.on_sheet = sheet_->on_sheet();
  else
    note_changed(draft, sheet_->on_sheet());
  draft.restrictions = restrictions_->text();
  draft.note = note_->text();
  if (sender() == outcome_) draft.outcome = outcome();
  if (sender() == assessor_) draft.assessor = assessor_->currentData().toString().toStdString();
  if (sender() == second_) draft.with = second_->currentData().toString().toStdString();
  report(drafts_.write());
  send_in_passing();
}

void CheckoutsPage::bring_in(const OneOnOne& one, const Sheet& sheet) {
  const auto open = in_hand(session(), one, sheet);
  if (!open) return;
  const std::string key = one.key();
  const bool fresh = !drafts_.find(key);
  Draft& draft = drafts_.at(key);
  if (fresh) {
    draft.one = one;
    draft.sheet = sheet.name;
    draft.sheet_revision = sheet.revision;
    draft.marked_by = open->marked_by;
    draft.changed = open->last_marked;
  }
  if (take_from_store(draft, *open, sheet))
    emit tell(tr("Something else was written at another station meanwhile: both stand here now."));
}

/// Whoever may not mark, or sits nowhere, keeps it at this station.
Expected<void> CheckoutsPage::send_marks(bool all) {
  Draft* draft = drafts_.find(draft_key());
  unsent_.reset();
  if (!draft || draft->apart() || draft->unsent.empty() || !shown_sheet_ || session().known()) return {};
  if (!session().seated() || session().role() < db::Role::instructor)
    return tl::make_unexpected(*(unsent_ = problem(tr("the marks"), tr("No instructor sits at this station"),
                                                   tr("Sit down with your PIN"))));
  sending_ = true;
  const auto sent = send(session(), *draft, *shown_sheet_, all ? 0 : sheet_->typing());
  sending_ = false;
  report(drafts_.write());
  if (!sent) unsent_ = sent.error();
  return sent;
}

/// What cannot go to the store now is kept here and tried again, so that nobody at a machine has to mind it.
void CheckoutsPage::send_in_passing() {
  if (sending_) return;
  const Draft* draft = drafts_.find(draft_key());
  const bool was_open = draft && !draft->opened.empty();
  [[maybe_unused]] const auto sent = send_marks(false);
  show_kept();
  if (draft && !was_open && !draft->opened.empty()) refresh();
}

void CheckoutsPage::show_kept() {
  kept_->setVisible(unsent_ && foot_->isVisibleTo(this));
  if (unsent_)
    kept_->setText(tr("Kept at this station, not in the shop's store yet: %1. It goes there by itself.",
                      "why not, as a sentence's part")
                       .arg(QString::fromStdString(unsent_->what)));
}

void CheckoutsPage::report(const std::optional<Problem>& problem) {
  if (problem) emit tell_problem(*problem);
}

/// Once, when the page is first shown: a booking's is found again by the booking, others are listed anew.
void CheckoutsPage::take_up_drafts() {
  if (taken_up_) return;
  taken_up_ = true;
  report(drafts_.read(session().now()));
  std::vector<std::string> old;
  for (const auto& [key, draft] : drafts_.all())
    if (Drafts::too_old(draft, session().now())) old.push_back(key);
  for (const std::string& key : old)
    let_go(key, tr("was marked at this station more than %n days ago and not signed", "", Drafts::days_kept));
  for (const auto& [key, draft] : drafts_.all())
    if (!draft.one.booking && !draft.apart()) without_.push_back(draft.one), without_.back().open.reset();
}

void CheckoutsPage::let_go_of_drafts() {
  if (session().known()) return;
  std::vector<std::pair<std::string, QString>> going;
  for (const auto& [key, draft] : drafts_.all()) {
    const auto one = std::ranges::find(all_, draft.one.key(), &OneOnOne::key);
    if (auto became = became_of(session(), draft, one == all_.end() ? nullptr : &*one))
      going.emplace_back(key, *std::move(became));
    else if (!draft.opened.empty() && !session().entry(draft.opened))
      note_lost(drafts_.at(key));
  }
  for (const auto& [key, became] : going) let_go(key, became);
}

void CheckoutsPage::let_go(const std::string& key, const QString& became) {
  const Draft draft = *drafts_.find(key);
  const QString sheet = sheet_words(session(), draft.one), not_sent = not_sent_words(session(), draft);
  const QString said = tr("%1 %2.", "whose run sheet, what became of it").arg(sheet, became);
  drafts_.drop(key);
  if (shown_key_ == key) shown_key_.clear();  // its marks must not stay on the sheet
  if (!not_sent.isEmpty()) drafts_.leave_behind(said + ' ' + not_sent);
  report(drafts_.write());
  if (not_sent.isEmpty())
    emit tell(said);
  else
    report(problem(tr("the run sheet"), said.chopped(1),
                   tr("Read above the sheet what was marked here and not sent, then put it away")));
}

void CheckoutsPage::show_left_behind() {
  left_behind_->setText(drafts_.left_behind().join('\n'));
  left_behind_box_->setVisible(!drafts_.left_behind().isEmpty());
}

void CheckoutsPage::put_away() {
  drafts_.forget_left_behind();
  report(drafts_.write());
  show_left_behind();
  sheet_->setFocus();
}

const Draft* CheckoutsPage::draft_for(const Sheet& sheet) {
  const Draft* draft = drafts_.find(draft_key());
  if (!draft || draft->on_sheet.marks.empty()) return draft;
  if (draft->sheet == sheet.name && draft->sheet_revision == sheet.revision &&
      draft->on_sheet.marks.size() == lines_of(sheet).size())
    return draft;
  let_go(draft_key(), tr("has become another revision since it was marked, so it is marked again"));
  show_left_behind();
  return nullptr;
}

std::optional<Problem> CheckoutsPage::not_yet(const OneOnOne& one) const {
  const SheetResult result = sheet_->result();
  if (const auto measured = sheet_->measured(); !measured) return measured.error();
  if (!outcome())
    return problem(tr("the result"), tr("No result is chosen"),
                   tr("Mark the lines that are left, or choose failed or stopped"));
  if (!may_sign(result, *outcome()))
    return problem(
        tr("the result"),
        tr("This sheet cannot be signed as %1: %2").arg(outcome_words(*outcome()), result_words(result)),
        result.suggested == Suggested::failed ? tr("Sign it as failed, or mend a mark that is wrong")
                                              : tr("Finish the sheet, or sign it as failed or stopped"));
  if (assessor_->currentData().toString().isEmpty())
    return problem(tr("the assessor"), tr("Nobody is chosen"),
                   tr("Choose who watched %1").arg(name_of(session(), one.person)));
  if (*outcome() != Outcome::stopped)
    if (auto missing = countersign_->missing()) return missing;
  if (auto missing = second_missing(one)) return missing;
  if (pin_->text().isEmpty())
    return problem(tr("the signature"), tr("It is not signed yet"),
                   tr("The assessor types their own PIN, then Enter"));
  return std::nullopt;
}

std::optional<Problem> CheckoutsPage::second_missing(const OneOnOne& one) const {
  if (!asks_for_two(one)) return std::nullopt;
  const PersonId second = second_->currentData().toString().toStdString();
  const QString member = name_of(session(), one.person);
  if (second.empty())
    return problem(tr("the second assessor"), tr("Two assessors sign a check-out on this machine"),
                   tr("Choose who watched %1 too").arg(member));
  if (session().joined(second) == session().joined(assessor_->currentData().toString().toStdString()))
    return problem(tr("the second assessor"), tr("%1 is chosen twice").arg(name_of(session(), second)),
                   tr("Choose who else watched %1").arg(member));
  if (second_pin_->text().isEmpty())
    return problem(
        tr("the second assessor"), tr("%1 has not signed it yet").arg(name_of(session(), second)),
        tr("%1 types their own PIN: this is what they watched too").arg(name_of(session(), second)));
  return std::nullopt;
}

void CheckoutsPage::take_cursor_to_missing(const OneOnOne& one) {
  if (outcome() && *outcome() != Outcome::stopped && countersign_->missing())
    return countersign_->take_cursor();
  if (second_missing(one)) {
    const auto second = second_->currentData().toString().toStdString();
    const bool chosen = !second.empty() && second != assessor_->currentData().toString().toStdString();
    return chosen ? second_pin_->setFocus() : second_->setFocus();
  }
  if (outcome() && pin_->text().isEmpty()) pin_->setFocus();
}

void CheckoutsPage::sign() {
  const OneOnOne* shown = current();
  if (!shown || !shown_sheet_ || !foot_->isVisibleTo(this)) return;
  const OneOnOne one = *shown;  // the list is filled anew by the commit
  if (is_apart(one)) return sign_apart(one);
  if (const auto stop = not_yet(one)) {
    emit tell_problem(*stop);
    return take_cursor_to_missing(one);
  }
  if (const auto sent = send_marks(true); !sent) return emit tell_problem(sent.error());
  const Draft* draft = drafts_.find(one.key());
  db::SignCheckout action;
  action.checkout = {one.person, shown_sheet_->checkout, shown_sheet_->revision, *outcome(),
                     assessor_->currentData().toString().toStdString()};
  action.pin = pin_->text().toStdString();
  action.machine = one.machine;
  action.sheet = shown_sheet_->name;
  action.sheet_revision = shown_sheet_->revision;
  action.marks = sheet_->on_sheet().marks;
  action.again = sheet_->on_sheet().again;
  action.measured = sheet_->measured().value();
  action.restrictions = restrictions_in(restrictions_->text());
  action.booking = one.booking;
  if (draft) action.opened = draft->opened;
  if (*outcome() != Outcome::stopped) action.countersign = countersign_->value();
  if (asks_for_two(one))
    action.second = db::SecondAssessor{second_->currentData().toString().toStdString(),
                                       second_pin_->text().toStdString()};
  const Rungs before = rungs_on(session(), one.person, one.target);
  const Outcome outcome_signed = action.checkout.outcome;
  pin_->clear();
  second_pin_->clear();
  sending_ = true;  // or its own draft would seem to have been signed elsewhere
  const auto done = session().commit(action, std::nullopt, note_->text().trimmed().toStdString());
  sending_ = false;
  if (!done) {
    emit tell_problem(done.error());
    countersign_->clear();
    refresh();
    return take_cursor_to_missing(one);
  }
  countersign_->clear();
  drafts_.drop(one.key());
  report(drafts_.write());
  signed_[one.key()] = changed_words(session(), one.person, one.target, before);
  signed_record_[one.key()] = done->entries.front().id;
  refresh();
  desk_->setFocus();
  emit tell(tr("The check-out of %1 is signed: %2.")
                .arg(name_of(session(), one.person), outcome_words(outcome_signed)));
}

PersonId CheckoutsPage::second() const {
  const bool apart = !apart_.empty() && apart_ == current_ && session().seated();
  return apart ? session().joined(session().seated()->id) : PersonId();
}

std::string CheckoutsPage::draft_key() const { return Draft::key_of(current_, second()); }

RecordId CheckoutsPage::checkout_of(const OneOnOne& one) const {
  if (one.signed_sheet) return one.signed_sheet->checkout;
  const auto here = signed_record_.find(one.key());
  return here == signed_record_.end() ? RecordId() : here->second;
}

bool CheckoutsPage::may_mark_apart(const OneOnOne& one) const {
  const auto seated = session().seated();
  const db::Entry* signed_one = session().entry(checkout_of(one));
  const auto* checkout = signed_one ? db::as<Checkout>(signed_one->fact) : nullptr;
  if (!seated || session().role() < db::Role::instructor || !checkout) return false;
  const PersonId second = session().joined(seated->id);
  if (second == session().joined(checkout->assessor) || second == session().joined(checkout->person) ||
      seen_.contains({one.key(), second}) || session().store().saw_marks(signed_one->id, second) ||
      session().zone().day(signed_one->at) != session().zone().day(session().now()))
    return false;
  for (const db::Entry* entry : session().store().of_kind("witnessed")) {
    const auto* witnessed = db::as<db::Witnessed>(entry->fact);
    if (witnessed->checkout == signed_one->id && session().joined(witnessed->assessor) == second)
      return false;
  }
  for (const db::Entry* entry : session().store().of_kind("scored_apart")) {
    const auto* scored = db::as<db::ScoredApart>(entry->fact);
    if (!entry->voided && scored->checkout == signed_one->id && session().joined(scored->assessor) == second)
      return false;
  }
  return session().decider(std::nullopt).able_to_assess(second, one.target, signed_one->at + -1);
}

void CheckoutsPage::begin_apart() {
  if (const OneOnOne* one = current(); one && may_mark_apart(*one)) apart_ = one->key();
  pin_->clear();
  show_current();
  sheet_->setFocus();
}

void CheckoutsPage::show_marks() {
  const auto seated = session().seated();
  if (const OneOnOne* one = current(); one && seated)
    seen_.insert({one->key(), session().joined(seated->id)});
  show_current();
  sheet_->setFocus();
}

/// A second assessor decides nothing, and leaves nothing open.
void CheckoutsPage::show_foot(bool apart) {
  for (QWidget* each : of_the_first_) each->setVisible(!apart);
}

void CheckoutsPage::sign_apart(const OneOnOne& one) {
  const auto seated = session().seated();
  if (!seated)
    return emit tell_problem(problem(tr("the signature"), tr("Nobody sits at this station"),
                                     tr("The second assessor sits down here first")));
  if (pin_->text().isEmpty()) {
    emit tell_problem(problem(tr("the signature"), tr("It is not signed yet"),
                              tr("The second assessor types their own PIN, then Enter")));
    return pin_->setFocus();
  }
  db::ScoreApart action{
      {checkout_of(one), seated->id, shown_sheet_->name, shown_sheet_->revision, sheet_->on_sheet().marks},
      pin_->text().toStdString()};
  pin_->clear();
  if (const auto done = session().commit(action); !done) {
    emit tell_problem(done.error());
    return pin_->setFocus();
  }
  drafts_.drop(draft_key());
  report(drafts_.write());
  apart_.clear();
  refresh();
  desk_->setFocus();
  emit tell(tr("Marked apart by %1; what %2 may use stays as it was.")
                .arg(name_of(session(), seated->id), name_of(session(), one.person)));
}

void CheckoutsPage::show_signed(const OneOnOne& one) {
  const auto words = signed_.find(one.key());
  const QString now = words != signed_.end() ? words->second
                                             : changed_words(session(), one.person, one.target,
                                                             rungs_on(session(), one.person, one.target));
  const Checkout* failed = not_passed(one);
  const db::SheetMarks* marked = failed ? marks_about(session(), checkout_of(one)) : nullptr;
  const bool known = marked && shown_sheet_ && marked->sheet == shown_sheet_->name &&
                     marked->sheet_revision == shown_sheet_->revision && !may_mark_apart(one);
  practise_->setVisible(known);
  practise_->setText(known ? practise_words(*shown_sheet_, *marked, failed->outcome) : QString());
  after_->setText(now);
}

void CheckoutsPage::put_by() {
  const OneOnOne* shown = current();
  if (!shown || !shown_sheet_ || is_apart(*shown)) return;
  const OneOnOne one = *shown;
  if (const auto sent = send_marks(true); !sent) return emit tell_problem(sent.error());
  const Draft* draft = drafts_.find(one.key());
  if (!draft || draft->opened.empty())
    return emit tell_problem(problem(tr("the run sheet"), tr("Nothing is marked yet"),
                                     tr("Move the booking in the Diary, if it is for another day")));
  db::SheetPutBy action{draft->opened, note_->text().trimmed().toStdString(),
                        restrictions_in(restrictions_->text())};
  if (const auto done = session().commit(db::EnterShopFact{std::move(action)}); !done)
    return emit tell_problem(done.error());
  refresh();
  emit tell(tr("Put by. Any station goes on with it, on any day; nothing counts before it is signed."));
  book_next();
}

bool CheckoutsPage::take_card(const QString& card) {
  if (!isVisible() || views_->currentIndex() != 0 || !current() || !apart_.empty()) return false;
  return later_->take_card(card) || (foot_->isVisibleTo(this) && countersign_->take_card(card));
}

void CheckoutsPage::choose_member_pin() {
  const OneOnOne* one = current();
  if (!one) return;
  const QString name = name_of(session(), one->person);
  auto* form = new PinForm(one->person, name);
  auto* box = new QWidget;
  auto* across = new QHBoxLayout(box);
  across->addStretch(1);
  across->addWidget(form, 2);
  across->addStretch(1);
  const int at = views_->addWidget(box);
  const auto leave = [this, box] {
    back_to_sheet();
    views_->removeWidget(box);
    box->deleteLater();
    countersign_->set_member({});
    later_->show_missing({});
    show_current();
    if (later_->isVisible())
      later_->take_cursor();
    else
      countersign_->take_cursor();
  };
  connect(form, &Form::left, this, leave);
  connect(form, &Form::saved, this, [this, form, leave, name] {
    if (const auto done = form->choose(session()); !done) return form->show_problem(done.error());
    leave();
    emit tell(tr("PIN of %1 chosen.").arg(name));
  });
  views_->setCurrentIndex(at);
  form->take_cursor();
}

void CheckoutsPage::print_blank() {
  if (!shown_sheet_) return;
  const auto path = print_blank_sheet(session(), *shown_sheet_);
  if (!path) return emit tell_problem(path.error());
  emit tell(path->isEmpty() ? tr("A blank run sheet went to the printer.")
                            : tr("A blank run sheet was saved as %1.").arg(*path));
}

void CheckoutsPage::issue_sheet() {
  Place place;
  place.page = QStringLiteral("sheets");
  if (const OneOnOne* one = current()) place.target = one->target;
  emit go(place);
}

void CheckoutsPage::enter_from_paper() {
  views_->setCurrentIndex(2);
  paper_entry_->begin();
}

void CheckoutsPage::show_pass_plan() {
  const OneOnOne* one = current();
  views_->setCurrentIndex(1);
  plan_->begin(one ? one->key() : std::string(), one ? one->target : TargetName(),
               final_thickness(shown_sheet_));
}

void CheckoutsPage::back_to_sheet() {
  views_->setCurrentIndex(0);
  sheet_->setFocus();
}

const Checkout* CheckoutsPage::not_passed(const OneOnOne& one) const {
  const db::Entry* entry = session().entry(checkout_of(one));
  const auto* checkout = entry ? db::as<Checkout>(entry->fact) : nullptr;
  return checkout && checkout->outcome != Outcome::passed ? checkout : nullptr;
}

void CheckoutsPage::book_next() {
  const OneOnOne* one = current();
  if (!one) return;
  Place place;
  place.page = QStringLiteral("diary");
  place.person = one->person;
  place.target = one->target;
  emit go(place);
}

void CheckoutsPage::to_desk() {
  const OneOnOne* one = current();
  if (!one) return;
  Place place;
  place.page = QStringLiteral("desk");
  place.person = one->person;
  place.target = one->target;
  emit go(place);
}

}  // namespace wm::app
