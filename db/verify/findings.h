#pragma once
// What was found in a store that should not be there.
#include <string>
#include <string_view>
#include <vector>

namespace wm::verify {

enum class FindingKind {
  schema,         // a table, an index or a guard is missing, different, or not ours
  shop,           // the shop's one row
  order,          // a gap in the orders or the commits, or a time of entry that runs backwards
  leaf,           // a record's own text is not in its form
  hash,           // the hash beside a record is not its leaf's
  column,         // a column says something else than the leaf
  private_value,  // a name, a birth date, a note or a key is not the one that was entered
  blanked,        // one is gone, and nothing says that it was erased
  edge,           // the kept edge of the tree is not the tree's
  signature,      // of a check-out: it does not hold
  taken,          // a booking's time is not taken, or one that no booking takes is
  altered,        // what came before a root known from outside is not as it was
  cut_off,        // records that a root known from outside covered are not there
  unreadable,     // the file could not be read to its end
};
std::string_view word(FindingKind kind);

/// `place` can be found by a person: "record 14", "record 14, kind". Sentences have no end in `says` and
/// `should`, which may be empty where there is nothing to say.
struct Finding {
  FindingKind kind;
  std::string place, says, should;
  friend bool operator==(const Finding&, const Finding&) = default;
};

/// The first thousand are kept, the others counted.
class Findings {
 public:
  void add(FindingKind kind, std::string place, std::string says, std::string should = {}) {
    if (kept_.size() < most)
      kept_.push_back({kind, std::move(place), std::move(says), std::move(should)});
    else
      ++more_;
  }
  const std::vector<Finding>& kept() const { return kept_; }
  std::size_t more() const { return more_; }
  bool empty() const { return kept_.empty(); }

 private:
  static constexpr std::size_t most = 1000;
  std::vector<Finding> kept_;
  std::size_t more_ = 0;
};

}  // namespace wm::verify
