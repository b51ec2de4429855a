#include "db/import/kinds.h"

#include <algorithm>
#include <array>

namespace wm::db::import {
namespace {

using Any = std::variant<Fact, ShopFact>;

/// One of a few words; a mistake that lists them otherwise. An empty cell is the first word, if it may be.
std::size_t one_of(RowReader& row, std::string_view key, std::initializer_list<std::string_view> words,
                   bool may_be_empty) {
  const std::string word = row.text(key);
  if (word.empty() && may_be_empty) return 0;
  const auto found = std::find(words.begin(), words.end(), word);
  if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
  std::string list;
  for (const std::string_view w : words) list += (list.empty() ? "" : ", ") + std::string(w);
  row.wrong(key, word.empty() ? "is empty" : "\"" + word + "\" is not known here", "Write one of: " + list);
  return 0;
}

/// A revision that had been published by then; none is written where none had been.
int revision(RowReader& row, const std::string& item, Instant at) {
  const int revision = row.number("revision", 0, 1'000'000, 0);
  const auto found = row.ground().published.find(item);
  bool any = false;
  if (found != row.ground().published.end())
    for (const auto& [published, when] : found->second) {
      if (when <= at && published == revision) return revision;
      any |= when <= at;
    }
  if (any || revision != 0)
    row.wrong("revision",
              "revision " + std::to_string(revision) + " of \"" + item + "\" had not been published by then",
              any ? "Write one that had been" : "Correct it, or add a row of the kind \"publish\" before it");
  return revision;
}

/// What has the number of somebody who cannot witness their own work.
PersonId witness(RowReader& row, const PersonId& person) {
  PersonId by = row.person("by");
  if (!by.empty() && by == person) row.wrong("by", "is the member's own number", "Write who witnessed it");
  return by;
}

Scope scope(RowReader& row) {
  const std::string what = row.needed("what");
  if (what == "all" || what.empty()) return Everything{};
  if (!what.starts_with("tier ")) return TargetScope{row.target("what")};
  const std::string digits = what.substr(5);
  const bool number =
      !digits.empty() && digits.size() < 3 && digits.find_first_not_of("0123456789") == digits.npos;
  const int tier = number ? std::stoi(digits) : 0;
  if (!row.ground().is_tier(tier))
    row.wrong("what", "no rulebook has \"" + what + "\"", "Write a tier like \"tier 3\"");
  return TierScope{tier};
}

/// The record of the right kind that this one ends, dated before it.
template <class Kind>
RecordId ended(RowReader& row, Instant at, const char* kind) {
  RecordId id = "paper-" + row.needed("ends");
  const auto found = row.ground().records.find(id);
  const auto* fact = found == row.ground().records.end() ? nullptr : std::get_if<Fact>(&found->second.fact);
  if (row.has("ends") && (!fact || !std::holds_alternative<Kind>(*fact) || found->second.at > at))
    row.wrong("ends", "there is no " + std::string(kind) + " \"" + row.text("ends") + "\" before it",
              "Write the ref of the row that it ends");
  return id;
}

Any document(RowReader& row, Instant) {
  return Fact(Document{row.person("number"), row.needed("what"), row.day("until")});
}

Any lesson(RowReader& row, Instant at) {
  const std::string what = row.needed("what");
  return Fact(Lesson{row.person("number"), what, revision(row, what, at)});
}

/// "9 of 10" or "9/10".
std::pair<int, int> score(RowReader& row) {
  std::string text = row.needed("result");
  if (const std::size_t of = text.find(" of "); of != text.npos) text.replace(of, 4, "/");
  const std::size_t slash = text.find('/');
  const auto digits = [](const std::string& s) {
    return !s.empty() && s.size() < 6 && s.find_first_not_of("0123456789") == s.npos ? std::stoi(s) : -1;
  };
  const int right = slash == text.npos ? -1 : digits(text.substr(0, slash));
  const int total = slash == text.npos ? -1 : digits(text.substr(slash + 1));
  if (right >= 0 && total >= 1 && right <= total && total <= 10'000) return {right, total};
  if (!text.empty())
    row.wrong("result", "\"" + row.text("result") + "\" is no score", "Write it like 9 of 10");
  return {0, 1};
}

Any quiz(RowReader& row, Instant at) {
  const std::string what = row.needed("what");
  const auto [right, total] = score(row);
  return Fact(Quiz{row.person("number"), what, revision(row, what, at), right, total,
                   row.number("critical", 0, total - right, 0)});
}

Any checkout(RowReader& row, Instant at) {
  const std::string what = row.needed("what");
  const PersonId person = row.person("number");
  const auto outcome = static_cast<Outcome>(one_of(row, "result", {"passed", "failed", "stopped"}, false));
  return Fact(Checkout{person, what, revision(row, what, at), outcome, witness(row, person)});
}

Any supervised(RowReader& row, Instant) {
  const PersonId person = row.person("number");
  return Fact(Supervised{person, row.target("what"), row.number("minutes", 1, 1440), witness(row, person)});
}

Any use(RowReader& row, Instant) { return Fact(Use{row.person("number"), row.target("what")}); }

Any incident(RowReader& row, Instant) {
  const int severity = row.number("severity", 1, 4);
  const auto part =
      static_cast<Part>(one_of(row, "part", {"operating", "supervising", "hurt", "saw"}, false));
  return Fact(Incident{row.person("number"), row.target("what"), severity, part});
}

Any suspend(RowReader& row, Instant) {
  return Fact(Suspend{row.person("number"), scope(row), row.day("until")});
}
Any reinstate(RowReader& row, Instant at) { return Fact(Reinstate{ended<Suspend>(row, at, "suspension")}); }
Any dismiss(RowReader& row, Instant at) { return Fact(Dismiss{ended<Appoint>(row, at, "appointment")}); }
Any release(RowReader& row, Instant at) { return Fact(Release{ended<Lockout>(row, at, "lockout")}); }

Any appoint(RowReader& row, Instant) {
  const bool founding = one_of(row, "result", {"", "founding"}, true) == 1;
  if (founding && !row.has("until"))
    row.wrong("until", "a founding appointment needs a last day", "Write the day on which it ends");
  return Fact(Appoint{row.person("number"), scope(row), founding, row.day("until")});
}

Any publish(RowReader& row, Instant) {
  return Fact(Publish{row.needed("what"), row.number("revision", 0, 1'000'000)});
}
Any lockout(RowReader& row, Instant) {
  if (!row.has("note")) row.wrong("note", "is empty", "Write why it was put out of service");
  return Fact(Lockout{row.machine("what")});
}
Any change(RowReader& row, Instant) { return Fact(Change{row.target("what")}); }

Any role(RowReader& row, Instant) {
  const std::size_t word =
      one_of(row, "what", {"quiz station", "desk", "instructor", "manager", "none"}, false);
  return ShopFact(
      RoleGiven{row.person("number"), word == 4 ? std::nullopt : std::optional(static_cast<Role>(word))});
}

/// "by" has the other number, whose records count as those of "number".
Any join(RowReader& row, Instant) {
  const PersonId keep = row.person("number");
  const PersonId other = row.person("by");
  if (!keep.empty() && keep == other) row.wrong("by", "is the same entry", "Write the number of the double");
  return ShopFact(Join{keep, other});
}

Any presence(RowReader& row, bool in) {
  const bool staff = one_of(row, "what", {"", "staff"}, true) == 1;
  return ShopFact(Presence{row.person("number"), in, staff});
}
Any came_in(RowReader& row, Instant) { return presence(row, true); }
Any left(RowReader& row, Instant) { return presence(row, false); }
Any waiting(RowReader& row, Instant) { return ShopFact(Waiting{row.person("number"), row.target("what")}); }

struct Kind {
  std::string_view word, also;
  Any (*read)(RowReader&, Instant);
};
constexpr std::array kinds = {
    Kind{"document", "paper", document},
    Kind{"lesson", "class", lesson},
    Kind{"quiz", "test", quiz},
    Kind{"checkout", "check-out", checkout},
    Kind{"supervised", "practice", supervised},
    Kind{"use", "used", use},
    Kind{"incident", "near miss", incident},
    Kind{"suspend", "suspension", suspend},
    Kind{"reinstate", "reinstatement", reinstate},
    Kind{"appoint", "appointment", appoint},
    Kind{"dismiss", "dismissal", dismiss},
    Kind{"publish", "published", publish},
    Kind{"lockout", "out of service", lockout},
    Kind{"release", "back in service", release},
    Kind{"change", "changed", change},
    Kind{"role", "at the desk as", role},
    Kind{"join", "same person", join},
    Kind{"in", "came in", came_in},
    Kind{"out", "left", left},
    Kind{"waiting", "waiting list", waiting},
};

}  // namespace

std::optional<Any> read_kind(RowReader& row, Instant at) {
  std::string word = row.needed("kind");
  std::transform(word.begin(), word.end(), word.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  const auto found = std::find_if(kinds.begin(), kinds.end(),
                                  [&](const Kind& k) { return k.word == word || k.also == word; });
  if (found != kinds.end()) return found->read(row, at);
  if (word.empty()) return std::nullopt;
  std::string list;
  for (const Kind& kind : kinds) list += (list.empty() ? "" : ", ") + std::string(kind.word);
  row.wrong("kind", "\"" + word + "\" is no kind that is known here", "Write one of: " + list);
  return std::nullopt;
}

std::string content_of(const ShopFact& fact) {
  if (const auto* r = std::get_if<RoleGiven>(&fact))
    return "role\x1f" + r->person + "\x1f" + (r->role ? std::to_string(static_cast<int>(*r->role)) : "none");
  if (const auto* j = std::get_if<Join>(&fact)) return "join\x1f" + j->keep + "\x1f" + j->other;
  if (const auto* p = std::get_if<Presence>(&fact))
    return "presence\x1f" + p->person + (p->in ? "\x1fin" : "\x1fout") + (p->staff ? "\x1fstaff" : "");
  const Waiting& w = std::get<Waiting>(fact);
  return "waiting\x1f" + w.person + "\x1f" + w.target;
}

}  // namespace wm::db::import
