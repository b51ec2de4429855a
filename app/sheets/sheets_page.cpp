#include "app/sheets/sheets_page.h"

#include <algorithm>

#include "app/lists/effects.h"
#include "app/sheets/sheet_editor.h"
#include "app/widgets/person_search.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

QString missing_row(const MissingSheet& missing) {
  return "missing/" + QString::fromStdString(missing.machine_class) + '/' +
         QString::fromStdString(missing.checkout);
}

QString sheet_title(const Sheet& sheet) {
  return sheet.title.empty() ? class_label(sheet.machine_class) : QString::fromStdString(sheet.title);
}

qsizetype how_many(const Sheet& sheet, bool SheetLine::*what) {
  return std::ranges::count_if(lines_of(sheet), [&](const SheetLine* line) { return line->*what; });
}

}  // namespace

SheetsPage::SheetsPage(Session& session, QWidget* parent)
    : WorkPage(session, "sheet", new SheetEditor(session), tr("a machine"),
               {{tr("Name"), 0}, {tr("Revision"), 90}, {tr("Counts"), 190}, {tr("Lines"), 80}}, parent) {
  connect(list_, &ListView::opened, this, [this] { may_issue() ? edit() : look_through(); });
}

void SheetsPage::read_issued() {
  sheets_ = issued_sheets(session());
  missing_ = missing_sheets(session(), sheets_);
}

void SheetsPage::open(const Place& place) {
  back();
  search_->clear();
  const std::string wanted(class_of(place.target));
  for (const MissingSheet& each : missing_)
    if (each.machine_class == wanted) list_->choose(missing_row(each));
  for (const SheetRevision& each : sheets_)
    if (each.sheet.machine_class == wanted && each.in_force) list_->choose(revision_id(each));
  search_->selectAll();
}

std::vector<ListRow> SheetsPage::rows(const QString& typed) {
  const TypedWords wanted(typed);
  std::vector<ListRow> rows;
  for (const MissingSheet& each : missing_) {
    const QString label = class_label(each.machine_class);
    if (!wanted.in(label + ' ' + QString::fromStdString(each.checkout))) continue;
    rows.push_back({missing_row(each),
                    {{label, {}, true}, {}, {tr("none has been issued"), tr("the rules ask for one")}, {}},
                    false});
  }
  for (const SheetRevision& each : sheets_) {
    const QString label = sheet_title(each.sheet);
    if (wanted.in(label + ' ' + QString::fromStdString(each.sheet.machine_class)))
      rows.push_back(revision_row(each, label, line_count(each.sheet)));
  }
  count_->setText(
      missing_.empty()
          ? tr("Revisions: %1").arg(sheets_.size())
          : tr("Revisions: %1; machines without one: %2").arg(sheets_.size()).arg(missing_.size()));
  return rows;
}

const SheetRevision* SheetsPage::chosen_sheet() const {
  const auto found = std::ranges::find(sheets_, list_->chosen(), revision_id);
  return found == sheets_.end() ? nullptr : &*found;
}

const MissingSheet* SheetsPage::chosen_missing() const {
  const QString id = list_->chosen();
  const auto found = std::ranges::find(missing_, id, missing_row);
  return found == missing_.end() ? nullptr : &*found;
}

void SheetsPage::describe(const QString&) {
  panel_->start();
  if (const MissingSheet* missing = chosen_missing())
    describe_missing(*missing);
  else if (const SheetRevision* sheet = chosen_sheet())
    describe_sheet(*sheet);
  else
    panel_->heading(sheets_.empty() && missing_.empty() ? tr("No run sheet has been issued yet")
                                                        : tr("None of that name"));
  if (!may_issue()) return;
  const auto own = std::ranges::count_if(missing_, [](const MissingSheet& each) { return each.own; });
  if (own > 1) {
    panel_->section(tr("All at once"));
    panel_
        ->button(tr("Take over the program's for %n machines that have none", "", static_cast<int>(own)),
                 QKeySequence("Ctrl+Shift+N"), [this] { take_these_over(missing_); })
        ->setObjectName("take_all");
  }
  panel_->section(tr("From a file"));
  panel_->button(tr("Open a run sheet's text"), QKeySequence::Open, [this] { ask_for_file(); })
      ->setObjectName("open_file");
}

void SheetsPage::describe_missing(const MissingSheet& missing) {
  panel_->heading(class_label(missing.machine_class));
  panel_->paragraph(
      tr("The rules ask for the check-out %1 here, and no run sheet has been issued for it: nobody "
         "can be checked out before there is one.")
          .arg(item_label(missing.checkout)));
  if (missing.own)
    panel_->paragraph(
        tr("One comes with the program. It is a pattern: read it against the maker's manual first."));
  if (!may_issue()) return panel_->quiet(tr("A manager issues it."));
  panel_->section(tr("What can be done"));
  panel_
      ->button(missing.own ? tr("Begin with the program's") : tr("Write one"), QKeySequence("Ctrl+Return"),
               [this] { edit(); })
      ->setObjectName("edit");
  if (!missing.own) {
    panel_
        ->button(tr("Begin with one of the program's"), QKeySequence("Ctrl+B"),
                 [this] {
                   if (const MissingSheet* chosen = chosen_missing()) begin_like(*chosen);
                 })
        ->setObjectName("begin_like");
    return;
  }
  panel_
      ->button(tr("Take it over as it is"), QKeySequence("Ctrl+T"),
               [this] {
                 if (const MissingSheet* chosen = chosen_missing()) take_these_over({*chosen});
               })
      ->setObjectName("take_over");
  add_contents(missing.own->sheet);
}

void SheetsPage::describe_sheet(const SheetRevision& issued) {
  panel_->heading(sheet_title(issued.sheet));
  panel_->quiet(tr("Revision %1, issued on %2.")
                    .arg(QString::number(issued.sheet.revision), short_day(issued.issued, session().zone())));
  if (!issued.text.changed.empty()) panel_->paragraph(QString::fromStdString(issued.text.changed));
  panel_->line(tr("Machine"), class_label(issued.sheet.machine_class));
  panel_->line(tr("Check-out"), item_label(issued.sheet.checkout));
  panel_->section(tr("What can be done"));
  if (may_issue())
    panel_->button(tr("Edit it into the next revision"), QKeySequence("Ctrl+Return"), [this] { edit(); })
        ->setObjectName("edit");
  panel_->button(tr("Look through it"), QKeySequence("Ctrl+L"), [this] { look_through(); })
      ->setObjectName("look");
  panel_->button(tr("Save as a file"), QKeySequence::Save, [this] { ask_where(); })->setObjectName("save");
  add_contents(issued.sheet);
}

void SheetsPage::add_contents(const Sheet& sheet) {
  panel_->section(tr("What is on it"));
  panel_->line(tr("Lines"), tr("%1, critical of them %2", "numbers of lines")
                                .arg(line_count(sheet))
                                .arg(how_many(sheet, &SheetLine::critical)));
  for (const SheetSection& section : sheet.sections)
    panel_->line(QString::fromStdString(section.name), tr("lines: %1").arg(section.lines.size()));
}

void SheetsPage::look_through() {
  if (const SheetRevision* sheet = chosen_sheet()) show_editor({sheet->text.text, {}}, false, {});
}

void SheetsPage::edit() {
  if (const MissingSheet* missing = chosen_missing()) return edit_missing(*missing);
  if (const SheetRevision* sheet = chosen_sheet()) edit_sheet(*sheet);
}

/// The text as it stands, under the next number.
void SheetsPage::edit_sheet(const SheetRevision& sheet) {
  const int next = next_revision(session(), sheets_, sheet.sheet);
  show_editor({with_revision(sheet.text.text, next, "["), {}}, true, QString::fromStdString(sheet.text.name));
}

void SheetsPage::edit_missing(const MissingSheet& missing) {
  if (!missing.own) return show_editor({new_sheet_text(session(), missing), {}}, true, missing_row(missing));
  const int next = next_revision(session(), sheets_, missing.own->sheet);
  show_editor({with_revision(missing.own->text, next, "["), {}}, true, missing_row(missing));
}

void SheetsPage::begin_like(const MissingSheet& missing) {
  std::vector<std::pair<QString, QString>> choices;
  for (std::size_t i = 0; i < own_sheets().size(); ++i)
    if (i == 0 || own_sheets()[i].sheet.name != own_sheets()[i - 1].sheet.name)  // the newest of each
      choices.emplace_back(QString::number(i), sheet_title(own_sheets()[i].sheet));
  auto* form = new Form(class_label(missing.machine_class), tr("Edit it"));
  QComboBox* which = form->choice(tr("Begin with the program's for"), "begin_with", choices);
  form->say(tr("Read every line against this machine and its maker's manual."));
  connect(form, &Form::saved, this, [this, missing, which] {
    const Sheet& like = own_sheets()[which->currentData().toString().toUInt()].sheet;
    const std::string text = new_sheet_text(session(), missing, &like);
    panel_->close_form();
    show_editor({text, {}}, true, missing_row(missing));
  });
  panel_->show_form(form);
}

void SheetsPage::take_these_over(const std::vector<MissingSheet>& missing) {
  const auto done = take_over(session(), sheets_, missing);
  if (!done) return emit tell_problem(done.error());
  emit tell((tr("Taken over.") + ' ' + changed_sentence(done->shifts, session().store())).trimmed());
}

WorkPage::FileWords SheetsPage::file_words() const {
  return {tr("Open a run sheet's text"), tr("Save the run sheet as a file"),
          tr("run-sheet.txt", "a file's name")};
}

std::optional<WorkFile> SheetsPage::chosen_file() const {
  if (const MissingSheet* missing = chosen_missing())
    return missing->own ? std::optional(WorkFile{missing->own->text, {}}) : std::nullopt;
  const SheetRevision* sheet = chosen_sheet();
  return sheet ? std::optional(WorkFile{sheet->text.text, {}}) : std::nullopt;
}

}  // namespace wm::app
