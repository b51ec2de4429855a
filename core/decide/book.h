#pragma once
// Rulebooks made ready for deciding: names as numbers, gates by target, and which book is in force when.
#include <map>
#include <optional>
#include <vector>

#include "core/decide/known.h"
#include "core/rulebook/rulebook.h"

namespace wm {

enum class NeedKind {
  document,
  age,
  lesson,
  quiz,
  checkout,
  practice,
  recent_use,
  standing,
  tier_standing,
  group
};

/// A requirement ready for deciding. all_of, any_of and some_of are one kind: at least `count` of `of`.
struct Need {
  NeedKind kind = NeedKind::group;
  NameId item = no_name;    // document, lesson, quiz or check-out
  NameId target = no_name;  // practice, recent_use (no_name: the target asked about), standing
  Rung at_least = Rung::supervised;
  bool current_revision = false;
  bool all = false;  // tier_standing: every target
  std::optional<Period> valid, grace, changeover;
  int years = 0, tier = 0, pass_percent = 0, count = 1, minutes = 0;
  std::optional<Retry> retry;
  int renew_after_severity = 0;  // 0: by none
  bool renew_after_change = false;
  std::vector<Need> of;
  std::vector<Need> given;
  const Requirement* source = nullptr;
  const CoverEnds* ends = nullptr;             // by `valid` and `grace`; null without `valid`
  const CoverEnds* changeover_ends = nullptr;  // null without `changeover`
  std::vector<std::uint32_t> cheapest_first;   // the places of `of`
  std::uint32_t number = 0;                    // within one Known
  /// Whether it is the same on every target: it looks at the person alone.
  bool of_person() const {
    switch (kind) {
      case NeedKind::document:
      case NeedKind::age:
      case NeedKind::lesson:
      case NeedKind::quiz:
        return true;
      case NeedKind::practice:
      case NeedKind::recent_use:
        return target != no_name;
      default:
        return false;
    }
  }
};

struct BookGate {
  const Gate* gate = nullptr;
  Need need;
  Instant spared_until = beginning;  // existing_until: before this …
  Instant spared_by = beginning;     // … the standing at this instant lets it hold
};

struct BookTarget {
  NameId target = no_name;
  std::size_t place = 0;  // among the book's targets
  int tier = 0;
  bool assessor_supervises = false;
  std::vector<const BookGate*> gates;  // in order of id
  /// Those that guard a rung, by which of them is found out with less work.
  const std::vector<const BookGate*>& guarding(Rung rung) const {
    return rung == Rung::supervised ? supervised : independent;
  }
  std::vector<const BookGate*> supervised, independent;
};

/// One rulebook while it is in force.
struct Book {
  const Rulebook* rulebook = nullptr;
  Span span;
  std::deque<BookGate> gates;
  std::map<NameId, BookTarget> targets;
  std::map<NameId, std::vector<NameId>> modes;  // by class: its modes' targets
  std::map<NameId, const MachineClass*> classes;
  std::map<int, std::vector<NameId>> tiers;  // their targets
  std::vector<const BookTarget*> by_name;    // the targets again, by NameId

  const BookTarget* find(NameId target) const;
  /// The targets that X stands for here: itself; its class; its modes' targets; none.
  std::vector<NameId> stands_for(NameId x, const Known& known) const;
  /// The tier of X's class, where the class is in this book.
  std::optional<int> tier_of(NameId x, const Known& known) const;
};

/// The rulebooks in order of time, each from its effective_from to the next one's. Where two start together
/// the later recorded, then the higher version, is the one in force.
std::vector<Book> books_in_order(Known& known, std::vector<const Rulebook*> rulebooks);

}  // namespace wm
