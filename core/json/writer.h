#pragma once
// The other half of Fields: takes the same calls and writes what it is handed, so that the form of a thing is
// described once for both directions.
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/json/reading.h"
#include "core/json/writing.h"
#include "core/time/text.h"

namespace wm::json {

inline std::string written(const std::string& text) { return in_quotes(text); }
inline std::string written(int number) { return std::to_string(number); }
inline std::string written(bool truth) { return truth ? "true" : "false"; }
inline std::string written(Instant t) { return in_quotes(to_text(t)); }
inline std::string written(Day d) { return in_quotes(to_text(d)); }
std::string written(Period period);

template <class Enum>
requires std::is_enum_v<Enum> std::string written(Enum value) { return in_quotes(word(value)); }

template <class T>
std::string written(const std::vector<T>& items) {
  std::vector<std::string> all;
  for (const T& item : items) all.push_back(written(item));
  return compact(all);
}

template <class T>
std::string written(const std::map<std::string, T>& items) {
  std::vector<Member> all;
  for (const auto& [key, item] : items) all.emplace_back(key, written(item));
  return compact(all);
}

class Writer {
 public:
  template <class T, class Read>
  bool need(std::string_view key, const T& value, const Read&) {
    members_.emplace_back(key, written(value));
    return true;
  }
  template <class T, class Read>
  bool may(std::string_view key, const std::optional<T>& value, const Read& read) {
    return value && need(key, *value, read);
  }
  template <class T, class Read>
  bool may(std::string_view key, const T& value, const T& otherwise, const Read& read) {
    return value != otherwise && need(key, value, read);
  }
  template <class T, class Read>
  bool define(std::string_view key, const T& value, Names, const Read& read) {
    return need(key, value, read);
  }
  bool has(std::string_view) const { return false; }
  void refuse(bool, std::string_view, const char*, const char*) {}
  void refuse(bool, const char*, const char*) {}
  void unreadable(Names) {}
  void give_up() {}

  const std::vector<Member>& members() const { return members_; }

 private:
  std::vector<Member> members_;
};

}  // namespace wm::json
