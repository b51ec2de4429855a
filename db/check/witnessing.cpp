// A run sheet marked at the machine: taken in hand, line by line, put by, and countersigned by the member.
#include <algorithm>

#include "core/sheet/sheet_text.h"
#include "db/check/checks.h"
#include "db/open_sheets.h"

namespace wm::db {
namespace {

constexpr int most_lines = static_cast<int>(most_sheet_lines);

Expected<OpenSheet> find_open(const Case& c, const RecordId& id) {
  if (auto open = open_sheet(c.memory, id, c.now)) return *std::move(open);
  if (c.memory.live<SheetOpened>(id) == nullptr)
    return refuse("opened", "There is no run sheet in hand with the id '" + id + "'.",
                  "Open the person's run sheet anew.");
  if (c.memory.about<SheetMarks>(id) == nullptr)
    return refuse(
        "opened",
        "The last mark on this run sheet is more than " + std::to_string(days_in_hand) + " days old.",
        "Begin a new one: what was shown so long ago is shown again.");
  return refuse("opened", "This run sheet has been signed.", "Open a new one for the next check-out.");
}

Mark at(const std::vector<Mark>& marks, std::size_t line) {
  return line < marks.size() ? marks[line] : Mark::none;
}

bool as_marked(const OpenSheet& open, const SignCheckout& s) {
  const std::size_t lines = std::max({open.marks.size(), open.again.size(), s.marks.size(), s.again.size()});
  for (std::size_t i = 0; i < lines; ++i)
    if (at(open.marks, i) != at(s.marks, i) || at(open.again, i) != at(s.again, i)) return false;
  // How it was typed depends on a station's language.
  return std::equal(open.measured.begin(), open.measured.end(), s.measured.begin(), s.measured.end(),
                    [](const LineMeasured& a, const LineMeasured& b) {
                      return a.line == b.line && a.read == b.read && a.marks == b.marks;
                    });
}

}  // namespace

Expected<void> check_sheet_opened(const Case& c, const SheetOpened& f) {
  if (f.sheet.empty() || f.sheet_revision < 1)
    return refuse("sheet", "It is missing which run sheet in which revision is marked.",
                  "Choose one of the shop's run sheets.");
  if (c.memory.class_of_machine(f.machine) != class_of(f.target))
    return refuse(
        "machine",
        unit_words(c, f.machine) + " is not of the class '" + std::string(class_of(f.target)) + "'.",
        "Choose a unit of that class.");
  // Who has shown everything is not told then that nothing can be signed.
  if (const Sheet* sheet = c.memory.sheet(f.sheet, f.sheet_revision))
    if (auto fine = check_revision(c, sheet->checkout, sheet->revision); !fine) return fine;
  for (const OpenSheet& open : open_sheets(c.memory, c.now))
    if (c.same(open.sheet.person, f.person) && class_of(open.sheet.target) == class_of(f.target) &&
        open.sheet.sheet == f.sheet && open.sheet.sheet_revision == f.sheet_revision)
      return refuse(
          "person",
          c.memory.name(f.person) + " has this run sheet in hand since " + said(c, open.since) + ".",
          "Go on with that one, or strike it out.");
  return {};
}

Expected<void> check_line_marked(const Case& c, const LineMarked& f) {
  if (f.line < 1 || f.line > most_lines)
    return refuse("line", "A run sheet has no line " + std::to_string(f.line) + ".",
                  "Mark one of its lines.");
  if (auto open = find_open(c, f.opened); !open) return tl::make_unexpected(open.error());
  if (!f.measured) return {};
  if (f.measured->line != f.line)
    return refuse("measured",
                  "What was measured on line " + std::to_string(f.measured->line) + " is entered with line " +
                      std::to_string(f.line) + ".",
                  "Enter it with its own line.");
  return check_measured({*f.measured}, static_cast<std::size_t>(f.line));
}

Expected<void> check_sheet_put_by(const Case& c, const SheetPutBy& f) {
  if (auto open = find_open(c, f.opened); !open) return tl::make_unexpected(open.error());
  return check_restrictions(f.restrictions);
}

Expected<void> check_restrictions(const std::vector<std::string>& restrictions) {
  for (const std::string& each : restrictions)
    if (each.find_first_not_of(" \t\r\n") == std::string::npos)
      return refuse("restrictions", "A restriction is empty.", "Say what it is, or take it out.");
  return {};
}

Expected<void> check_sheet_in_hand(const Case& c, const SignCheckout& s) {
  if (s.opened.empty()) return {};
  const auto open = find_open(c, s.opened);
  if (!open) return tl::make_unexpected(open.error());
  if (!c.same(open->sheet.person, s.checkout.person) || open->sheet.sheet != s.sheet ||
      open->sheet.sheet_revision != s.sheet_revision)
    return refuse("opened", "The run sheet in hand is another's, or another sheet.",
                  "Sign the one that was marked.");
  if (as_marked(*open, s)) return {};
  return refuse("marks",
                "The run sheet was marked at another station meanwhile, otherwise than it shows here.",
                "Look at it again as it is now, then sign.");
}

Expected<void> check_countersign(const Case& c, const PersonId& person, const Countersign& by,
                                 const std::string& sheet, int revision) {
  if (c.founding && by.hand == Hand::paper) return {};
  if (by.hand == Hand::paper)
    return by.proof.empty()
               ? refuse("countersign", "The number of the sheet that was countersigned is missing.",
                        "Type the number at the foot of the paper.")
               : check_form(c, by.proof, sheet, revision);
  if (c.founding)
    return refuse("countersign", "Nobody types a PIN or holds a card for the past.",
                  "Say that it was countersigned on paper.");
  if (by.hand == Hand::pin) return {};  // tested as it signs
  const auto aliases = c.memory.aliases(person);
  const bool theirs = std::any_of(aliases.begin(), aliases.end(), [&](const PersonId& alias) {
    const Person* known = c.memory.person(alias);
    return known != nullptr && !known->card.empty() && known->card == by.proof;
  });
  if (theirs) return {};
  return refuse("countersign", "This is not " + c.memory.name(person) + "'s card.",
                "Let the member hold their own card to the reader, type their PIN, or sign on paper.");
}

namespace {

/// A check-out that the member has not countersigned yet.
Expected<const Checkout*> to_countersign(const Case& c, const RecordId& id) {
  const Checkout* checkout = c.memory.live<Checkout>(id);
  if (checkout == nullptr)
    return refuse("checkout", "There is no check-out with the id '" + id + "'.", "Choose one from the list.");
  if (c.at < c.memory.find(id)->at)
    return refuse("at", "The check-out was on " + said(c, c.memory.find(id)->at) + ", which is later.",
                  "Look at the day.");
  if (c.memory.about<Countersigned>(id) == nullptr) return checkout;
  return refuse("checkout", "This check-out is countersigned already.", "Nothing is left to do.");
}

}  // namespace

Expected<void> check_countersign_later(const Case& c, const CountersignCheckout& action) {
  if (action.by.hand == Hand::paper)
    return refuse("countersign", "A paper that was countersigned is taken in by a manager, from paper.",
                  "Let the member type their PIN or hold their card to the reader, or ask a manager.");
  return to_countersign(c, action.checkout).and_then([&](const Checkout* checkout) {
    return check_countersign(c, checkout->person, action.by, {}, 0);
  });
}

Expected<void> check_countersigned(const Case& c, const Countersigned& f) {
  const auto found = to_countersign(c, f.checkout);
  if (!found) return tl::make_unexpected(found.error());
  const Checkout* checkout = *found;
  if (!c.same(checkout->person, f.person))
    return refuse("person", "A check-out is countersigned by the member who was checked out.",
                  "Enter it for " + c.memory.name(checkout->person) + ".");
  if (f.hand != Hand::paper)
    return refuse("hand", "From paper a check-out is countersigned on paper.", "Say that it was.");
  const Entry* marked = c.memory.about<SheetMarks>(f.checkout);
  const auto* marks = marked == nullptr ? nullptr : as<SheetMarks>(marked->fact);
  return marks == nullptr ? check_form(c, f.form, {}, 0)
                          : check_form(c, f.form, marks->sheet, marks->sheet_revision);
}

Expected<void> check_paper_sheet(const Case& c, const EnterPaperSheet& action) {
  const SignCheckout& s = action.sheet;
  if (!s.pin.empty() || !s.opened.empty() ||
      (s.countersign && *s.countersign != Countersign{Hand::paper, {}}) ||
      (s.second && !s.second->pin.empty()))
    return refuse("sheet", "What was signed on paper has no PIN and no sheet in hand.",
                  "Enter what stands on the paper, or let it be signed here.");
  if (action.form.empty())
    return refuse("form", "The number of the paper is missing.", "Type the number at the foot of the paper.");
  if (auto fine = check_form(c, action.form, s.sheet, s.sheet_revision); !fine) return fine;
  if (s.marks.empty())
    return refuse("marks", "No line is marked.", "Mark the lines as they are marked on the paper.");
  return check_signing(c, s, action.form);
}

namespace {

/// Whose performance stands on the paper of that number, among marks of one kind; empty where it was not
/// taken in, or struck out since.
template <class Marked>
PersonId performer(const Memory& memory, std::string_view kind, const std::string& form) {
  for (const std::size_t i : memory.of_kind(kind)) {
    const Entry& entry = memory.entries()[i];
    const Marked& marked = *as<Marked>(entry.fact);
    if (entry.voided || marked.form != form) continue;
    if (const Checkout* checkout = memory.live<Checkout>(marked.checkout)) return checkout->person;
  }
  return {};
}

}  // namespace

Expected<void> check_form(const Case& c, const std::string& form, const std::string& sheet, int revision) {
  if (form.empty()) return {};
  const Entry* printed = nullptr;
  for (const std::size_t i : c.memory.of_kind("printed"))
    if (as<Printed>(c.memory.entries()[i].fact)->form == form) printed = &c.memory.entries()[i];
  if (printed == nullptr)
    return refuse("form", "No blank sheet with the number " + form + " was printed here.",
                  "Read the number at the foot of the paper again.");
  if (c.zone.day(c.at) < c.zone.day(printed->at))
    return refuse("form",
                  "The paper " + form + " was printed on " + said(c.zone.day(printed->at)) +
                      ", so nothing was marked on it on " + said(c.zone.day(c.at)) + ".",
                  "Look at the day, and at the number at the foot of the paper.");
  const auto& of = *as<Printed>(printed->fact);
  if (!of.sheet.empty() && !sheet.empty() && (of.sheet != sheet || of.sheet_revision != revision))
    return refuse("form",
                  "The paper " + form + " is revision " + std::to_string(of.sheet_revision.value_or(0)) +
                      " of the run sheet '" + of.sheet + "', not revision " + std::to_string(revision) +
                      " of '" + sheet + "'.",
                  "Choose the sheet that stands on the paper, or read the number at its foot again.");
  PersonId entered = performer<SheetMarks>(c.memory, "marks", form);
  if (entered.empty()) entered = performer<ScoredApart>(c.memory, "scored_apart", form);
  if (entered.empty()) entered = performer<Countersigned>(c.memory, "countersigned", form);
  if (entered.empty()) return {};
  return refuse("form", "The paper " + form + " was entered already, for " + c.memory.name(entered) + ".",
                "Nothing is left to do; if that was wrong, a manager strikes it out first.");
}

}  // namespace wm::db
