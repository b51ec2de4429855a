#pragma once
// The facts of a shop as known at one instant, sorted so that a decision finds what it needs without
// searching.
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/records/shop.h"
#include "core/time/combine.h"

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
  std::unordered_map<std::string_view, NameId> ids_;
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
};
struct KnownLesson {
  Instant at;
  NameId lesson;
  int revision;
  RecordNo no;
};
struct KnownQuiz {
  Instant at;
  NameId quiz;
  int revision, correct, total, critical_missed;
  RecordNo no;
};
struct KnownCheckout {
  Instant at;
  NameId checkout;
  int revision;
  Outcome outcome;
  NameId assessor;
  RecordNo no;
};
struct KnownSupervised {
  Instant at;
  NameId target;
  int minutes;
  NameId supervisor;
  RecordNo no;
};
struct KnownUse {
  Instant at;
  NameId target;
  RecordNo no;
};
struct KnownIncident {
  Instant at;
  NameId machine_class;
  int severity;
  RecordNo no;
};
/// `span` ends at its `until` or when it was ended by another record, whichever comes first.
struct KnownSuspension {
  Span span;
  KnownScope scope;
  RecordNo no;
};
struct KnownAppointment {
  Span span;
  KnownScope scope;
  bool founding;
  RecordNo no;
};

/// One person's facts. Lists with a name are in order of (name, at, id), births of (at, recorded, id), the
/// others of (at, id).
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
};
struct KnownLockout {
  Span span;
  RecordNo no;
};

class Known {
 public:
  Known(const Shop& shop, std::optional<Instant> known);

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
  const std::vector<Publication>& publications(NameId item) const;
  /// Instants, in order, at which the target or class itself was changed.
  const std::vector<Instant>& changes(NameId target) const;
  const std::vector<KnownLockout>& lockouts(NameId machine) const;
  /// The class of a machine, by name; no_name where there is no such machine.
  NameId machine_class(NameId machine) const;

  const RecordId& record_id(RecordNo no) const { return record_ids_[no]; }
  Instant record_at(RecordNo no) const { return record_ats_[no]; }
  std::size_t record_count() const { return record_ids_.size(); }
  /// Those recorded by then, in no order.
  const std::vector<Rulebook>& rulebooks() const { return rulebooks_; }

  bool is_on(NameId record_target, NameId x) const {
    return record_target == x || record_target == class_of(x);
  }

 private:
  void take(const Record& record, RecordNo no);
  void sort();
  KnownScope scope(const Scope& scope);
  Instant after(std::optional<Day> until) const { return until ? zone_.start(*until + 1) : forever; }

  Zone zone_;
  NameTable names_;
  std::vector<NameId> class_of_;  // by NameId
  std::vector<NameId> people_;
  std::unordered_map<NameId, PersonFacts> facts_;
  std::unordered_map<NameId, std::vector<Publication>> publications_;
  std::unordered_map<NameId, std::vector<Instant>> changes_;
  std::unordered_map<NameId, std::vector<KnownLockout>> lockouts_;
  std::unordered_map<NameId, NameId> machine_class_;
  std::unordered_map<std::string, Instant> ended_;  // by the id of what was ended: the earliest end
  std::vector<RecordId> record_ids_;
  std::vector<Instant> record_ats_;
  std::vector<Rulebook> rulebooks_;
};

}  // namespace wm
