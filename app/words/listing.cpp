#include "app/words/listing.h"

#include "app/words/tr.h"

namespace wm::app {

namespace {

QString joined(QStringList parts, const QString& last_two) {
  if (parts.size() < 2) return parts.value(0);
  const QString last = parts.takeLast();
  return last_two.arg(parts.join(Words::tr(", ", "between parts of a list")), last);
}

}  // namespace

QString and_list(QStringList parts) {
  return joined(std::move(parts), Words::tr("%1 and %2", "the last two of a list"));
}

QString or_list(QStringList parts) {
  return joined(std::move(parts), Words::tr("%1 or %2", "the last two of a list"));
}

QString capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

}  // namespace wm::app
