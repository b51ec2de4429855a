#pragma once
// Finding a person by what somebody types: accents, case and nicknames don't matter.
#include <QStringList>
#include <vector>

#include "db/facts.h"
#include "db/fold.h"

namespace wm::app {

using db::folded;

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
