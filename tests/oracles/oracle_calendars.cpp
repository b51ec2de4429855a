// Speaks for core/calendar to judges from outside.
//   oracle_calendars repeats RULES   a line of RULES: "FREQ=…<TAB>19970902T090000"; prints its times in 1990
//   to 2010, UTC
//   oracle_calendars busy FILE YEAR  prints when the calendar's times of four years begin, UTC
//   oracle_calendars write SEED      prints a random calendar file, and what it should say as JSON on
//   standard error
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <random>

#include "core/calendar/busy.h"
#include "core/calendar/write.h"
#include "core/time/text.h"

namespace {

using namespace wm;

/// At most 400 days are asked about at a time, so year by year.
void print_begins(const std::string& text, int first, int until) {
  for (int year = first; year < until; ++year) {
    const Interval within{parse_instant(std::to_string(year) + "-01-01T00:00:00Z").value(),
                          parse_instant(std::to_string(year + 1) + "-01-01T00:00:00Z").value()};
    const auto busy = calendar::read_busy(text, Zone::utc(), within);
    if (!busy) {
      std::cout << "refused " << busy.error().front().what << "\n";
      return;
    }
    for (const Interval& each : *busy) std::cout << to_text(each.from) << " ";
  }
  std::cout << "\n";
}

void print_times(const std::string& rule, const std::string& first) {
  print_begins("BEGIN:VCALENDAR\nBEGIN:VEVENT\nDTSTART:" + first + "Z\nDURATION:PT1S\nRRULE:" + rule +
                   "\nEND:VEVENT\nEND:VCALENDAR\n",
               1990, 2010);
}

std::string some_text(std::mt19937_64& random) {
  const char* const pieces[] = {"a",  "ä",  "木工", "🔧", ",",   ";",          ":",
                                "\\", "\n", "\"",   " ", "\\n", "check-out ", "long words "};
  std::string out = "x";
  for (int i = static_cast<int>(random() % 60); i > 0; --i) out += pieces[random() % std::size(pieces)];
  return out + "x";
}

void print_calendar(std::uint64_t seed) {
  std::mt19937_64 random(seed);
  calendar::CalendarFile file;
  file.organizer = "mailto:desk@shop.example";
  file.name = some_text(random);
  file.written = parse_instant("2026-03-01T12:00:00Z").value();
  file.method = seed % 3 == 0 ? calendar::Method::cancel : calendar::Method::publish;
  nlohmann::json says = nlohmann::json::array();
  for (int i = 0; i < 20; ++i) {
    const Instant from = file.written + static_cast<std::int64_t>(random() % 100'000'000);
    calendar::CalendarEvent event{"b" + std::to_string(i) + "@shop.example",
                                  static_cast<int>(random() % 3),
                                  random() % 3 == 0,
                                  {from, from + 60 * static_cast<std::int64_t>(1 + random() % 200)},
                                  some_text(random),
                                  some_text(random),
                                  some_text(random),
                                  random() % 4 == 0};
    says.push_back({{"uid", event.uid},
                    {"sequence", event.sequence},
                    {"status", event.cancelled   ? "CANCELLED"
                               : event.tentative ? "TENTATIVE"
                                                 : "CONFIRMED"},
                    {"from", to_text(event.when.from)},
                    {"to", to_text(event.when.to)},
                    {"summary", event.summary},
                    {"description", event.description},
                    {"place", event.place}});
    file.events.push_back(std::move(event));
  }
  std::cout << calendar::write_calendar(file);
  std::cerr << says.dump() << "\n";
}

}  // namespace

int main(int count, char** arguments) {
  if (count == 4 && std::string(arguments[1]) == "busy") {
    std::ifstream file(arguments[2]);
    const int first = std::atoi(arguments[3]);
    print_begins({std::istreambuf_iterator<char>(file), {}}, first, first + 4);
    return 0;
  }
  if (count != 3) return 2;
  if (std::string(arguments[1]) == "write") {
    print_calendar(std::strtoull(arguments[2], nullptr, 10));
    return 0;
  }
  std::ifstream rules(arguments[2]);
  for (std::string line; std::getline(rules, line);)
    print_times(line.substr(0, line.find('\t')), line.substr(line.find('\t') + 1));
}
