#pragma once
// The words that nobody reads here, and what every sentence must be.
#include <QRegularExpression>
#include <QString>

namespace wm::app {

/// As whole words.
inline const QRegularExpression never_words(
    R"(\b(alone|certified|certificate|green|trainee|denied|banned|locked|until|sign off|signed off|head)\b)",
    QRegularExpression::CaseInsensitiveOption);
inline const QRegularExpression guessing_words(
    R"(\b(he|she|him|her|his|hers|himself|herself|lad|lady|guys)\b)",
    QRegularExpression::CaseInsensitiveOption);

/// What is wrong with words that people read, or nothing.
inline QString fault_of_words(const QString& text) {
  if (never_words.match(text).hasMatch()) return "a word that nobody reads";
  if (guessing_words.match(text).hasMatch()) return "a pronoun that guesses";
  static const QRegularExpression left_open(R"(%\d|%n)");
  if (left_open.match(text).hasMatch()) return "a place left open";
  if (text.contains("  ") || text.contains(" ,") || text.contains(" .") || text.contains("()") ||
      text.contains(", ,") || text.contains(",,") || text.contains(": .") || text.contains(";."))
    return "a hole";
  if (text != text.trimmed()) return "a blank at its end";
  return {};
}

/// And of a whole sentence, or several.
inline QString fault_of_sentence(const QString& text) {
  if (text.isEmpty()) return "nothing said";
  if (!text.endsWith('.') || text.endsWith("..")) return "no full stop";
  if (!text[0].isUpper() && !text[0].isDigit()) return "no capital";
  return fault_of_words(text);
}

}  // namespace wm::app
