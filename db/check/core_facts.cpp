// The facts that decisions rest on: what each needs beside form and names.
#include "db/check/checks.h"

namespace wm::db {
namespace {

Expected<void> check_not_ahead(const Case& c, const AnyFact& fact) {
  // Announced beforehand: these are entered for a day to come.
  if (as<Publish>(fact) || as<Appoint>(fact) || as<Suspend>(fact)) return {};
  if (c.at <= c.now) return {};
  return refuse("at", "This is dated " + said(c, c.at) + ", which is still ahead.",
                "Enter it once it has happened.");
}

Expected<void> check_until(const Case& c, const std::optional<Day>& until) {
  if (!until || *until >= c.zone.day(c.at)) return {};
  return refuse("until", "It would end on " + said(*until) + ", before it begins.", "Choose a later day.");
}

/// A record that this one ends: of the right kind, not struck out, begun, and not ended by such a one before.
template <class Begun, class End>
Expected<void> check_ends(const Case& c, const RecordId& id, const char* where, const std::string& what) {
  if (c.memory.live<Begun>(id) == nullptr)
    return refuse(where, "There is no " + what + " with the id '" + id + "'.", "Choose one from the list.");
  if (c.memory.about<End>(id) != nullptr)
    return refuse(where, "This " + what + " has been ended already.", "Nothing is left to do.");
  const Instant began = c.memory.find(id)->at;
  if (began <= c.at) return {};
  return refuse(where, "This " + what + " begins only on " + said(c, began) + ".",
                "Strike it out if it shall not begin, or choose a later time.");
}

Expected<void> check_still_runs(const Case& c, const std::optional<Day>& until, const std::string& what) {
  if (!until || c.at < c.zone.start(*until + 1)) return {};
  return refuse("at", "This " + what + " ended by itself on " + said(*until) + ".", "Nothing is left to do.");
}

struct CheckCoreFact {
  const Case& c;

  Expected<void> operator()(const Birth& f) const {
    if (f.born <= c.zone.day(c.now)) return {};
    return refuse("born", "The birth date " + said(f.born) + " is still ahead.", "Check the year.");
  }
  Expected<void> operator()(const Document&) const { return {}; }
  Expected<void> operator()(const Lesson& f) const { return check_revision(c, f.lesson, f.revision); }
  Expected<void> operator()(const Quiz& f) const { return check_revision(c, f.quiz, f.revision); }
  Expected<void> operator()(const Checkout& f) const {
    if (c.same(f.person, f.assessor))
      return refuse("assessor", "Nobody signs their own check-out.", "Let another assessor watch and sign.");
    return check_revision(c, f.checkout, f.revision);
  }
  Expected<void> operator()(const Supervised& f) const { return check_session(c, f); }
  Expected<void> operator()(const Use&) const { return {}; }
  Expected<void> operator()(const Incident&) const { return {}; }
  Expected<void> operator()(const Suspend& f) const { return check_until(c, f.until); }
  Expected<void> operator()(const Reinstate& f) const {
    return check_ends<Suspend, Reinstate>(c, f.suspension, "suspension", "suspension").and_then([&] {
      return check_still_runs(c, c.memory.live<Suspend>(f.suspension)->until, "suspension");
    });
  }
  Expected<void> operator()(const Appoint& f) const {
    if (f.founding && !f.until)
      return refuse("until", "A founding assessor is appointed for a time only.", "Say through which day.");
    return check_until(c, f.until);
  }
  Expected<void> operator()(const Dismiss& f) const {
    return check_ends<Appoint, Dismiss>(c, f.appointment, "appointment", "appointment").and_then([&] {
      return check_still_runs(c, c.memory.live<Appoint>(f.appointment)->until, "appointment");
    });
  }
  Expected<void> operator()(const Publish&) const { return {}; }
  Expected<void> operator()(const Lockout&) const { return {}; }
  Expected<void> operator()(const Release& f) const {
    return check_ends<Lockout, Release>(c, f.lockout, "lockout", "lock");
  }
  Expected<void> operator()(const Change&) const { return {}; }
};

}  // namespace

Expected<void> check_core_fact(const Case& c, const Fact& fact) { return std::visit(CheckCoreFact{c}, fact); }

Expected<void> check_fact(const Case& c, const AnyFact& fact) {
  if (auto fine = check_not_ahead(c, fact); !fine) return fine;
  if (auto fine = check_names(c, fact); !fine) return fine;
  const auto* core = std::get_if<Fact>(&fact);
  return core != nullptr ? check_core_fact(c, *core) : check_shop_fact(c, std::get<ShopFact>(fact));
}

Expected<void> check_revision(const Case& c, const std::string& item, int revision) {
  bool any = false;
  for (const std::size_t i : c.memory.publications_of(item)) {
    const Entry& entry = c.memory.entries()[i];
    if (entry.voided || entry.at > c.at) continue;
    if (as<Publish>(entry.fact)->revision == revision) return {};
    any = true;
  }
  if (!any && revision == 0) return {};
  return refuse("revision",
                "Revision " + std::to_string(revision) + " of '" + item + "' had not been published by then.",
                any ? "Choose a revision that had been." : "Publish it first, or enter revision 0.");
}

}  // namespace wm::db
