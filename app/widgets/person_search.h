#pragma once
// Finding a person by what somebody types: accents, case and nicknames don't matter.
#include <QStringList>
#include <vector>

#include "db/facts.h"

namespace wm::app {

/// Case and accents taken away: compatibility decomposition (NFKD, Unicode Standard Annex #15) without its
/// marks, then case folding; letters that have no decomposition (ø, ł, đ …) by their plain ones.
QString folded(const QString& text);

/// Whether a text has every word typed, wherever.
class TypedWords {
 public:
  explicit TypedWords(const QString& typed) : words_(folded(typed).split(' ', Qt::SkipEmptyParts)) {}
  bool in(const QString& text) const { return in_folded(folded(text)); }
  bool in_folded(const QString& text) const;

 private:
  QStringList words_;
};

/// Those whose names or number begin with every word typed, best first: a whole number, then given name or
/// nickname, then family name; equals by name. At most `limit`.
std::vector<db::Person> find_people(const std::vector<db::Person>& people, const QString& typed,
                                    std::size_t limit = 50);

}  // namespace wm::app
