#include "core/scenario/ends.h"

#include <string_view>
#include <unordered_map>

#include "core/json/writing.h"
#include "core/time/text.h"

namespace wm {

namespace {

struct End {
  std::string_view field;  // that names what is ended
  std::string_view id;
  std::string_view kind;  // of what can be ended
};

std::optional<End> end_of(const Fact& fact) {
  if (const auto* f = std::get_if<Reinstate>(&fact)) return End{"suspension", f->suspension, "suspend"};
  if (const auto* f = std::get_if<Dismiss>(&fact)) return End{"appointment", f->appointment, "appoint"};
  if (const auto* f = std::get_if<Release>(&fact)) return End{"lockout", f->lockout, "lockout"};
  return std::nullopt;
}

void check(json::Reading& reading, const RecordRead& read, const End& end, const Record& ended) {
  if (kind_word(ended.fact) != end.kind) {
    reading.mistake(*read.at.find(end.field),
                    "The record " + json::in_quotes(end.id) + " is of the kind " +
                        json::in_quotes(kind_word(ended.fact)) + ".",
                    "Name a record of the kind " + json::in_quotes(end.kind) + ".");
  } else if (read.record.at < ended.at) {
    reading.mistake(*read.at.find("at"),
                    "It is dated before the record " + json::in_quotes(end.id) + ", which it ends.",
                    "Write " + to_text(ended.at) + " or later.");
  }
}

}  // namespace

void check_ends(json::Reading& reading, const std::vector<RecordRead>& records) {
  std::unordered_map<std::string_view, const Record*> by_id;
  for (const RecordRead& read : records) by_id.emplace(read.record.id, &read.record);
  for (const RecordRead& read : records) {
    const auto end = end_of(read.record.fact);
    if (!end) continue;
    if (const auto ended = by_id.find(end->id); ended != by_id.end())
      check(reading, read, *end, *ended->second);
  }
}

}  // namespace wm
