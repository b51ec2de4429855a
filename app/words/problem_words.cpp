// What the store or the engine refuses with, and what stands on every page and paper that answers.
#include "app/words/listing.h"
#include "app/words/tr.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

QString closed(const std::string& text) {
  QString sentence = capital(QString::fromStdString(text).trimmed());
  if (sentence.isEmpty()) return sentence;
  if (!sentence.endsWith('.') && !sentence.endsWith('?') && !sentence.endsWith('!')) sentence += '.';
  return sentence;
}

}  // namespace

QString problem_sentence(const Problem& problem) {
  return (closed(problem.what) + ' ' + closed(problem.remedy)).trimmed();
}

QString caution() {
  return Words::tr(
      "This records permission; it does not make a machine safe. Local codes, the maker's manual and a "
      "qualified instructor come first.");
}

}  // namespace wm::app
