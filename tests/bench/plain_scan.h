#pragma once
// The limit: how long it takes only to look at every record once, in the smallest form that they could have.
#include <cstdint>
#include <vector>

#include "core/records/shop.h"

namespace wm::bench {

/// What a decision reads first of a record; 16 bytes.
struct PlainRecord {
  std::int64_t at;
  std::uint32_t person;  // its place in the shop's people; the last place plus one where the record has none
  std::uint8_t kind;     // its place in the variant of facts
};

/// The shop's records in their own order.
std::vector<PlainRecord> plain_records(const Shop& shop);

/// One pass: how many records of `kind` each person has up to `t`, and when the latest of any kind was.
struct PlainSums {
  std::vector<std::uint32_t> count;
  std::vector<std::int64_t> latest;
};
void scan(const std::vector<PlainRecord>& records, std::int64_t t, std::uint8_t kind, PlainSums& sums);

}  // namespace wm::bench
