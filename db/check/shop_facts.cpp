// The shop's own facts.
#include <algorithm>

#include "db/check/checks.h"
#include "db/diary/diary.h"
#include "db/follow.h"

namespace wm::db {
namespace {

bool is_digest(const std::string& text) {
  return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

template <class F>
Expected<void> check_exists(const Case& c, const RecordId& id, const char* where, const std::string& what) {
  if (c.memory.live<F>(id) != nullptr) return {};
  return refuse(where, "There is no " + what + " with the id '" + id + "'.", "Choose one from the list.");
}

Expected<void> check_open_booking(const Case& c, const RecordId& id) {
  if (auto fine = check_exists<Booking>(c, id, "booking", "booking"); !fine) return fine;
  if (c.memory.about<Cancel>(id) != nullptr)
    return refuse("booking", "This booking has been cancelled.", "Choose another booking.");
  if (c.memory.about<Booking>(id) != nullptr)
    return refuse("booking", "This booking has been moved.", "Choose the one that took its place.");
  return {};
}

/// What was held and given up is booked anew.
Expected<void> check_not_given_up(const Case& c, const RecordId& booking) {
  return check_open_booking(c, booking).and_then([&]() -> Expected<void> {
    if (stands(c.memory, *c.memory.find(booking), c.now)) return {};
    return refuse("booking", "This time was held, and has been given up since.",
                  "Book it anew, if it is free.");
  });
}

Expected<void> check_confirmed(const Case& c, const Confirmed& f) {
  if (auto fine = check_open_booking(c, f.booking); !fine) return fine;
  if (!c.memory.live<Booking>(f.booking)->held_through || c.memory.about<Confirmed>(f.booking) != nullptr)
    return refuse("booking", "This booking is for certain already.", "Nothing is left to do.");
  return check_not_given_up(c, f.booking);
}

/// Digits of any script: who typed the address there is told, before somebody in need dials it.
Expected<void> check_call(const EmergencyCall& f) {
  const bool dialled = std::ranges::any_of(f.number, [](char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (byte >= '0' && byte <= '9') || byte >= 0x80;
  });
  if (f.number.empty() || dialled) return {};
  return refuse("number", "The number to call has no digit.", "Type what is dialled from this shop.");
}

struct CheckShopFact {
  const Case& c;

  Expected<void> operator()(const RoleGiven&) const { return {}; }
  Expected<void> operator()(const Join& f) const {
    if (!c.same(f.keep, f.other)) return {};
    return refuse("other", "These two are one person already.", "Choose two different people.");
  }
  Expected<void> operator()(const Booking& f) const { return check_booking(c, f); }
  Expected<void> operator()(const Cancel& f) const {
    return check_open_booking(c, f.booking).and_then([&] {
      return check_said(f.reason, "reason", "A booking is cancelled with a reason.");
    });
  }
  Expected<void> operator()(const Confirmed& f) const { return check_confirmed(c, f); }
  Expected<void> operator()(const WeekHours& f) const { return check_diary(f); }
  Expected<void> operator()(const OtherHours& f) const { return check_diary(f); }
  Expected<void> operator()(const Break& f) const { return check_diary(f); }
  Expected<void> operator()(const TakesOn& f) const { return check_diary(f); }
  Expected<void> operator()(const Lasts& f) const { return check_diary(f); }
  Expected<void> operator()(const DiaryRules& f) const { return check_diary(f); }
  Expected<void> operator()(const Upkeep& f) const { return check_diary(f); }
  Expected<void> operator()(const Busy& f) const { return check_diary(f); }
  Expected<void> operator()(const Attendance& f) const {
    return check_open_booking(c, f.booking)
        .and_then([&] {
          return comes_to_held(f) ? check_still_free(c, f.booking) : check_not_given_up(c, f.booking);
        })
        .and_then([&] { return check_attendance(c, f); });
  }
  bool comes_to_held(const Attendance& f) const {
    const bool confirmed = c.memory.about<Confirmed>(f.booking) != nullptr;
    return f.turnout != Turnout::not_come &&
           may_still_come(*c.memory.live<Booking>(f.booking), confirmed, c.now);
  }
  Expected<void> operator()(const Presence&) const { return {}; }
  Expected<void> operator()(const Waiting& f) const {
    const auto kept = waits(c.memory, f.person, class_of(f.target));
    if (kept.empty()) return {};
    return refuse("target",
                  c.memory.name(f.person) + " has waited for this machine since " +
                      said(c.zone.day(kept.front()->at)) + " already.",
                  "Nothing is left to do.");
  }
  Expected<void> operator()(const WaitingEnd& f) const {
    if (auto fine = check_exists<Waiting>(c, f.waiting, "waiting", "place on the waiting list"); !fine)
      return fine;
    if (c.memory.about<WaitingEnd>(f.waiting) == nullptr) return {};
    return refuse("waiting", "This place on the waiting list has been given up already.",
                  "Nothing is left to do.");
  }
  Expected<void> operator()(const Restriction& f) const {
    return check_exists<Checkout>(c, f.checkout, "checkout", "check-out").and_then([&] {
      return check_said(f.text, "text", "The restriction is empty.");
    });
  }
  Expected<void> operator()(const SheetMarks& f) const {
    return check_exists<Checkout>(c, f.checkout, "checkout", "check-out").and_then([&] {
      return check_measured(f.measured, f.marks.size()).and_then([&] {
        return check_form(c, f.form, f.sheet, f.sheet_revision);
      });
    });
  }
  Expected<void> operator()(const SheetOpened& f) const { return check_sheet_opened(c, f); }
  Expected<void> operator()(const LineMarked& f) const { return check_line_marked(c, f); }
  Expected<void> operator()(const SheetPutBy& f) const { return check_sheet_put_by(c, f); }
  Expected<void> operator()(const Countersigned& f) const { return check_countersigned(c, f); }
  Expected<void> operator()(const Tag& f) const { return check_tag(c, f); }
  Expected<void> operator()(const Reached& f) const {
    if (auto fine = check_exists<Lockout>(c, f.lockout, "lockout", "lock"); !fine) return fine;
    return check_said(f.how, "how", "It is missing how they were tried to be reached.");
  }
  Expected<void> operator()(const MachineAdded&) const { return {}; }
  Expected<void> operator()(const Hours& f) const { return check_diary(f); }
  Expected<void> operator()(const Close& f) const {
    if (c.same(f.person, f.other))
      return refuse("other", "Nobody is named as close to themselves.", "Choose somebody else.");
    for (const std::size_t i : c.memory.of_kind("close")) {
      const Entry& entry = c.memory.entries()[i];
      const Close& named = *as<Close>(entry.fact);
      if (!entry.voided && c.same(named.person, f.person) && c.same(named.other, f.other))
        return refuse("other", "They have been named as close already.", "Nothing is left to do.");
    }
    return {};
  }
  Expected<void> operator()(const Printed& f) const {
    return f.pages > 0 && is_digest(f.digest)
               ? Expected<void>{}
               : refuse("digest", "A printed paper has pages and a SHA-256 digest of its text.",
                        "Print it once more.");
  }
  Expected<void> operator()(const StrikeOut& f) const {
    return check_strike_out(c, f).and_then(
        [&] { return check_said(f.reason, "reason", "A record is struck out with a reason."); });
  }
  Expected<void> operator()(const Issued& f) const { return check_issued(c, f); }
  Expected<void> operator()(const AttemptBegun& f) const { return check_attempt_begun(c, f); }
  // Made by commands of their own, which look at them.
  Expected<void> operator()(const Blanked&) const { return {}; }
  Expected<void> operator()(const AttemptSat&) const { return {}; }
  Expected<void> operator()(const Started& f) const { return check_started(c, f); }
  Expected<void> operator()(const Left& f) const { return check_left(c, f); }
  Expected<void> operator()(const GroupTaught&) const { return {}; }
  Expected<void> operator()(const Visit& f) const { return check_visit(c, f); }
  Expected<void> operator()(const VisitEnd& f) const { return check_visit_end(c, f); }
  Expected<void> operator()(const Altered&) const { return {}; }
  Expected<void> operator()(const Witnessed&) const { return {}; }
  Expected<void> operator()(const StationTold& f) const {
    return check_said(f.login, "login", "It is missing by which login the computer comes in.");
  }
  Expected<void> operator()(const EmergencyCall& f) const { return check_call(f); }
  Expected<void> operator()(const ContactShown&) const { return {}; }
  Expected<void> operator()(const Happened&) const { return {}; }
  Expected<void> operator()(const ScoredApart& f) const { return check_scoring(c, f); }
  Expected<void> operator()(const RulebookIssued&) const { return {}; }
  Expected<void> operator()(const Details&) const { return {}; }
  Expected<void> operator()(const PinChosen&) const { return {}; }
  Expected<void> operator()(const Erased&) const { return {}; }
  Expected<void> operator()(const Signature&) const { return {}; }
  Expected<void> operator()(const ClockConfirmed&) const { return {}; }
};

}  // namespace

Expected<void> check_said(const std::string& text, const char* where, const std::string& what) {
  if (text.find_first_not_of(" \t\r\n") != std::string::npos) return {};
  return refuse(where, what, "Say it in a few words.");
}

Expected<void> check_shop_fact(const Case& c, const ShopFact& fact) {
  return std::visit(CheckShopFact{c}, fact);
}

Expected<void> check_strike_out(const Case& c, const StrikeOut& f) {
  const Entry* entry = c.memory.find(f.record);
  if (entry == nullptr)
    return refuse("record", "There is no record with the id '" + f.record + "'.",
                  "Choose one from the journal.");
  if (as<StrikeOut>(entry->fact) != nullptr)
    return refuse("record", "A strike-out stays.", "Enter what was struck out once more.");
  if (as<Details>(entry->fact) != nullptr)
    return refuse("record", "A person's details are not struck out.", "Correct them.");
  if (as<PinChosen>(entry->fact) != nullptr)
    return refuse("record", "A PIN is not struck out.", "Let another be chosen.");
  if (as<Signature>(entry->fact) != nullptr)
    return refuse("record", "A signature is not struck out.", "Strike out the check-out that it is under.");
  if (as<Witnessed>(entry->fact) != nullptr)
    return refuse("record", "A second assessor's word is not struck out by itself.",
                  "Strike out the check-out that it is under.");
  if (as<AttemptSat>(entry->fact) != nullptr)
    return refuse("record", "What was answered stays.", "Strike out the quiz that it came to.");
  if (as<Issued>(entry->fact) != nullptr)
    return refuse("record", "What was issued stays, so that what was sat or read can be shown.",
                  "Issue the next revision.");
  if (as<Printed>(entry->fact) != nullptr || as<ClockConfirmed>(entry->fact) != nullptr ||
      as<Blanked>(entry->fact) != nullptr || as<ContactShown>(entry->fact) != nullptr)
    return refuse("record", "This says what was done, and stays.", "Nothing is left to do.");
  if (as<Erased>(entry->fact) != nullptr)
    return refuse("record", "What has been erased is gone.", "Enter the person anew.");
  if (entry->voided) return refuse("record", "This record is struck out already.", "Nothing is left to do.");
  if (auto fine = check_revived(c, f); !fine) return fine;
  if (auto fine = check_started_again(c, f); !fine) return fine;
  if (c.at != c.now) return refuse("at", "A strike-out counts from now on.", "Leave out when it happened.");
  return {};
}

}  // namespace wm::db
