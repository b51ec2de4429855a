#pragma once
// Which standings a record can matter to at all: on which targets, by what their gates ask for in any
// rulebook.
#include <cstdint>
#include <map>
#include <vector>

#include "core/decide/book.h"
#include "core/decide/known.h"

namespace wm {

/// Some of a list of targets, by their place in it.
class TargetSet {
 public:
  explicit TargetSet(std::size_t size = 0, bool all = false) : in_(size, all) {}
  bool has(std::size_t i) const { return in_[i]; }
  /// Whether it was not in yet.
  bool add(std::size_t i) {
    const bool fresh = !in_[i];
    in_[i] = true;
    return fresh;
  }
  /// Whether any of them was not in yet.
  bool add(const TargetSet& other) {
    bool fresh = false;
    for (std::size_t i = 0; i < in_.size(); ++i)
      if (other.in_[i]) fresh = add(i) || fresh;
    return fresh;
  }

 private:
  std::vector<bool> in_;
};

class Depends {
 public:
  Depends(Known& known, const std::vector<Book>& books, const std::vector<NameId>& targets);

  /// The targets on which the standing of the person (of anybody, for publications and changes) may rest on a
  /// record of that kind, as in Fact, that is about `about` (see Known::about).
  const TargetSet& on(std::size_t kind, NameId about) const;
  /// Those on which somebody is asked whether they could assess, for check-outs of that name.
  const TargetSet& assessed_by(NameId checkout) const;

 private:
  using Key = std::pair<std::size_t, NameId>;

  void note(const Need& need, std::size_t target, NameId x);
  void note_standing(NameId x, std::size_t target);
  void note_on_both(std::size_t kind, NameId x, std::size_t target);
  TargetSet& at(std::size_t kind, NameId about) {
    return by_.try_emplace({kind, about}, targets_.size()).first->second;
  }

  Known& known_;
  const std::vector<Book>& books_;
  const std::vector<NameId>& targets_;
  std::map<NameId, std::size_t> places_;
  std::map<Key, TargetSet> by_;
  std::map<NameId, TargetSet> assessed_;
  std::vector<TargetSet> rest_on_;  // by target: those whose standing may rest on it
  TargetSet none_, all_;
};

}  // namespace wm
