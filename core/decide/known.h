#pragma once
// The facts of a shop as known at one instant, sorted so that a decision finds what it needs without
// searching.
#include <absl/container/flat_hash_map.h>
#include <absl/container/flat_hash_set.h>

#include <deque>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <variant>
#include <vector>

#include "core/records/shop.h"
#include "core/time/cover_ends.h"
#include "core/time/times.h"

namespace wm {

/// A name's number within one Known: people, targets, papers and items share one space.
using NameId = std::uint32_t;
inline constexpr NameId no_name = ~NameId{0};
/// A record's number within one Known.
using RecordNo = std::uint32_t;

/// Text to numbers and back.
class NameTable {
 public:
  NameId add(std::string_view text);
  /// no_name where nothing has that name.
  NameId find(std::string_view text) const;
  const std::string& text(NameId id) const { return texts_[id]; }
  std::size_t size() const { return texts_.size(); }

 private:
  std::deque<std::string> texts_;
  absl::flat_hash_map<std::string_view, NameId> ids_;
};

struct KnownScope {
  enum class Kind { all, tier, target } kind = Kind::all;
  int tier = 0;
  NameId target = no_name;
};

struct KnownBirth {
  Instant at, recorded;
  Day born;
  RecordNo no;
};
struct KnownDocument {
  Instant at;
  NameId document;
  Instant until;
  RecordNo no;
  Day day;  // of `at`
};
struct KnownLesson {
  Instant at;
  NameId lesson;
  int revision;
  RecordNo no;
  Day day;  // of `at`
};
struct KnownQuiz {
  Instant at;
  NameId quiz;
  int revision, correct, total, critical_missed;
  RecordNo no;
  Day day;  // of `at`
};
struct KnownCheckout {
  Instant at;
  NameId checkout;
  int revision;
  Outcome outcome;
  NameId assessor;
  RecordNo no;
  Day day;  // of `at`
};
struct KnownSupervised {
  Instant at;
  NameId target;
  int minutes;
  NameId supervisor;
  RecordNo no;
  Day day;  // of `at`
};
struct KnownUse {
  Instant at;
  NameId target;
  RecordNo no;
  Day day;  // of `at`
};
struct KnownIncident {
  Instant at;
  NameId machine_class;
  int severity;
  RecordNo no;
};
/// `span` ends at its `until` (`ends_by_itself`) or when it was ended by another record, whichever comes
/// first.
struct KnownSuspension {
  Span span;
  Instant ends_by_itself;
  KnownScope scope;
  RecordNo no;
};
struct KnownAppointment {
  Span span;
  Instant ends_by_itself;
  KnownScope scope;
  bool founding;
  RecordNo no;
};

/// One person's facts. Lists with a name or a target are in order of (it, at, id), births of (at, recorded,
/// id), the others of (at, id).
struct PersonFacts {
  std::vector<KnownBirth> births;
  std::vector<KnownDocument> documents;
  std::vector<KnownLesson> lessons;
  std::vector<KnownQuiz> quizzes;
  std::vector<KnownCheckout> checkouts;
  std::vector<KnownSupervised> supervised;
  std::vector<KnownUse> uses;
  std::vector<KnownIncident> incidents;  // those in which the person was operating
  std::vector<KnownSuspension> suspensions;
  std::vector<KnownAppointment> appointments;
};

struct Publication {
  Instant at;
  int revision;
  RecordNo no;
  Day day;  // of `at`
};
struct KnownChange {
  Instant at;
  RecordNo no;
};
struct KnownLockout {
  Span span;
  Instant ends_by_itself;
  RecordNo no;
};

/// What a record says of: the person, or for those without one the item, target or machine; for an end the
/// record that it ends.
struct RecordPlace {
  std::uint8_t kind = 0;  // as in Fact
  std::uint32_t of = no_name;
};

class Known {
 public:
  Known(const Shop& shop, std::optional<Instant> known);
  Known(const Known&) = delete;
  Known& operator=(const Known&) = delete;

  const Zone& zone() const { return zone_; }
  NameTable& names() { return names_; }
  const NameTable& names() const { return names_; }
  /// The class of a target, by name; itself where it has no mode.
  NameId class_of(NameId target) const { return target < class_of_.size() ? class_of_[target] : no_name; }
  /// Adds a target's name, its class's too.
  NameId add_target(std::string_view target);

  /// Everyone of the shop, in order of id by code point.
  const std::vector<NameId>& people() const { return people_; }
  const PersonFacts& facts(NameId person) const;
  const std::vector<Publication>& publications(NameId item) const { return at_or_none(publications_, item); }
  /// When the target or class itself was changed, in order.
  const std::vector<KnownChange>& changes(NameId target) const { return at_or_none(changes_, target); }
  void set_machine(const Machine& machine);
  const std::vector<KnownLockout>& lockouts(NameId machine) const { return at_or_none(lockouts_, machine); }
  /// The class of a machine, by name; no_name where there is no such machine.
  NameId machine_class(NameId machine) const;

  const RecordId& record_id(RecordNo no) const { return record_ids_[no]; }
  Instant record_at(RecordNo no) const { return record_ats_[no]; }
  RecordPlace record_place(RecordNo no) const { return record_places_[no]; }
  std::size_t record_count() const { return record_ids_.size(); }
  /// What a record is about, besides the person: the paper, the item, the target, or of an incident the
  /// class; no_name of a birth, of a suspension and the like, and of one that is taken out.
  NameId about(RecordNo no) const;
  /// Nothing where it is unknown.
  std::optional<RecordNo> find_record(std::string_view id) const;
  /// Those recorded by then, in no order.
  const std::vector<Rulebook>& rulebooks() const { return rulebooks_; }
  /// The targets that any of them has, sorted.
  std::vector<TargetName> targets() const;

  bool is_on(NameId record_target, NameId x) const {
    return record_target == x || record_target == class_of(x);
  }

  /// When what is good for that long ends, by the day on which it happened. Stays where it is.
  const CoverEnds& ends(Period valid, std::optional<Period> grace);
  /// A number for a requirement, another each time.
  std::uint32_t next_need() { return needs_++; }
  std::uint32_t needs() const { return needs_; }

  /// Takes one more record in. Its id must be new and what it ends be there, as in Shop.
  RecordNo insert(const Record& record);
  void add_person(std::string_view id);
  /// Makes it as if the record were not there, or there again.
  void take_out(RecordNo no);
  void put_back(RecordNo no);

 private:
  using AnyFact = std::variant<KnownBirth, KnownDocument, KnownLesson, KnownQuiz, KnownCheckout,
                               KnownSupervised, KnownUse, KnownIncident, KnownSuspension, KnownAppointment,
                               Publication, KnownChange, KnownLockout>;
  struct End {
    Instant at;
    RecordNo no;
  };
  struct IdHash {
    using is_transparent = void;
    const Known* known;
    std::size_t operator()(std::string_view id) const { return std::hash<std::string_view>()(id); }
    std::size_t operator()(RecordNo no) const { return (*this)(known->record_ids_[no]); }
  };
  struct IdEqual {
    using is_transparent = void;
    const Known* known;
    std::string_view id(std::string_view text) const { return text; }
    std::string_view id(RecordNo no) const { return known->record_ids_[no]; }
    template <class A, class B>
    bool operator()(const A& a, const B& b) const {
      return id(a) == id(b);
    }
  };

  template <class T>
  static const std::vector<T>& at_or_none(const std::vector<std::vector<T>>& lists, NameId id) {
    static const std::vector<T> none;
    return id < lists.size() ? lists[id] : none;
  }
  template <class T>
  static std::vector<T>& at_grown(std::vector<std::vector<T>>& lists, NameId id) {
    if (id >= lists.size()) lists.resize(id + 1);
    return lists[id];
  }
  PersonFacts& facts_of(NameId person);
  RecordNo number(const Record& record);
  void take(const Record& record, RecordNo no);
  template <class Take>
  void with_list(RecordPlace place, Take take);
  template <class Fact>
  static NameId about_of(const Fact& fact);
  template <class Fact>
  void add(std::vector<Fact>& list, Fact fact);
  template <class Fact>
  bool before(const Fact& a, const Fact& b) const;
  template <class Fact>
  bool earlier(const Fact& a, const Fact& b) const;
  void sort();
  void set_end(RecordNo ended);
  KnownScope scope(const Scope& scope);
  Instant after(std::optional<Day> until) const { return until ? zone_.start(*until + 1) : forever; }

  Zone zone_;
  NameTable names_;
  std::vector<NameId> class_of_;  // by NameId
  std::vector<NameId> people_;
  std::vector<std::unique_ptr<PersonFacts>> facts_;     // by NameId
  std::vector<std::vector<Publication>> publications_;  // by NameId
  std::vector<std::vector<KnownChange>> changes_;       // by NameId
  std::vector<std::vector<KnownLockout>> lockouts_;     // by NameId
  std::unordered_map<NameId, NameId> machine_class_;
  std::unordered_map<RecordNo, std::vector<End>> ends_;  // by what is ended
  std::unordered_map<RecordNo, AnyFact> out_;            // taken out, to be put back
  std::vector<RecordId> record_ids_;
  std::vector<Instant> record_ats_;
  std::vector<RecordPlace> record_places_;
  absl::flat_hash_set<RecordNo, IdHash, IdEqual> by_id_;
  std::vector<Rulebook> rulebooks_;
  std::deque<CoverEnds> cover_ends_;
  std::uint32_t needs_ = 0;
  bool loading_ = true;
};

}  // namespace wm
