#include "db/import/columns.h"

#include <algorithm>
#include <cctype>

namespace wm::db::import {
namespace {

const std::vector<Field> people_fields = {
    {"number",
     "the member's number",
     true,
     {"member", "member number", "member no", "no", "member id", "id"}},
    {"given", "given name", false, {"given name", "first name", "forename"}},
    {"family", "family name", false, {"family name", "last name", "surname"}},
    {"name", "whole name, where it is in one column", false, {"full name", "member name"}},
    {"nickname", "what they are called", false, {"called", "preferred name", "known as"}},
    {"card", "what the card reader types", false, {"card number", "badge", "tag"}},
    {"email", "e-mail address", false, {"e mail", "mail", "email address"}},
    {"phone", "telephone", false, {"telephone", "mobile", "phone number"}},
    {"emergency_contact", "whom to call in an emergency", false, {"emergency", "in an emergency"}},
    {"born", "date of birth", false, {"birth date", "date of birth", "birthday", "dob"}},
    {"joined", "member since", false, {"since", "member since", "start date"}},
};

const std::vector<Field> history_fields = {
    {"date", "when it happened, with the time where it is known", true, {"when", "day", "date and time"}},
    {"kind", "what kind of thing happened", true, {"type", "event", "what happened"}},
    {"number", "whom it is about, by member's number", false, {"member", "member number", "person", "who"}},
    {"what",
     "the lesson, quiz, check-out, paper, machine or tier",
     false,
     {"item", "subject", "machine", "course"}},
    {"revision", "which revision of it", false, {"rev", "version"}},
    {"result", "passed, failed, stopped, or how many right of how many", false, {"outcome", "score", "mark"}},
    {"critical", "how many critical questions were missed", false, {"critical missed"}},
    {"minutes", "how long", false, {"duration", "length"}},
    {"severity", "1 (worst) to 4 (a near miss)", false, {}},
    {"part", "operating, supervising, hurt or saw", false, {"role in it"}},
    {"by",
     "assessor, supervisor or key holder, by member's number",
     false,
     {"assessor", "supervisor", "instructor", "signed by"}},
    {"until", "the last day that it covers", false, {"expires", "valid until", "through"}},
    {"ref", "its own number on paper, for others to name it by", false, {"reference", "paper no"}},
    {"ends", "the ref of what this ends", false, {"lifts", "closes"}},
    {"restriction", "what a check-out left open", false, {"restrictions", "limits"}},
    {"struck_out", "when it was struck out", false, {"struck out", "void", "voided", "cancelled"}},
    {"reason", "why it was struck out", false, {"why"}},
    {"note", "anything else", false, {"notes", "remarks", "comment"}},
};

const std::vector<Field> machine_fields = {
    {"machine", "the unit's own name", true, {"unit", "id"}},
    {"class", "its class in the rulebook", true, {"machine class", "type"}},
    {"label", "what stands on it", false, {"name", "where"}},
    {"since", "in the shop since", false, {"date", "bought"}},
};

const std::vector<Field> hours_fields = {
    {"number", "the assessor's number", true, {"member", "member number", "assessor"}},
    {"weekday", "the day of the week", true, {"day"}},
    {"from", "from, HH:MM", true, {"start", "begins"}},
    {"to", "to, HH:MM", true, {"end", "ends", "until"}},
    {"since", "the first day on which it is so", false, {"date"}},
};

const std::vector<Field> booking_fields = {
    {"date", "the day", true, {"day"}},
    {"from", "from, HH:MM", true, {"start", "begins"}},
    {"to", "to, HH:MM", true, {"end", "ends", "until"}},
    {"number", "the member's number", true, {"member", "member number"}},
    {"by", "the assessor's number", true, {"assessor", "instructor", "with"}},
    {"machine", "the unit", true, {"unit"}},
    {"what", "the class, or class/mode", true, {"target"}},
    {"purpose", "teach, practise or check-out", false, {"for"}},
    {"second", "the second assessor's number, where two witness a check-out", false, {"second assessor"}},
    {"booked", "when it was booked", false, {"booked on"}},
};

/// Lower case, with one space for whatever is neither a letter nor a digit.
std::string plain(std::string_view words) {
  std::string out;
  for (const char c : words) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte >= 0x80 || std::isalnum(byte))
      out += static_cast<char>(std::tolower(byte));
    else if (!out.empty() && out.back() != ' ')
      out += ' ';
  }
  if (!out.empty() && out.back() == ' ') out.pop_back();
  return out;
}

bool is_called(const Field& field, const std::string& header) {
  return plain(field.key) == header || std::any_of(field.known_as.begin(), field.known_as.end(),
                                                   [&](const auto& w) { return w == header; });
}

}  // namespace

const std::vector<Field>& fields_of(FileKind kind) {
  switch (kind) {
    case FileKind::people:
      return people_fields;
    case FileKind::history:
      return history_fields;
    case FileKind::machines:
      return machine_fields;
    case FileKind::hours:
      return hours_fields;
    case FileKind::bookings:
      return booking_fields;
  }
  return people_fields;
}

Mapping guess_mapping(const Table& table, FileKind kind) {
  Mapping mapping;
  std::vector<bool> taken(table.header.size());
  const auto take = [&](const Field& field, const auto& fits) {
    for (std::size_t i = 0; i < table.header.size(); ++i) {
      if (taken[i] || mapping.contains(field.key) || !fits(plain(table.header[i]))) continue;
      mapping[field.key] = static_cast<int>(i);
      taken[i] = true;
    }
  };
  // Our own headers first, so that another field's second name cannot take them.
  for (const Field& f : fields_of(kind)) take(f, [&](const std::string& h) { return h == plain(f.key); });
  for (const Field& f : fields_of(kind)) take(f, [&](const std::string& h) { return is_called(f, h); });
  return mapping;
}

std::vector<Problem> mistakes_in(const Mapping& mapping, const Table& table, FileKind kind) {
  std::vector<Problem> mistakes;
  for (const Field& field : fields_of(kind)) {
    const auto found = mapping.find(field.key);
    if (found == mapping.end() && field.needed)
      mistakes.push_back(
          {"columns", "no column holds " + field.meaning, "Choose the column \"" + field.key + "\""});
    if (found != mapping.end() &&
        (found->second < 0 || found->second >= static_cast<int>(table.header.size())))
      mistakes.push_back(
          {"columns", "the file has no such column for " + field.meaning, "Choose another column"});
  }
  return mistakes;
}

}  // namespace wm::db::import
