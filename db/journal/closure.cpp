#include "db/journal/closure.h"

#include <algorithm>
#include <condition_variable>
#include <mutex>
#include <thread>

#include "db/sql/file.h"

namespace wm::db {
namespace {

/// Whose records are still to be read, shared by the threads.
class Queue {
 public:
  explicit Queue(std::set<PersonId>& persons) : persons_(persons) {}

  void add(std::span<const PersonId> found) {
    const std::lock_guard lock(mutex_);
    for (const PersonId& person : found)
      if (persons_.insert(person).second) next_.push_back(person);
    changed_.notify_all();
  }
  /// Waits while another thread may still find somebody; nothing once nobody can.
  std::optional<PersonId> take() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [&] { return !next_.empty() || at_work_ == 0; });
    if (next_.empty()) return std::nullopt;
    PersonId person = std::move(next_.back());
    next_.pop_back();
    ++at_work_;
    return person;
  }
  void done() {
    const std::lock_guard lock(mutex_);
    --at_work_;
    changed_.notify_all();
  }

 private:
  std::set<PersonId>& persons_;
  std::vector<PersonId> next_;
  int at_work_ = 0;
  std::mutex mutex_;
  std::condition_variable changed_;
};

}  // namespace

Closure::Closure(std::string path, const Proved& proved, std::int64_t last, WitnessOf witness_of,
                 IdsOf ids_of)
    : path_(std::move(path)),
      proved_(proved),
      last_(last),
      witness_of_(std::move(witness_of)),
      ids_of_(std::move(ids_of)) {}

Expected<std::vector<std::unique_ptr<const LeafContent>>> Closure::read(const PersonId& person,
                                                                        std::set<PersonId>& persons) const {
  struct Share {
    std::vector<std::unique_ptr<const LeafContent>> read;
    Expected<void> done;
  };
  Queue queue(persons);
  queue.add({&person, 1});
  const auto work = [&](Share& share) {
    const auto connection = open_to_read(path_);
    if (!connection) {
      share.done = tl::make_unexpected(connection.error());
      return;
    }
    for (auto next = queue.take(); next; next = queue.take()) {
      std::vector<PersonId> witnesses;
      for (const PersonId& id : ids_of_(*next)) {
        if (!share.done) break;
        share.done = read_person(**connection, id, proved_, last_, [&](LeafContent&& content) {
          if (PersonId witness = witness_of_(content); !witness.empty())
            witnesses.push_back(std::move(witness));
          share.read.push_back(std::make_unique<const LeafContent>(std::move(content)));
        });
      }
      queue.add(witnesses);
      queue.done();
    }
  };
  std::vector<Share> shares(std::max(1u, std::thread::hardware_concurrency()));
  std::vector<std::thread> threads;
  for (std::size_t i = 1; i < shares.size(); ++i) threads.emplace_back(work, std::ref(shares[i]));
  work(shares[0]);
  for (std::thread& thread : threads) thread.join();
  std::vector<std::unique_ptr<const LeafContent>> all;
  for (Share& share : shares) {
    if (!share.done) return tl::make_unexpected(share.done.error());
    std::move(share.read.begin(), share.read.end(), std::back_inserter(all));
  }
  return all;
}

}  // namespace wm::db
