#pragma once
// Standings, at one instant and over all time, by the same few definitions.
//
// Decisions ask for one another: a check-out counts if its assessor was able to assess one second before,
// which rests on their own check-outs, and so on into the past. Each such question is a Node that is answered
// once. A chain of any length must not use up the stack: past a depth, the node in the way is put on a list,
// answered first, and the asker begins again with the answer at hand.
#include <absl/container/flat_hash_map.h>

#include <map>
#include <memory>
#include <unordered_map>
#include <vector>

#include "core/decide/answers.h"
#include "core/decide/book.h"
#include "core/decide/covers.h"
#include "core/decide/known.h"
#include "core/decide/timelines.h"
#include "core/time/steps.h"

namespace wm {

/// Over a book's own time, or over all time.
inline constexpr int all_books = -1;

class Standings {
 public:
  explicit Standings(const Shop& shop, std::optional<Instant> known);
  /// Over the same facts, with these rulebooks in place of those known. Before `past_until`, standings are
  /// looked up in `past`, as far as they are kept there.
  Standings(std::shared_ptr<Known> known, std::vector<const Rulebook*> rulebooks, const Timelines* past,
            Instant past_until);

  Known& known() { return *known_; }
  const Known& known() const { return *known_; }
  const std::shared_ptr<Known>& shared_known() const { return known_; }
  /// From now on, standings at an instant are looked up there, as far as they are kept: those of whoever is
  /// being worked out too. It must outlive this.
  void look_up_in(const Timelines* kept) { past_ = kept; }
  /// Supposes that every record counts: a first guess, since most were witnessed by whom they should be.
  void suppose_all_count(bool suppose) { all_count_ = suppose; }
  /// Whether the person's own standings were looked up since this was asked last.
  bool looked_up(NameId person) {
    const bool looked = person == watched_ && looked_up_;
    watched_ = person;
    looked_up_ = false;
    return looked;
  }
  const Book* book_at(Instant t) const;
  const std::vector<Book>& books() const { return books_; }

  /// P's standing on whatever X stands for at t.
  Rung rung(NameId person, NameId x, Instant t);
  bool able_to_assess(NameId person, NameId x, Instant t);
  bool able_to_supervise(NameId person, NameId x, Instant t);
  /// The standing over all time.
  const Steps<Rung>& steps(NameId person, NameId x);
  /// Whether a gate holds over all time, followed as written; `strict`: without existing_until and grace.
  Times gate_times(const BookGate& gate, NameId person, NameId x, bool strict);
  /// The same for a requirement inside one.
  Times need_times(const Need& need, NameId person, NameId x, bool strict);
  bool holds(const Need& need, NameId person, NameId x, Instant t);
  /// Whether a cover counts: its witness was able to witness it, what had to be given was.
  bool counts(const Cover& cover, const Need& need, NameId person, NameId x);
  bool takes_in(const KnownScope& scope, NameId x, const Book* book) const;
  bool suspended(NameId person, NameId x, Instant t, const Book* book) const;
  /// Every instant at which whether the person is able to assess or to supervise x may change; in no order.
  std::vector<Instant> able_moments(NameId person, NameId x);

  /// The standing over all time, worked out and not kept.
  Steps<Rung> steps_anew(NameId person, NameId x);
  /// Lets go of which of somebody's records count; or only of those for which their own standing matters.
  void forget(NameId person);
  void forget_own(NameId person);
  /// Lets go of what is kept of single instants and of whole timelines.
  void forget_instants();

 private:
  /// A question that others wait for.
  struct Node {
    enum class Kind { at_least, counts, times } kind;
    NameId person;
    NameId x;
    Rung rung = Rung::barred;    // at_least, times
    int book = 0;                // times
    Instant at{};                // at_least
    const Need* need = nullptr;  // counts
    Cover cover{};               // counts
  };
  struct TooDeep {
    Node node;
  };
  struct PointKey {
    NameId person, x;
    std::int64_t at;
    Rung rung;
    bool operator==(const PointKey&) const = default;
  };
  /// Of a check-out: whether it counts rests on what is asked for, and where.
  struct CountsKey {
    RecordNo no;
    NameId x;
    const Need* need;  // where something must be given; null otherwise
    bool operator==(const CountsKey&) const = default;
  };
  enum class Verdict : std::uint8_t { open, no, yes };
  struct Hash {
    std::size_t operator()(const PointKey& k) const;
    std::size_t operator()(const CountsKey& k) const;
  };
  class Depth;

  /// Runs `ask` until it goes through, answering first what was too deep.
  template <class Ask>
  auto resolve(Ask ask) -> decltype(ask());
  void answer(const Node& node);

  const Book& book(int number) const { return books_[static_cast<std::size_t>(number)]; }
  int book_number(Instant t) const;
  bool at_least_on(NameId person, NameId x, Rung rung, Instant t);
  bool at_least(const BookTarget& target, NameId person, Rung rung, Instant t, const Book& book);
  bool gate_holds(const BookGate& gate, NameId person, NameId x, Instant t);
  bool tier_holds(const Need& need, NameId person, Instant t, const Book& book);
  bool need_holds(const Need& need, NameId person, NameId x, Instant t);
  bool assesses(NameId person, NameId x, Instant t, const Book& book);
  bool can_assess(NameId person, NameId x, Instant t);
  bool can_supervise(NameId person, NameId x, Instant t);
  bool appointed(NameId person, NameId x, Instant t, const Book* book, bool founding) const;
  bool cover_counts(const Cover& cover, const Need& need, NameId person, NameId x);
  bool witness_counts(const Cover& cover, const Need& need, NameId person, NameId x);

  // What is found is kept already, or put into `room`.
  const Times& target_times(NameId person, const BookTarget& target, Rung rung, int book);
  Times target_times_anew(NameId person, const BookTarget& target, Rung rung, int book);
  const Times& standing_over(NameId person, NameId x, Rung rung, int book, Times& room);
  const Times& need_over(const Need& need, NameId person, NameId x, bool strict, int book, Times& room);
  Times leaf_over(const Need& need, NameId person, NameId x, bool strict, int book);
  const Times& tier_over(const Need& need, NameId person, int book, Times& room);
  const Times& gate_over(const BookGate& gate, NameId person, NameId x, bool strict, int book, Times& room);
  Times not_suspended(NameId person, NameId x, int book) const;
  /// While at least `count` of `size` parts are so; worked out as far as they can matter.
  template <class Part>
  const Times& some_over(std::size_t count, std::size_t size, Times& room, Part part);
  template <class OverBook>
  const Times& over_all_books(Times& room, OverBook over_book);

  std::shared_ptr<Known> known_;
  std::vector<Book> books_;
  const Timelines* past_ = nullptr;
  Instant past_until_ = forever;
  NameId watched_ = no_name;
  bool looked_up_ = false;
  bool all_count_ = false;
  int depth_ = 0;
  absl::flat_hash_map<PointKey, bool, Hash> points_;
  std::vector<Verdict> counts_;  // of sessions and uses, by RecordNo
  std::unordered_map<NameId, absl::flat_hash_map<CountsKey, bool, Hash>> checkouts_count_;  // by person
  /// What was worked out for one person over the time of single books: on each of their targets, for each
  /// rung; and for requirements that are the same on every target.
  struct Slots {
    std::vector<Times> times;
    std::vector<std::uint32_t> filled;  // in which round
    void grow(std::size_t size) {
      if (times.size() >= size) return;
      times.resize(size);
      filled.resize(size, 0);
    }
  };
  NameId slots_of_ = no_name;
  std::uint32_t round_ = 1;
  std::vector<Slots> target_times_;  // by book
  Slots need_times_;                 // by Need::number
  std::unordered_map<std::uint64_t, Steps<Rung>> steps_;
};

}  // namespace wm
