#include "app/journal/journal_page.h"

#include <QCollator>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <algorithm>
#include <set>

#include "app/lists/effects.h"
#include "app/lists/second_fields.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

QString words(const std::string& text) { return QString::fromStdString(text); }

template <class T>
const T* as(const db::Entry& entry) {
  const auto* fact = std::get_if<db::ShopFact>(&entry.fact);
  return fact ? std::get_if<T>(fact) : nullptr;
}

bool is_pause(const db::Entry& entry) {
  const auto* fact = std::get_if<Fact>(&entry.fact);
  return fact && (std::holds_alternative<Suspend>(*fact) || std::holds_alternative<Reinstate>(*fact));
}

}  // namespace

JournalPage::JournalPage(Session& session, QWidget* parent)
    : ListPage(session, tr("words of a record, a name, a note"),
               {{tr("No."), 64}, {tr("When"), 106}, {tr("What it says"), 0}, {tr("Entered by"), 140}},
               parent),
      look_(new LookView(session)),
      as_sat_(new AsSatView(session)),
      kind_(new QComboBox),
      person_(new QComboBox),
      shift_(new QCheckBox(tr("What I did &this shift"))),
      reader_(record_reader(session)) {
  kind_->setObjectName("kind");
  kind_->setAccessibleName(tr("Kind of record"));
  person_->setObjectName("person");
  person_->setAccessibleName(tr("Person"));
  shift_->setObjectName("shift");
  for (QComboBox* box : {kind_, person_}) {
    box->setFixedWidth(150);
    filters_->addWidget(box);
    connect(box, &QComboBox::currentIndexChanged, this, [this] { ListPage::refresh(); });
  }
  filters_->addWidget(shift_);
  connect(shift_, &QCheckBox::toggled, this, [this] { ListPage::refresh(); });
  auto* look = new KeyButton(tr("Look the file through"), QKeySequence("Ctrl+L"));
  look->setObjectName("look");
  filters_->addWidget(look);
  views_->addWidget(look_);
  views_->addWidget(as_sat_);
  connect(as_sat_, &AsSatView::left, this, &JournalPage::leave_look);
  connect(look, &QPushButton::clicked, this, &JournalPage::look_through);
  connect(look_, &LookView::left, this, &JournalPage::leave_look);
}

void JournalPage::look_through() {
  views_->setCurrentWidget(look_);
  look_->begin();
}

void JournalPage::show_as_sat(const RecordId& record) {
  if (!as_sat_->open(record)) return;
  views_->setCurrentWidget(as_sat_);
  as_sat_->setFocus();
}

void JournalPage::leave_look() {
  views_->setCurrentIndex(0);
  put_cursor_back();
}

void JournalPage::refresh() {
  read_lines();
  fill_filters();
  ListPage::refresh();
}

void JournalPage::open(const Place& place) {
  panel_->close_form();
  leave_look();
  if (!place.person.empty()) person_->setCurrentIndex(std::max(0, person_->findData(words(place.person))));
  if (!place.record.empty()) {
    search_->clear();
    kind_->setCurrentIndex(0);
    person_->setCurrentIndex(0);
    shift_->setChecked(false);
    list_->choose(words(place.record));
  }
  search_->setFocus(Qt::OtherFocusReason);
  search_->selectAll();
}

/// Whether sentences made before may read otherwise now: somebody is called otherwise, or text is gone.
bool changes_sentences(const db::Entry& entry) {
  return as<db::Details>(entry) || as<db::Erased>(entry) || as<db::Blanked>(entry) || as<db::Join>(entry);
}

/// Sentences are made once: a record never changes. Where what they are made of did, or others were known,
/// all are made again.
void JournalPage::read_lines() {
  const auto& entries = session().store().entries();
  const bool as_before = read_as_known_ == session().known();
  if (read_at_ == session().store().last_commit() && as_before) return;
  read_at_ = session().store().last_commit();
  read_as_known_ = session().known();
  reader_ = record_reader(session());
  const auto first_new =
      entries.begin() + static_cast<std::ptrdiff_t>(std::min(lines_.size(), entries.size()));
  if (lines_.size() >= entries.size() || !as_before ||
      std::any_of(first_new, entries.end(), changes_sentences)) {
    lines_.clear();
    struck_by_.clear();
  }
  for (std::size_t i = lines_.size(); i < entries.size(); ++i) {
    lines_.push_back(line_of(entries[i]));
    if (const auto* strike = as<db::StrikeOut>(entries[i])) struck_by_[strike->record] = entries[i].id;
  }
}

JournalPage::Line JournalPage::line_of(const db::Entry& entry) const {
  Line line{record_sentence(entry, reader_),
            record_kind(entry),
            reader_.entered_by(entry.entered_by),
            {},
            people_in(entry, reader_)};
  const QString note = is_pause(entry) ? QString() : words(entry.note);
  line.searched = folded(line.sentence + " " + line.kind + " " + line.entered_by + " " + note);
  return line;
}

void JournalPage::fill_filters() {
  const QString kind = kind_->currentData().toString(), person = person_->currentData().toString();
  const QSignalBlocker quiet_kind(kind_), quiet_person(person_);
  kind_->clear();
  kind_->addItem(tr("Every kind"));
  std::set<QString> kinds;
  const auto& entries = session().store().entries();
  for (std::size_t i = 0; i < lines_.size(); ++i)
    if (was_there(entries[i])) kinds.insert(lines_[i].kind);
  for (const QString& name : kinds) kind_->addItem(name, name);
  person_->clear();
  person_->addItem(tr("Everybody"));
  std::vector<std::pair<QString, QString>> people;
  for (const db::Person& p : session().people()) people.emplace_back(person_name(p), words(p.id));
  QCollator order;
  std::ranges::sort(people,
                    [&order](const auto& a, const auto& b) { return order.compare(a.first, b.first) < 0; });
  for (const auto& [name, id] : people) person_->addItem(name, id);
  kind_->setCurrentIndex(std::max(0, kind_->findData(kind)));
  person_->setCurrentIndex(std::max(0, person_->findData(person)));
}

/// Whether it had been entered by the time that is asked about.
bool JournalPage::was_there(const db::Entry& entry) const {
  return !session().known() || entry.recorded <= *session().known();
}

/// The shop's day is the shift: what may be struck out again goes by it too.
bool JournalPage::in_this_shift(const db::Entry& entry) const {
  return session().seated() && entry.entered_by == session().seated()->id &&
         session().zone().day(entry.recorded) == session().zone().day(session().now());
}

bool JournalPage::passes(const db::Entry& entry, const Line& line, const TypedWords& wanted) const {
  if (shift_->isChecked() && !in_this_shift(entry)) return false;
  if (kind_->currentIndex() > 0 && line.kind != kind_->currentData().toString()) return false;
  if (person_->currentIndex() > 0) {
    const PersonId person = person_->currentData().toString().toStdString();
    const auto same = [&](const PersonId& id) {
      return session().store().joined(id) == session().store().joined(person);
    };
    if (!std::ranges::any_of(line.people, same)) return false;
  }
  return wanted.in_folded(line.searched);
}

std::vector<ListRow> JournalPage::rows(const QString& typed) {
  const TypedWords wanted(typed);
  const auto& entries = session().store().entries();
  std::vector<ListRow> rows;
  std::size_t all = 0;
  for (std::size_t i = std::min(entries.size(), lines_.size()); i-- > 0;) {
    const db::Entry& entry = entries[i];
    if (!was_there(entry)) continue;
    ++all;
    if (passes(entry, lines_[i], wanted)) rows.push_back(row(entry, lines_[i]));
  }
  count_->setText(tr("Records: %1 of %2, latest first.").arg(rows.size()).arg(all));
  return rows;
}

ListRow JournalPage::row(const db::Entry& entry, const Line& line) const {
  const Zone& zone = session().zone();
  return {words(entry.id),
          {{QString::number(entry.order), {}},
           {short_day(entry.at, zone), clock_time(entry.at, zone)},
           {line.sentence, session().struck(entry) ? struck_words(entry) : note_of(entry)},
           {line.entered_by,
            entry.from_paper ? tr("from paper, %1").arg(short_day(entry.recorded, zone)) : QString()}},
          session().struck(entry)};
}

QString JournalPage::struck_words(const db::Entry& entry) const {
  const auto found = struck_by_.find(entry.id);
  const db::Entry* by = found == struck_by_.end() ? nullptr : reader_.record_of(found->second);
  if (!by) return tr("struck out on %1").arg(short_day(*entry.voided, session().zone()));
  return tr("struck out on %1 by %2: %3")
      .arg(short_day(*entry.voided, session().zone()), reader_.entered_by(by->entered_by),
           said_words(as<db::StrikeOut>(*by)->reason));
}

/// Why somebody is paused is for instructors and managers.
QString JournalPage::note_of(const db::Entry& entry) const {
  const auto role = session().role();
  const bool trusted = role == db::Role::instructor || role == db::Role::manager;
  return is_pause(entry) && !trusted ? QString() : words(entry.note);
}

void JournalPage::describe(const QString& id) {
  panel_->start();
  const auto& entries = session().store().entries();
  const db::Entry* entry = reader_.record_of(id.toStdString());
  if (!entry || lines_.size() != entries.size()) return panel_->heading(tr("No such record"));
  const Line& line = lines_[static_cast<std::size_t>(entry - entries.data())];
  const Zone& zone = session().zone();
  panel_->heading(line.kind);
  panel_->paragraph(line.sentence);
  if (session().struck(*entry))
    panel_->paragraph(tr("This record is %1.", "struck out on ...").arg(struck_words(*entry)));
  panel_->line(tr("Happened"), tr("%1, %2").arg(long_day(entry->at, zone), clock_time(entry->at, zone)));
  panel_->line(tr("Entered"),
               tr("%1, %2").arg(long_day(entry->recorded, zone), clock_time(entry->recorded, zone)));
  panel_->line(tr("By"), line.entered_by);
  if (!entry->second.empty()) panel_->line(tr("Vouched for by"), reader_.name_of(entry->second));
  panel_->line(tr("From"), entry->from_paper ? tr("a paper from the past") : QString());
  panel_->line(tr("Note"), note_of(*entry));
  panel_->line(tr("Record"), tr("number %1").arg(entry->order));
  panel_->section(tr("What can be done"));
  const auto* own = std::get_if<db::ShopFact>(&entry->fact);
  if (!entry->voided && (own == nullptr || !db::is_for_good(*own)))
    panel_->button(tr("Strike out"), QKeySequence("Ctrl+D"), [this, copy = *entry] { strike_out(copy); })
        ->setObjectName("strike_out");
  if (session().role() == db::Role::manager && session().store().has_text_to_erase(entry->id))
    panel_
        ->button(tr("Erase its text"), QKeySequence("Ctrl+Shift+B"),
                 [this, copy = *entry] { erase_text(copy); })
        ->setObjectName("erase_text");
  // What somebody answered is for whoever sits at the desk, not for who passes by it.
  if (session().role() && sat_attempt(session(), entry->id))
    panel_
        ->button(tr("Show the quiz as sat"), QKeySequence("Ctrl+G"),
                 [this, record = entry->id] { show_as_sat(record); })
        ->setObjectName("show_as_sat");
  if (!line.people.empty())
    panel_
        ->button(tr("Open %1 at the desk").arg(reader_.name_of(line.people.front())), QKeySequence("Ctrl+O"),
                 [this, person = line.people.front()] {
                   emit go({"desk", person, {}, {}, {}});
                 })
        ->setObjectName("desk");
}

void JournalPage::strike_out(const db::Entry& entry) {
  auto* form = new Form(tr("Strike out"), tr("Strike out"));
  form->say(record_sentence(entry, reader_));
  std::vector<Shift> resting;
  for (const StandingChange& change : session().current().rests_on(entry.id, session().now()))
    resting.push_back({change.person, change.target, session().now(), {}});
  form->say(resting.empty()
                ? tr("Nobody's standing rests on it now.")
                : tr("Standings that rest on it now: %1.").arg(affected_words(resting, session().store())));
  auto* reason = form->line(tr("Why"), "reason");
  form->say(
      tr("It stays in the journal, struck out, with this reason and your name. From then on it counts for "
         "nothing."));
  const SecondFields second(session(), *form, db::StrikeOutRecord{entry.id, {}});
  run_form(form, tr("Struck out."), [this, reason, second, id = entry.id]() -> Expected<db::Committed> {
    const std::string why = reason->text().simplified().toStdString();
    if (why.empty())
      return tl::unexpected(Problem{tr("why").toStdString(), tr("There is no reason yet").toStdString(),
                                    tr("Write why it is struck out").toStdString()});
    const auto vouched = second.second();
    if (!vouched) return tl::unexpected(vouched.error());
    return session().commit(db::StrikeOutRecord{id, why}, std::nullopt, {}, false, *vouched);
  });
}

/// What cannot be taken back is asked for in figures: the record's number, typed.
void JournalPage::erase_text(const db::Entry& entry) {
  auto* form = new Form(tr("Erase its text"), tr("Erase it for good"));
  form->say(record_sentence(entry, reader_));
  form->say(as<db::Details>(entry) ? tr("The details of then go, and nobody can bring them back. "
                                        "Pages that show what was known then show "
                                        "the details that took their place.")
                                   : tr("The note, the reason or the answers in this record go, and "
                                        "nobody can bring them back. The record "
                                        "stays, and all that rests on it."));
  form->say(tr("Copies of the shop made before still have it: the oldest backup goes last."));
  const QString number = QString::number(entry.order);
  QLineEdit* typed = form->line(tr("Type the record's number to go on: %1").arg(number), "typed_number");
  run_form(form, tr("Erased."), [this, id = entry.id, number, typed]() -> Expected<db::Committed> {
    if (typed->text().trimmed() != number)
      return tl::unexpected(Problem{tr("number").toStdString(), tr("That is another number").toStdString(),
                                    tr("Type it as it stands above, or leave it").toStdString()});
    return session().commit(db::BlankRecord{id});
  });
}

}  // namespace wm::app
