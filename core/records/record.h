#pragma once
// What happened in the shop, one small struct for each kind of record. Nothing is ever changed or deleted:
// a mistake is struck out (`voided`) by another record.
#include <optional>
#include <string>
#include <variant>

#include "core/compiled_once.h"
#include "core/time/instant.h"

namespace wm {

/// Ids are text chosen by whoever enters the thing; compared and sorted by code point (UTF-8 bytes).
using PersonId = std::string;
using RecordId = std::string;
using MachineId = std::string;
/// A machine class, or `class/mode` for a mode of a combination machine.
using TargetName = std::string;

/// The three rungs of a standing, lowest first.
enum class Rung { barred, supervised, independent };

/// Who or what a suspension or an appointment is about: everything, a tier, or a target (or class).
struct Everything {
  friend bool operator==(const Everything&, const Everything&) = default;
};
struct TierScope {
  int tier;
  friend bool operator==(const TierScope&, const TierScope&) = default;
};
struct TargetScope {
  TargetName target;
  friend bool operator==(const TargetScope&, const TargetScope&) = default;
};
using Scope = std::variant<Everything, TierScope, TargetScope>;

enum class Outcome { passed, failed, stopped };
enum class Part { operating, supervising, hurt, saw };

#define WM_EQUAL(Type) friend bool operator==(const Type&, const Type&) = default
struct Birth {
  PersonId person;
  Day born;
  WM_EQUAL(Birth);
};
struct Document {
  PersonId person;
  std::string document;
  std::optional<Day> until;
  WM_EQUAL(Document);
};
struct Lesson {
  PersonId person;
  std::string lesson;
  int revision = 0;
  WM_EQUAL(Lesson);
};
struct Quiz {
  PersonId person;
  std::string quiz;
  int revision = 0, correct = 0, total = 1, critical_missed = 0;
  WM_EQUAL(Quiz);
};
struct Checkout {
  PersonId person;
  std::string checkout;
  int revision = 0;
  Outcome outcome = Outcome::passed;
  PersonId assessor;
  WM_EQUAL(Checkout);
};
struct Supervised {
  PersonId person;
  TargetName target;
  int minutes = 1;
  PersonId supervisor;
  WM_EQUAL(Supervised);
};
struct Use {
  PersonId person;
  TargetName target;
  WM_EQUAL(Use);
};
struct Incident {
  PersonId person;
  TargetName target;
  int severity = 1;
  Part part = Part::operating;
  WM_EQUAL(Incident);
};
struct Suspend {
  PersonId person;
  Scope scope;
  std::optional<Day> until;
  WM_EQUAL(Suspend);
};
struct Reinstate {
  RecordId suspension;
  WM_EQUAL(Reinstate);
};
struct Appoint {
  PersonId person;
  Scope scope;
  bool founding = false;
  std::optional<Day> until;
  WM_EQUAL(Appoint);
};
struct Dismiss {
  RecordId appointment;
  WM_EQUAL(Dismiss);
};
struct Publish {
  std::string item;
  int revision = 0;
  WM_EQUAL(Publish);
};
struct Lockout {
  MachineId machine;
  WM_EQUAL(Lockout);
};
struct Release {
  RecordId lockout;
  WM_EQUAL(Release);
};
struct Change {
  TargetName target;
  WM_EQUAL(Change);
};
#undef WM_EQUAL

struct Fact : std::variant<Birth, Document, Lesson, Quiz, Checkout, Supervised, Use, Incident, Suspend,
                           Reinstate, Appoint, Dismiss, Publish, Lockout, Release, Change> {
  WM_COMPILED_ONCE(Fact);
};

/// `at` is when it happened, `recorded` when it was entered, `voided` when it was struck out (not before
/// `recorded`).
struct Record {
  RecordId id;
  Instant at;
  Instant recorded;
  std::optional<Instant> voided;
  Fact fact;
  friend bool operator==(const Record&, const Record&) = default;
};

/// One physical unit of a class.
struct Machine {
  MachineId id;
  std::string machine_class;
  friend bool operator==(const Machine&, const Machine&) = default;
};

/// The word that files use for a record's kind ("checkout"), a rung, an outcome, a part.
std::string_view kind_word(const Fact& fact);
std::string_view word(Rung rung);
std::string_view word(Outcome outcome);
std::string_view word(Part part);

/// The class of a target: what stands before the "/", or all of it.
inline std::string_view class_of(std::string_view target) { return target.substr(0, target.find('/')); }
/// Whether a record's target (a target or a class) is on target X.
inline bool is_on(std::string_view record_target, std::string_view x) {
  return record_target == x || record_target == class_of(x);
}

}  // namespace wm
