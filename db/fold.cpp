#include "db/fold.h"

#include <utility>

namespace wm::db {
namespace {

QString without_marks(const QString& decomposed) {
  QString kept;
  kept.reserve(decomposed.size());
  for (const QChar c : decomposed)
    if (c.category() != QChar::Mark_NonSpacing) kept += c;
  return kept;
}

}  // namespace

QString folded(const QString& text) {
  QString plain = without_marks(text.normalized(QString::NormalizationForm_KD)).toCaseFolded();
  const std::pair<QChar, const char*> letters[] = {
      {QChar(0xf8), "o"},  {QChar(0x142), "l"}, {QChar(0x111), "d"},  {QChar(0xf0), "d"},
      {QChar(0xfe), "th"}, {QChar(0xe6), "ae"}, {QChar(0x153), "oe"}, {QChar(0x131), "i"}};
  for (const auto& [letter, as] : letters) plain.replace(letter, QLatin1String(as));
  return plain.remove(QChar(0x2019)).remove(QChar('\''));
}

}  // namespace wm::db
