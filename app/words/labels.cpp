#include "app/words/labels.h"

#include "app/words/listing.h"
#include "app/words/tr.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

QString plain(std::string_view name) {
  QString text = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
  text.replace('-', ' ').replace('_', ' ');
  // Combination machines and abbreviations are written as the trade writes them.
  text.replace(QLatin1String("jointer planer"), QLatin1String("jointer/planer"), Qt::CaseInsensitive);
  QStringList words = text.split(' ', Qt::SkipEmptyParts);
  for (QString& word : words)
    for (const char* capitals : {"cnc", "mig", "tig", "mdf", "3d", "uv", "ppe", "co2", "led"})
      if (word.compare(QLatin1String(capitals), Qt::CaseInsensitive) == 0) word = word.toUpper();
  return words.join(' ');
}

std::string_view mode_of(std::string_view target) {
  const auto slash = target.find('/');
  return slash == std::string_view::npos ? std::string_view() : target.substr(slash + 1);
}

}  // namespace

QString item_label(std::string_view item) { return capital(plain(item)); }

QString class_label(std::string_view machine_class) { return capital(plain(machine_class)); }

QString target_label(const TargetName& target) {
  const auto mode = mode_of(target);
  if (mode.empty()) return class_label(target);
  return Words::tr("%1, %2", "a machine and its mode").arg(class_label(class_of(target)), plain(mode));
}

QString target_phrase(std::string_view target) {
  const auto mode = mode_of(target);
  const QString machine = plain(class_of(target));
  if (mode.empty()) return Words::tr("the %1", "a machine").arg(machine);
  return Words::tr("the %1 for %2", "a machine and its mode").arg(machine, plain(mode));
}

QString mark_words(Mark mark) {
  switch (mark) {
    case Mark::none:
      return Words::tr("no mark");
    case Mark::shown:
      return Words::tr("shown");
    case Mark::shown_when_asked:
      return Words::tr("shown when asked");
    case Mark::not_shown:
      return Words::tr("not shown");
  }
  return {};
}

QString revision_words(int revision) {
  return revision > 0 ? Words::tr(", revision %1", "ends a phrase").arg(revision) : QString();
}

QString person_name(const std::optional<db::Person>& person) {
  if (!person) return Words::tr("somebody unknown");
  const QString given = QString::fromStdString(person->given),
                family = QString::fromStdString(person->family);
  QString name = Words::tr("%1 %2", "given name, family name").arg(given, family).trimmed();
  if (!name.isEmpty()) return name;
  if (!person->number.empty()) return Words::tr("number %1").arg(QString::fromStdString(person->number));
  // Erased: the store's own number for them is all that is left.
  const bool numbered =
      person->id.size() > 1 && person->id.find_first_not_of("0123456789", 1) == std::string::npos;
  return Words::tr("person %1", "a number")
      .arg(QString::fromStdString(numbered ? person->id.substr(1) : person->id));
}

}  // namespace wm::app
