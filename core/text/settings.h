#pragma once
// Lines of the form "key: value", each key once but for those that make a list.
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "core/text/lines.h"

namespace wm::text {

struct Setting {
  std::size_t line = 0;
  std::string value;  // plain words, never empty
};

class Settings {
 public:
  /// `title` is the line that a missing setting is told of. The keys of `lists` may stand many times.
  Settings(std::size_t title, std::span<const Line> lines, const std::vector<std::string_view>& once,
           const std::vector<std::string_view>& lists, Mistakes& mistakes);

  std::size_t title() const { return title_; }
  Mistakes& mistakes() const { return mistakes_; }
  /// Finds fault where there is none.
  std::optional<Setting> need(std::string_view key) const;
  std::optional<Setting> may(std::string_view key) const;
  std::span<const Setting> all(std::string_view key) const;
  void wrong(const Setting& setting, std::string what, std::string remedy) const;

 private:
  void take(const Line& line, const std::vector<std::string_view>& once,
            const std::vector<std::string_view>& lists);

  std::size_t title_;
  Mistakes& mistakes_;
  std::map<std::string, std::vector<Setting>, std::less<>> found_;
};

/// "yes" or "no".
bool yes(const Settings& settings, std::string_view key);
/// A whole number in range, or `otherwise` with a mistake.
int whole(const Settings& settings, const Setting& setting, std::string_view digits, int low, int high,
          int otherwise);

}  // namespace wm::text
