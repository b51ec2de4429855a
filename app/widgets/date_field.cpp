#include "app/widgets/date_field.h"

#include <QDate>
#include <QKeyEvent>
#include <QLocale>

namespace wm::app {

namespace {

QDate date(Day d) {
  const CivilDate c = civil(d);
  return QDate(c.year, c.month, c.day);
}

Day day_from(const QDate& d) { return day_of({d.year(), d.month(), d.day()}); }

std::optional<Day> known_year(const QDate& d) {
  if (!d.isValid() || d.year() < 1900 || d.year() > 2999) return std::nullopt;
  return day_from(d);
}

}  // namespace

std::optional<Day> read_day(const QString& text, int this_year) {
  const QString typed = text.simplified();
  const QLocale here;
  const QString forms[] = {"yyyy-MM-dd", "d MMM yyyy", "d MMMM yyyy",
                           "d.M.yyyy",   "MMM d yyyy", "MMMM d, yyyy"};
  for (const QString& form : forms)
    if (auto day = known_year(here.toDate(typed, form))) return day;
  for (const QString& form : {QStringLiteral("d MMM"), QStringLiteral("d MMMM"), QStringLiteral("d.M.")})
    if (const QDate d = here.toDate(typed + ' ' + QString::number(this_year), form + " yyyy"); d.isValid())
      return known_year(d);
  // The locale's short form has two digits for the year; asked with four so that no century is guessed.
  QString own = here.dateFormat(QLocale::ShortFormat);
  if (!own.contains("yyyy")) own.replace("yy", "yyyy");
  return known_year(here.toDate(typed, own));
}

DateField::DateField(const QString& empty, QWidget* parent) : QLineEdit(parent) {
  setPlaceholderText(empty);
  connect(this, &QLineEdit::editingFinished, this, &DateField::take);
}

void DateField::set_day(std::optional<Day> day) {
  day_ = day;
  setText(day ? QLocale().toString(date(*day), tr("d MMM yyyy", "a date as a field shows it")) : QString());
}

std::optional<Day> DateField::typed() const { return read_day(text(), civil(today_).year); }

bool DateField::is_good() const { return text().trimmed().isEmpty() || read_day(text(), civil(today_).year); }

void DateField::take() {
  const auto typed = read_day(text(), civil(today_).year);
  if (!typed && !text().trimmed().isEmpty()) {
    emit refused({"date", tr("“%1” is not a date").arg(text()).toStdString(),
                  tr("Type it as 25 Nov 2026 or 2026-11-25, or leave it empty").toStdString()});
    return;
  }
  if (typed == day_) return;
  set_day(typed);
  emit day_changed();
}

void DateField::move(int days, int months) {
  const QDate to = date(day_.value_or(today_)).addDays(days).addMonths(months);
  if (const auto day = known_year(to)) {
    set_day(day);
    emit day_changed();
  }
}

void DateField::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Up:
      return move(1, 0);
    case Qt::Key_Down:
      return move(-1, 0);
    case Qt::Key_PageUp:
      return move(0, 1);
    case Qt::Key_PageDown:
      return move(0, -1);
    default:
      QLineEdit::keyPressEvent(event);
  }
}

}  // namespace wm::app
