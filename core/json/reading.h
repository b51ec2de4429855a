#pragma once
// Reading a JSON tree strictly: every mistake is kept with its place, and reading goes on.
#include <initializer_list>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/json/tree.h"
#include "core/problem.h"
#include "core/time/instant.h"
#include "core/time/period.h"

namespace wm::json {

/// What a name is the name of. `on` is a target or a class; `standing_on` a target, no mere class.
enum class Names { person, machine, record, version, tier, machine_class, mode, gate, on, standing_on };

/// A name with the value that says it. Numbers that name something (tiers, versions) are names in figures.
struct Named {
  Value at;
  Names names;
  std::string name;
};

/// The names that a text, or a part of it with names of its own, defines and uses: looked up once all of it
/// has been read.
struct NameScope {
  std::vector<Named> definitions, uses;
  /// Of what some definitions couldn't be read, so that nobody can say what is not defined.
  std::set<Names> unreadable;
};

/// What reading a text brings up besides the things read.
class Reading {
 public:
  /// The first ten thousand are kept, or 8 MB of sentences; the others are counted.
  void mistake(Value at, std::string what, std::string remedy);
  /// Every repeated key of the text.
  void repeated_keys(const Tree& tree);
  std::size_t mistakes() const { return mistakes_.size() + more_; }
  /// In order of the file; where some were not kept, a last one says how many.
  std::vector<Problem> in_order() &&;
  /// Finds fault with every name of `names` that is defined twice, at its second definition.
  void repeated_names();

  NameScope names;
  /// How many lists of requirements what is being read stands inside of.
  int lists = 0;

 private:
  struct Placed {
    std::size_t place;
    Problem problem;
  };
  std::vector<Placed> mistakes_;
  std::size_t kept_bytes_ = 0, more_ = 0;
};

// Each reads one value, or says what is wrong with it. They are handed to Fields below.
std::optional<std::string> text(Reading& reading, Value value);
std::optional<bool> truth(Reading& reading, Value value);
std::optional<Instant> instant(Reading& reading, Value value);
std::optional<Day> day(Reading& reading, Value value);
/// `{"days": n}`, `{"months": n}` or `{"calendar_months": n}`.
std::optional<Period> period(Reading& reading, Value value);
std::optional<int> whole(Reading& reading, Value value, int low, int high);
/// Whether it is a list; says so where it is not.
bool is_list(Reading& reading, Value value);

/// A whole number from `low` to `high`.
inline auto whole(int low, int high) {
  return [=](Reading& reading, Value value) { return whole(reading, value, low, high); };
}
/// A text that names something.
inline auto name_of(Names names) {
  return [=](Reading& reading, Value value) {
    auto name = text(reading, value);
    if (name) reading.names.uses.push_back({value, names, *name});
    return name;
  };
}
/// A list whose items are read one by one; those that can't be read are left out.
template <class Read>
auto list_of(Read read) {
  return [=](Reading& reading, Value value) {
    using Item = typename decltype(read(reading, value))::value_type;
    std::optional<std::vector<Item>> items;
    if (!is_list(reading, value)) return items;
    items.emplace();
    for (std::size_t i = 0; i < value.size(); ++i)
      if (auto item = read(reading, value[i])) items->push_back(std::move(*item));
    return items;
  };
}

/// Says that `value` is none of `words`.
void not_one_of(Reading& reading, Value value, const std::vector<std::string_view>& words);

/// One of the words of an enumeration that has a word(…).
template <class Enum>
auto one_of(std::initializer_list<Enum> choices) {
  return [list = std::vector<Enum>(choices)](Reading& reading, Value value) -> std::optional<Enum> {
    std::vector<std::string_view> words;
    for (const Enum choice : list) {
      if (value.kind() == Kind::text && value.text() == word(choice)) return choice;
      words.push_back(word(choice));
    }
    not_one_of(reading, value, words);
    return std::nullopt;
  };
}

/// The members of one object. Ask for each field that it may have, then call `finish`, which finds fault with
/// the others.
class Fields {
 public:
  Fields(Reading& reading, Value object);

  Reading& reading() { return reading_; }
  Value object() const { return object_; }
  bool has(std::string_view key) const { return object_.find(key).has_value(); }

  /// A field that must be there. Whether `out` was filled.
  template <class T, class Read>
  bool need(std::string_view key, T& out, const Read& read) {
    const auto value = take(key);
    if (!value) missing(key);
    return value && fill(out, read(reading_, *value));
  }
  /// A field that may be left out: `out` then stays as it is.
  template <class T, class Read>
  bool may(std::string_view key, T& out, const Read& read) {
    const auto value = take(key);
    return value && fill(out, read(reading_, *value));
  }
  /// The same, with the value that leaving it out stands for.
  template <class T, class Read>
  bool may(std::string_view key, T& out, const T& otherwise, const Read& read) {
    out = otherwise;
    return may(key, out, read);
  }
  /// A field that must be there and names its object.
  template <class T, class Read>
  bool define(std::string_view key, T& out, Names names, const Read& read) {
    const bool filled = need(key, out, read);
    if (filled) {
      reading_.names.definitions.push_back({*object_.find(key), names, as_name(out)});
    } else {
      unreadable(names);
    }
    return filled;
  }
  void unreadable(Names names) { reading_.names.unreadable.insert(names); }
  /// A mistake of a field's value, where `wrong`.
  void refuse(bool wrong, std::string_view key, const char* what, const char* remedy) {
    if (wrong) reading_.mistake(object_.find(key).value_or(object_), what, remedy);
  }
  /// A mistake of the whole object, where `wrong`.
  void refuse(bool wrong, const char* what, const char* remedy) {
    if (wrong) reading_.mistake(object_, what, remedy);
  }
  /// Looks no further: what else the object may have can't be told.
  void give_up() { known_everything_ = true; }
  void finish();

 private:
  std::optional<Value> take(std::string_view key);
  void missing(std::string_view key);
  static std::string as_name(const std::string& name) { return name; }
  static std::string as_name(int number) { return std::to_string(number); }
  template <class T, class U>
  static bool fill(T& out, std::optional<U> read) {
    if (read) out = std::move(*read);
    return read.has_value();
  }

  Reading& reading_;
  Value object_;
  bool known_everything_ = false;
  std::vector<std::string> known_;
};

}  // namespace wm::json
