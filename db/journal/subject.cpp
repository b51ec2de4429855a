#include "db/journal/subject.h"

#include "db/journal/shop_fact_json.h"

namespace wm::db {
namespace {

template <class F>
constexpr bool adds_to_checkout =
    std::is_same_v<F, Restriction> || std::is_same_v<F, SheetMarks> || std::is_same_v<F, Signature> ||
    std::is_same_v<F, ScoredApart> || std::is_same_v<F, Countersigned> || std::is_same_v<F, Witnessed>;

/// The record named by a fact; a check-out's own `checkout` is the name of a test and not of a record.
template <class F>
RecordId referred(const F& f) {
  if constexpr (adds_to_checkout<F>) return f.checkout;
  if constexpr (requires { f.record; }) return f.record;
  if constexpr (requires { f.suspension; }) return f.suspension;
  if constexpr (requires { f.appointment; }) return f.appointment;
  if constexpr (requires { f.lockout; }) return f.lockout;
  if constexpr (requires { f.booking; }) return f.booking;
  if constexpr (requires { f.instead_of; }) return f.instead_of;
  if constexpr (requires { f.begun; }) return f.begun;
  if constexpr (requires { f.started; }) return f.started;
  if constexpr (requires { f.opened; }) return f.opened;
  if constexpr (requires { f.change; }) return f.change;
  if constexpr (requires { f.visit; }) return f.visit;
  if constexpr (std::is_same_v<F, WaitingEnd>) return f.waiting;
  return {};
}

template <class F>
Subject subject(const F& f) {
  Subject s;
  if constexpr (requires { f.person; }) s.person = f.person;
  if constexpr (std::is_same_v<F, Join>) s.person = f.other;
  if constexpr (requires { f.machine; }) s.machine = f.machine;
  s.refers_to = referred(f);
  return s;
}

}  // namespace

Subject subject_of(const AnyFact& fact) {
  return std::visit(
      [](const auto& kind) { return std::visit([](const auto& f) { return subject(f); }, kind); }, fact);
}

std::string_view any_kind_word(const AnyFact& fact) {
  return std::visit([](const auto& kind) { return kind_word(kind); }, fact);
}

}  // namespace wm::db
