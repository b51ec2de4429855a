#pragma once
// Whether text is UTF-8 (RFC 3629), and whether its characters can be shown.
#include <cstddef>
#include <string_view>

namespace wm {

/// How many bytes the first character of `text`, which is not empty, takes, and its code; 0 where that is no
/// UTF-8.
std::size_t character(std::string_view text, char32_t& code);
/// A byte that only goes on with a character.
inline bool goes_on(char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; }
/// Also the separators of lines and paragraphs, which would break what is one line. A tab is none.
bool is_control(char32_t code);
/// What keeps a text from being shown: bytes that are no UTF-8, or a control character; by which comes first.
enum class Flaw { none, not_utf8, control };
Flaw flaw_in(std::string_view text);

}  // namespace wm
