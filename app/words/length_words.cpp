#include "app/words/length_words.h"

#include <QLocale>

#include "core/measure/show.h"

namespace wm::app {

DecimalMark decimal_mark() {
  return QLocale().decimalPoint() == QStringLiteral(",") ? DecimalMark::comma : DecimalMark::point;
}

QString length_words(const std::string& kept) {
  QString out = QString::fromStdString(kept);
  return out.replace(QStringLiteral(" deg"), QStringLiteral("°")).replace('.', QLocale().decimalPoint());
}

QString length_words(const Inches& length) { return length_words(to_text(length)); }

}  // namespace wm::app
