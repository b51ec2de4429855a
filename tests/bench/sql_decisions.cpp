#include "sql_decisions.h"

#include <sqlite3.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <unordered_map>

namespace wm::bench {

namespace {

[[noreturn]] void give_up(sqlite3* base, const std::string& doing) {
  std::fprintf(stderr, "SQLite, %s: %s\n", doing.c_str(), sqlite3_errmsg(base));
  std::exit(1);
}

void run(sqlite3* base, const std::string& sql) {
  if (sqlite3_exec(base, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) give_up(base, sql);
}

/// A prepared statement; values are bound by name, an empty optional as NULL.
class Statement {
 public:
  Statement(sqlite3* base, const std::string& sql) : base_(base) {
    if (sqlite3_prepare_v3(base, sql.c_str(), -1, SQLITE_PREPARE_PERSISTENT, &statement_, nullptr) !=
        SQLITE_OK) {
      give_up(base, "preparing");
    }
  }
  ~Statement() { sqlite3_finalize(statement_); }
  Statement(const Statement&) = delete;
  Statement& operator=(const Statement&) = delete;

  void bind(const char* name, std::optional<std::int64_t> value) {
    const int place = sqlite3_bind_parameter_index(statement_, name);
    if (place == 0) return;
    value ? sqlite3_bind_int64(statement_, place, *value) : sqlite3_bind_null(statement_, place);
  }
  void bind(const char* name, const char* text) {
    sqlite3_bind_text(statement_, sqlite3_bind_parameter_index(statement_, name), text, -1, SQLITE_STATIC);
  }
  bool step() {
    const int result = sqlite3_step(statement_);
    if (result != SQLITE_ROW && result != SQLITE_DONE) give_up(base_, "stepping");
    return result == SQLITE_ROW;
  }
  std::int64_t number(int column) { return sqlite3_column_int64(statement_, column); }
  void reset() { sqlite3_reset(statement_); }
  void write() {
    step();
    reset();
    sqlite3_clear_bindings(statement_);
  }

 private:
  sqlite3* base_;
  sqlite3_stmt* statement_ = nullptr;
};

std::string with(std::string text, const std::string& what, const std::string& instead) {
  for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += instead.size()) {
    text.replace(at, what.size(), instead);
  }
  return text;
}

constexpr const char* schema = R"(
PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA cache_size = -262144; PRAGMA mmap_size = 1073741824;
BEGIN;
CREATE TABLE people(person INTEGER PRIMARY KEY, name TEXT NOT NULL);
CREATE TABLE records(
  id INTEGER PRIMARY KEY, kind TEXT NOT NULL, person INTEGER, item INTEGER, at INTEGER NOT NULL, recorded INTEGER NOT NULL,
  voided INTEGER, counts INTEGER NOT NULL DEFAULT 1, revision INTEGER, minutes INTEGER, severity INTEGER, until INTEGER,
  born INTEGER, scope TEXT, ends INTEGER);
CREATE TABLE paper_rule(item INTEGER PRIMARY KEY, since INTEGER NOT NULL);
CREATE TABLE item_rule(item INTEGER PRIMARY KEY, since INTEGER NOT NULL, needed INTEGER NOT NULL);
CREATE TABLE target(
  target INTEGER PRIMARY KEY, class INTEGER NOT NULL, tier INTEGER NOT NULL, below INTEGER, safety INTEGER NOT NULL,
  intro INTEGER, quiz INTEGER NOT NULL, born_by INTEGER NOT NULL, checkout_since INTEGER NOT NULL,
  checkout_needed INTEGER NOT NULL, renew_after_severity INTEGER NOT NULL, renew_after_change INTEGER NOT NULL,
  uses_since INTEGER NOT NULL, minutes_since INTEGER NOT NULL, sessions_since INTEGER NOT NULL);
)";
// The first carries the queries about everybody, kind by kind, the second those about one person; both hold
// all that the commonest rows are asked for.
constexpr const char* indexes = R"(
CREATE INDEX by_kind ON records(kind, person, item, at, counts, revision, minutes) WHERE voided IS NULL;
CREATE INDEX by_end ON records(kind, ends) WHERE ends IS NOT NULL;
COMMIT;
ANALYZE;
)";

/// Says which records count, by the last rulebook's measure, as a program would that marks them when they are
/// entered.
class Counting {
 public:
  Counting(const World& world, Current& engine) : world_(world), engine_(engine) {
    for (const WorldTarget& target : world.targets) tiers_[target.name] = target.tier;
  }

  /// In order of (at, id), each record once.
  bool counts(const Record& record) { return std::visit(One{*this, record.at}, record.fact); }

 private:
  struct One {
    Counting& c;
    Instant at;
    bool operator()(const Quiz& r) { return c.quiz(r, at); }
    bool operator()(const Lesson& r) {
      c.heard_.insert({r.person, r.lesson});
      return true;
    }
    bool operator()(const Supervised& r) { return c.supervised(r, at); }
    bool operator()(const Use& r) { return c.engine_.rung(r.person, r.target, at - 1) == Rung::independent; }
    bool operator()(const Checkout& r) { return c.checkout(r, at); }
    bool operator()(const auto&) { return true; }
  };

  /// 80 of 100, no critical question missed; a day after the last miss, three misses in 720 hours.
  bool quiz(const Quiz& r, Instant at) {
    std::vector<Instant>& missed = missed_[{r.person, r.quiz}];
    const auto lately =
        std::count_if(missed.begin(), missed.end(), [&](Instant t) { return t > at - 720 * 3600; });
    if ((!missed.empty() && at < missed.back() + 24 * 3600) || lately >= 3) return false;
    const bool passed = 100 * r.correct >= 80 * r.total && r.critical_missed == 0;
    if (!passed) missed.push_back(at);
    return passed;
  }
  bool supervised(const Supervised& r, Instant at) {
    if (r.supervisor == r.person || !engine_.able_to_supervise(r.supervisor, r.target, at - 1)) return false;
    Practice& practice = practised_[{r.person, r.target}];
    ++practice.sessions;
    practice.minutes += r.minutes;
    return true;
  }
  bool checkout(const Checkout& r, Instant at) {
    if (r.outcome != Outcome::passed || r.assessor == r.person) return false;
    const Practice practice = practised_[{r.person, r.checkout}];
    const int tier = tiers_.at(r.checkout);
    const bool given = tier <= 2 ? practice.sessions >= 1 : practice.sessions >= 2 && practice.minutes >= 60;
    if (!given || (tier == 4 && heard_.count({r.person, safety_of(4)}) == 0)) return false;
    return engine_.able_to_assess(r.assessor, r.checkout, at - 1);
  }

  struct Practice {
    int sessions = 0, minutes = 0;
  };
  using Pair = std::pair<std::string, std::string>;
  const World& world_;
  Current& engine_;
  std::map<TargetName, int> tiers_;
  std::map<Pair, std::vector<Instant>> missed_;
  std::map<Pair, Practice> practised_;
  std::set<Pair> heard_;
};

}  // namespace

struct SqlDecisions::Base {
  Base(const World& given, Current& engine, const std::string& path) : world(given), file(path) {
    if (!path.empty()) std::filesystem::remove(path);
    if (sqlite3_open(path.c_str(), &base) != SQLITE_OK) give_up(base, "opening " + path);
    run(base, schema);
    for (std::size_t i = 0; i < world.shop.people.size(); ++i)
      people[world.shop.people[i]] = static_cast<int>(i);
    write_people();
    write_rules();
    write_records(engine);
    run(base, indexes);
    prepare();
  }
  ~Base() {
    all.reset();
    one.reset();
    of_target.reset();
    sqlite3_close(base);
  }

  int number(const std::string& name) {
    return numbers.try_emplace(name, static_cast<int>(numbers.size()) + 100).first->second;
  }

  /// The earliest instant of which something good for `valid`, with `grace`, lasts until the world's now.
  std::int64_t since(std::optional<Period> valid, std::optional<Period> grace = {}) const {
    if (!valid) return 0;
    const Zone& zone = world.shop.zone;
    const Day today = zone.day(world.now);
    Day day = today + (-6000);
    while ((grace ? end(end(day, *valid), *grace) : end(day, *valid)) < today) day = day + 1;
    return zone.start(day).seconds;
  }

  int needed(const std::string& item, std::optional<Period> changeover) const {
    int revision = 0;
    for (const Record& record : world.shop.records) {
      const auto* publish = std::get_if<Publish>(&record.fact);
      if (publish == nullptr || publish->item != item || record.voided) continue;
      const Instant from = changeover ? cover_end(world.shop.zone, record.at, *changeover) : record.at;
      if (from <= world.now) revision = std::max(revision, publish->revision);
    }
    return revision;
  }

  void write_people() {
    Statement insert(base, "INSERT INTO people VALUES (:person, :name)");
    for (const auto& [name, person] : people) {
      insert.bind(":person", person);
      insert.bind(":name", name.c_str());
      insert.write();
    }
  }

  void write_paper(const char* name, std::optional<Period> valid, std::optional<Period> grace = {}) {
    Statement insert(base, "INSERT INTO paper_rule VALUES (:item, :since)");
    insert.bind(":item", number(name));
    insert.bind(":since", since(valid, grace));
    insert.write();
  }
  void write_item(const std::string& name, std::int64_t from, int revision) {
    Statement insert(base, "INSERT OR REPLACE INTO item_rule VALUES (:item, :since, :needed)");
    insert.bind(":item", number(name));
    insert.bind(":since", from);
    insert.bind(":needed", revision);
    insert.write();
  }

  static Period months(int n) { return {PeriodUnit::months, n}; }
  static Period days(int n) { return {PeriodUnit::days, n}; }

  void write_rules() {
    write_paper("induction", months(12), days(30));
    write_paper("membership", Period{PeriodUnit::calendar_months, 12});
    write_paper("course", {});
    write_paper("certificate", {});
    write_paper("refresher", months(24));
    Statement insert(base,
                     "INSERT INTO target VALUES (:target, :class, :tier, :below, :safety, :intro, :quiz, "
                     ":born_by, :since, "
                     ":needed, :severity, :change, :uses, :minutes, :sessions)");
    const int columns = static_cast<int>(world.targets.size()) / 4;
    for (const WorldTarget& target : world.targets) {
      const int tier = target.tier;
      const std::string safety = safety_of(tier);
      write_item(safety, since(months(60), days(60)), needed(safety, days(60)));
      write_item(quiz_of(target), since(months(36), days(30)), needed(quiz_of(target), days(90)));
      if (tier == 1) write_item(intro_of(target), 0, 0);
      const auto bind = [&](const char* name, std::optional<std::int64_t> value) {
        insert.bind(name, value);
      };
      bind(":target", number(target.name));
      bind(":class", number(target.machine_class));
      bind(":tier", tier);
      if (tier > 1) {
        bind(":below",
             number(world.targets[static_cast<std::size_t>((tier - 2) * columns + target.column)].name));
      }
      bind(":safety", number(safety));
      if (tier == 1) bind(":intro", number(intro_of(target)));
      bind(":quiz", number(quiz_of(target)));
      bind(":born_by", born_by(tier <= 2 ? 14 : tier == 3 ? 16 : 18));
      bind(":since", since(months(checkout_months(tier)), days(60)));
      bind(":needed", tier == 4 ? needed(target.name, months(12)) : 0);
      bind(":severity", tier >= 2 ? 2 : 0);
      bind(":change", target.column % 3 == 0);
      bind(":uses", since(months(tier == 4 ? 18 : 12)));
      bind(":minutes", since(months(12)));
      bind(":sessions", since(months(30)));
      insert.write();
    }
  }

  /// The last day of birth on which somebody is that old by now.
  std::int64_t born_by(int years) const {
    const Day today = world.shop.zone.day(world.now);
    Day day = today;
    while (birthday(day, years) > today) day = day + (-1);
    return day.number;
  }

  void write_records(Current& engine) {
    Statement insert(base,
                     "INSERT INTO records VALUES (:id, :kind, :person, :item, :at, :recorded, :voided, "
                     ":counts, :revision, "
                     ":minutes, :severity, :until, :born, :scope, :ends)");
    Counting counting(world, engine);
    const auto bind = [&](const char* name, std::optional<std::int64_t> value) { insert.bind(name, value); };
    const auto id = [](const RecordId& text) { return std::atoi(text.c_str() + 1); };
    const auto day = [](std::optional<Day> d) {
      return d ? std::optional<std::int64_t>(d->number) : std::nullopt;
    };
    for (const Record& record : world.shop.records) {
      const auto* checkout = std::get_if<Checkout>(&record.fact);
      const std::string kind(checkout != nullptr ? word(checkout->outcome) : kind_word(record.fact));
      insert.bind(":kind", kind.c_str());
      bind(":id", id(record.id));
      bind(":at", record.at.seconds);
      bind(":recorded", record.recorded.seconds);
      if (record.voided) bind(":voided", record.voided->seconds);
      bind(":counts", record.voided ? 0 : counting.counts(record));
      std::visit(
          [&](const auto& fact) {
            if constexpr (requires { fact.person; }) bind(":person", people.at(fact.person));
            if constexpr (requires { fact.revision; }) bind(":revision", fact.revision);
            if constexpr (requires { fact.minutes; }) bind(":minutes", fact.minutes);
            if constexpr (requires { fact.born; }) bind(":born", fact.born.number);
            if constexpr (requires { fact.until; }) bind(":until", day(fact.until));
            if constexpr (requires { fact.target; }) bind(":item", number(fact.target));
            if constexpr (requires { fact.document; }) bind(":item", number(fact.document));
            if constexpr (requires { fact.lesson; }) bind(":item", number(fact.lesson));
            if constexpr (requires { fact.quiz; }) bind(":item", number(fact.quiz));
            if constexpr (requires { fact.checkout; }) bind(":item", number(fact.checkout));
            if constexpr (requires { fact.suspension; }) bind(":ends", id(fact.suspension));
          },
          record.fact);
      if (const auto* incident = std::get_if<Incident>(&record.fact)) {
        bind(":item", number(std::string(class_of(incident->target))));
        // Only those weigh in which the person was operating.
        bind(":severity", incident->part == Part::operating ? incident->severity : 9);
      }
      if (const auto* suspend = std::get_if<Suspend>(&record.fact)) bind_scope(insert, suspend->scope);
      insert.write();
    }
  }

  void bind_scope(Statement& insert, const Scope& scope) {
    insert.bind(":scope", "all");
    if (const auto* tier = std::get_if<TierScope>(&scope)) {
      insert.bind(":scope", "tier");
      insert.bind(":item", tier->tier);
    } else if (const auto* target = std::get_if<TargetScope>(&scope)) {
      insert.bind(":scope", "target");
      insert.bind(":item", number(target->target));
    }
  }

  void prepare() {
    std::ifstream in(std::string(WM_BENCH) + "/decisions.sql");
    std::ostringstream text;
    text << in.rdbuf();
    const std::string everybody = with(with(text.str(), "{r}", ""), "{p}", "");
    const std::string single =
        with(with(text.str(), "{r}", "AND r.person = :person"), "{p}", "AND p.person = :person");
    all = std::make_unique<Statement>(base, everybody + "SELECT person, target, rung FROM rungs");
    one = std::make_unique<Statement>(base, single + "SELECT rung FROM rungs WHERE target = :target");
    of_target = std::make_unique<Statement>(
        base,
        everybody + "SELECT person FROM rungs WHERE target = :target AND rung >= :rung ORDER BY person");
    const int columns = static_cast<int>(world.targets.size()) / 4;
    for (Statement* statement : {all.get(), one.get(), of_target.get()}) {
      statement->bind(":t", world.now.seconds);
      statement->bind(":today", world.shop.zone.day(world.now).number);
      statement->bind(":earliest", since(months(30)));
      for (const char* name : {"induction", "membership", "course", "certificate", "refresher"}) {
        statement->bind((":" + std::string(name)).c_str(), number(name));
      }
      statement->bind(":supervised_below", std::min(3, columns));
      statement->bind(":independent_below", std::min(2, columns));
    }
    for (std::size_t i = 0; i < world.targets.size(); ++i) places[number(world.targets[i].name)] = i;
  }

  const World& world;
  std::string file;
  sqlite3* base = nullptr;
  std::unordered_map<std::string, int> people, numbers;
  std::map<std::int64_t, std::size_t> places;  // of targets, by number
  std::unique_ptr<Statement> all, one, of_target;
};

SqlDecisions::SqlDecisions(const World& world, Current& engine, const std::string& path)
    : base_(std::make_unique<Base>(world, engine, path)) {}
SqlDecisions::~SqlDecisions() = default;

std::vector<Rung> SqlDecisions::everyone() {
  const std::size_t targets = base_->world.targets.size();
  std::vector<Rung> rungs(base_->world.shop.people.size() * targets, Rung::barred);
  while (base_->all->step()) {
    const auto person = static_cast<std::size_t>(base_->all->number(0));
    rungs[person * targets + base_->places.at(base_->all->number(1))] =
        static_cast<Rung>(base_->all->number(2));
  }
  base_->all->reset();
  return rungs;
}

Rung SqlDecisions::standing(const PersonId& person, const TargetName& target) {
  base_->one->bind(":person", base_->people.at(person));
  base_->one->bind(":target", base_->number(target));
  const Rung rung = base_->one->step() ? static_cast<Rung>(base_->one->number(0)) : Rung::barred;
  base_->one->reset();
  return rung;
}

std::vector<PersonId> SqlDecisions::who(const TargetName& target, Rung at_least) {
  base_->of_target->bind(":target", base_->number(target));
  base_->of_target->bind(":rung", static_cast<int>(at_least));
  std::vector<PersonId> found;
  while (base_->of_target->step()) {
    found.push_back(base_->world.shop.people[static_cast<std::size_t>(base_->of_target->number(0))]);
  }
  base_->of_target->reset();
  return found;
}

}  // namespace wm::bench
