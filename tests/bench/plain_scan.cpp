#include "plain_scan.h"

#include <algorithm>
#include <string_view>
#include <unordered_map>

namespace wm::bench {

std::vector<PlainRecord> plain_records(const Shop& shop) {
  std::unordered_map<std::string_view, std::uint32_t> places;
  for (const PersonId& person : shop.people)
    places.emplace(person, static_cast<std::uint32_t>(places.size()));
  const auto nobody = static_cast<std::uint32_t>(places.size());
  std::vector<PlainRecord> records;
  records.reserve(shop.records.size());
  for (const Record& record : shop.records) {
    const std::uint32_t person = std::visit(
        [&](const auto& fact) {
          if constexpr (requires { fact.person; }) return places.at(fact.person);
          return nobody;
        },
        record.fact);
    records.push_back({record.at.seconds, person, static_cast<std::uint8_t>(record.fact.index())});
  }
  return records;
}

void scan(const std::vector<PlainRecord>& records, std::int64_t t, std::uint8_t kind, PlainSums& sums) {
  std::fill(sums.count.begin(), sums.count.end(), 0u);
  std::fill(sums.latest.begin(), sums.latest.end(), 0);
  for (const PlainRecord& record : records) {
    if (record.at > t) continue;
    sums.count[record.person] += record.kind == kind;
    sums.latest[record.person] = std::max(sums.latest[record.person], record.at);
  }
}

}  // namespace wm::bench
