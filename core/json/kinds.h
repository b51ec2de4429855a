#pragma once
// Things that come in kinds: a variant whose alternatives each have a word.
#include <utility>
#include <variant>
#include <vector>

#include "core/compiled_once.h"
#include "core/json/reading.h"

namespace wm::json {

/// The alternative, with its default values, whose `word_of` the value is.
template <class Variant, class WordOf>
std::optional<Variant> kind_of(Reading& reading, Value value, const WordOf& word_of) {
  static const auto all = []<std::size_t... i>(std::index_sequence<i...>) {
    return std::vector<Variant>{Variant(std::in_place_index<i>)...};
  }
  (std::make_index_sequence<kinds_in<Variant>>());
  if (value.kind() == Kind::text)
    for (const Variant& kind : all)
      if (value.text() == word_of(kind)) return kind;
  std::vector<std::string_view> words;
  for (const Variant& kind : all) words.push_back(word_of(kind));
  not_one_of(reading, value, words);
  return std::nullopt;
}

}  // namespace wm::json
