#pragma once
// The shop as it is known now, in memory, following the journal entry by entry.
#include <memory>
#include <vector>

#include "core/decide/current.h"
#include "db/journal/memory.h"

namespace wm::db {

class CurrentShop {
 public:
  /// Made at first use, then brought up to the journal's last entry each time. Its references are good until
  /// something was entered.
  Current& of(const Memory& memory, const Zone& zone);
  /// The journal was read anew, since something in it is there no longer.
  void read_anew() { stale_ = true; }
  /// Whose standings became other ones since this was asked last, in order of (person, target); where several
  /// entries shifted one, from the first to the last instant.
  std::vector<Shift> take_shifts();

 private:
  void make(const Memory& memory, const Zone& zone);
  /// False where what the entry says is too much at once: the shop must be made anew.
  bool follow(const Memory& memory, const Entry& entry);

  std::unique_ptr<Current> current_;
  bool stale_ = false;
  std::size_t entries_ = 0, people_ = 0;  // how many of the journal's it knows
  std::vector<Shift> shifts_;
};

}  // namespace wm::db
