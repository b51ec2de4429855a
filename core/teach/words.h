#pragma once
// The words for kinds of questions in files.
#include <array>
#include <optional>
#include <string_view>

#include "core/teach/bank.h"

namespace wm::teach {

constexpr std::array<std::string_view, std::variant_size_v<Kind>> kind_words = {"one", "several", "order",
                                                                                "number", "place"};

inline std::string_view kind_word(const Kind& kind) { return kind_words[kind.index()]; }

/// The kind with that word, empty.
inline std::optional<Kind> kind_called(std::string_view word) {
  const std::array<Kind, kind_words.size()> kinds = {OneRight{}, SeveralRight{}, InOrder{}, ANumber{},
                                                     APlace{}};
  for (const Kind& kind : kinds)
    if (kind_word(kind) == word) return kind;
  return std::nullopt;
}

}  // namespace wm::teach
