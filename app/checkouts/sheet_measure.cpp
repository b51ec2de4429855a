// The two fields of the current line where it measures: what was read, and the instrument's marks.
#include <QKeyEvent>
#include <QLineEdit>
#include <QScrollBar>

#include "app/checkouts/measure_words.h"
#include "app/checkouts/sheet_view.h"
#include "app/theme/theme.h"
#include "app/words/length_words.h"

namespace wm::app {

void SheetView::make_fields() {
  read_ = new QLineEdit(viewport());
  read_->setObjectName("measure");
  read_->setPlaceholderText(tr("measured"));
  read_->setAccessibleName(tr("Measured"));
  marks_apart_ = new QLineEdit(viewport());
  marks_apart_->setObjectName("instrument");
  marks_apart_->setAccessibleName(tr("The instrument's marks"));
  for (QLineEdit* field : {read_, marks_apart_}) {
    field->setMaxLength(40);
    field->setFont(type(TypeSize::small));
    field->installEventFilter(this);
    field->hide();
    connect(field, &QLineEdit::textEdited, this, &SheetView::take_typed);
    connect(field, &QLineEdit::editingFinished, this, &SheetView::typed);
  }
}

/// What is measured at the line; null where nothing is.
const Measure* SheetView::measure_at(std::size_t line) const {
  const auto& measure = lines_[line]->measure;
  return measure && !first_only_ ? &*measure : nullptr;
}

std::optional<Expected<LineMeasured>> SheetView::understood_at(std::size_t line) const {
  const Measure* measure = measure_at(line);
  const QString typed = on_it_.typed[line].measure.trimmed();
  if (!measure || typed.isEmpty()) return std::nullopt;
  return understood(*measure, static_cast<int>(line) + 1, typed.toStdString(),
                    on_it_.typed[line].instrument.trimmed().toStdString(), decimal_mark());
}

Expected<std::vector<LineMeasured>> SheetView::measured() const {
  std::vector<LineMeasured> out;
  for (std::size_t i = 0; i < lines_.size(); ++i) {
    auto line = understood_at(i);
    if (!line) continue;
    if (!*line) {
      Problem problem = line->error();
      problem.where = tr("line %1").arg(i + 1).toStdString() + ", " + problem.where;
      return tl::make_unexpected(problem);
    }
    out.push_back(std::move(**line));
  }
  return out;
}

SheetResult SheetView::result() const {
  if (!sheet_) return {};
  std::vector<LineMeasured> readable;
  for (std::size_t i = 0; i < lines_.size(); ++i)
    if (const auto line = understood_at(i); line && *line) readable.push_back(**line);
  return result_of(*sheet_, on_it_.marks, on_it_.again, by_line(*sheet_, readable));
}

/// How the measure at a line was found; nothing while there is none, or the instrument cannot tell.
std::optional<Verdict> SheetView::verdict_at(std::size_t line) const {
  const auto kept = understood_at(line);
  if (!kept || !*kept) return std::nullopt;
  const auto measured = measured_of(*measure_at(line), **kept);
  if (!measured || too_coarse(*measure_at(line), *measured)) return std::nullopt;
  return judge(*measure_at(line), *measured).verdict;
}

QString SheetView::said_of_measure(std::size_t line) const {
  const Measure& measure = *measure_at(line);
  const auto kept = understood_at(line);
  if (!kept) return asked_words(measure);
  if (!*kept) return QString::fromStdString(kept->error().what);
  return judged_words(measure, **kept);
}

void SheetView::place_fields() {
  const bool here = !lines_.empty() && !read_only_ && measure_at(static_cast<std::size_t>(line_));
  const auto at = static_cast<std::size_t>(std::max(0, line_));
  const QRect box = here ? field_box(at, false) : QRect();
  const bool seen = here && box.top() >= heads_ && box.bottom() <= viewport()->height();
  if (!seen && (read_->hasFocus() || marks_apart_->hasFocus())) setFocus();
  read_->setVisible(seen);
  marks_apart_->setVisible(seen);
  if (!seen) return;
  read_->setGeometry(box);
  marks_apart_->setGeometry(field_box(at, true));
  if (read_->text() != on_it_.typed[at].measure) read_->setText(on_it_.typed[at].measure);
  if (marks_apart_->text() != on_it_.typed[at].instrument) marks_apart_->setText(on_it_.typed[at].instrument);
  marks_apart_->setPlaceholderText(own_marks_words(*measure_at(at)));
}

void SheetView::take_typed() {
  const auto at = static_cast<std::size_t>(line_);
  on_it_.typed[at] = {read_->text(), marks_apart_->text()};
  lay_out();  // what is said of it may take more lines than before
  place_fields();
  tell_screen_reader();
  viewport()->update();
  emit marked();
}

/// To the field of the current line, where it has one.
void SheetView::go_to_field() {
  if (!read_->isVisibleTo(this)) return;
  read_->setFocus(Qt::TabFocusReason);
  read_->selectAll();
}

/// To the next line that is open, and into its field where that is what is missing.
void SheetView::go_on() {
  setFocus();
  go_to(next_open());
  const auto at = static_cast<std::size_t>(line_);
  if (measure_at(at) && !verdict_at(at) && on_it_.marks[at] != Mark::not_shown) go_to_field();
}

bool SheetView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress || (watched != read_ && watched != marks_apart_))
    return QAbstractScrollArea::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  if (key->modifiers() & ~Qt::KeypadModifier) return false;
  switch (key->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      go_on();
      return true;
    case Qt::Key_Up:
    case Qt::Key_Down:
      setFocus();
      go_to(line_ + (key->key() == Qt::Key_Up ? -1 : 1));
      return true;
    case Qt::Key_Escape:
      setFocus();
      return true;
    default:
      return false;
  }
}

void SheetView::scrollContentsBy(int, int) {
  place_fields();
  viewport()->update();
}

}  // namespace wm::app
