#include "db/verify/taken.h"

#include "core/time/text.h"

namespace wm::verify {
namespace {

std::string text_of(const LeafContent& leaf, std::string_view key) {
  return std::string(leaf.body.text(key).value_or(""));
}

std::string shown(Instant from, Instant until) { return to_text(from) + " to " + to_text(until); }

}  // namespace

void Taken::check(const LeafContent& leaf) {
  if (leaf.kind == "strike_out") struck_out_.insert(leaf.refers_to);
  if (leaf.kind == "booking") book(leaf);
  if (leaf.kind == "cancel" || leaf.kind == "confirmed" || leaf.kind == "attendance")
    about_.push_back({leaf.id, leaf.refers_to, leaf.kind, text_of(leaf, "turnout")});
}

void Taken::book(const LeafContent& leaf) {
  if (!leaf.refers_to.empty()) about_.push_back({leaf.id, leaf.refers_to, leaf.kind, {}});
  const auto from = parse_instant(text_of(leaf, "from")), until = parse_instant(text_of(leaf, "to"));
  if (!from || !until) return;  // takes no time that anybody could tell
  std::vector<std::string> what{"person " + text_of(leaf, "person"), "person " + text_of(leaf, "assessor"),
                                "machine " + text_of(leaf, "machine")};
  if (leaf.body.has("second_assessor")) what.push_back("person " + text_of(leaf, "second_assessor"));
  bookings_.push_back(
      {leaf.order, leaf.id, std::move(what), {*from, *until, parse_instant(text_of(leaf, "held_through"))}});
}

std::map<Taken::Place, Taken::Time> Taken::times_that_stand() const {
  std::set<std::string> ended, confirmed;
  std::map<std::string, bool> stayed_away;
  for (const About& one : about_) {
    if (struck_out_.contains(one.id)) continue;
    if (one.kind == "cancel" || one.kind == "booking") ended.insert(one.booking);
    if (one.kind == "confirmed") confirmed.insert(one.booking);
    if (one.kind == "attendance") stayed_away[one.booking] = one.turnout == "not_come";
  }
  std::map<Place, Time> times;
  for (const Booked& one : bookings_) {
    const auto away = stayed_away.find(one.id);
    if (struck_out_.contains(one.id) || ended.contains(one.id) || (away != stayed_away.end() && away->second))
      continue;
    Time time = one.time;
    if (confirmed.contains(one.id)) time.held_through.reset();
    for (const std::string& what : one.what) times[{one.order, what}] = time;
  }
  return times;
}

void Taken::found(const Place& place, std::string says, std::string should) {
  findings_.add(FindingKind::taken, "record " + std::to_string(place.first) + ", " + place.second,
                std::move(says), std::move(should));
}

void Taken::finish(const File& file, Instant last) {
  std::map<Place, Time> left = times_that_stand();
  Rows rows = file.rows("SELECT ord, what, from_at, until_at, held_through FROM taken ORDER BY ord, what");
  while (rows.next()) {
    const Place place{rows.whole(0), std::string(rows.shown(1))};
    const auto should = left.find(place);
    if (should == left.end()) {
      found(place, "taken", "free: no booking that stands takes it");
      continue;
    }
    const bool whole = rows.is_whole(0) && rows.is_text(1) && rows.is_whole(2) && rows.is_whole(3) &&
                       (rows.is_whole(4) || rows.is_null(4));
    Time is{Instant{rows.whole(2)}, Instant{rows.whole(3)}, {}};
    if (!rows.is_null(4)) is.held_through = Instant{rows.whole(4)};
    if (!whole || is != should->second)
      found(place, rows.shown(2) + " to " + rows.shown(3) + ", held through " + rows.shown(4),
            shown(should->second.from, should->second.until) + ", as the booking says");
    left.erase(should);
  }
  if (rows.failed())
    return findings_.add(FindingKind::unreadable, "the times that are taken",
                         "they could not be read to the end");
  for (const auto& [place, time] : left)
    if (!time.at_an_end(last)) found(place, "free", "taken from " + shown(time.from, time.until));
}

}  // namespace wm::verify
