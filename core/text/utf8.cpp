#include "core/text/utf8.h"

namespace wm {

std::size_t character(std::string_view text, char32_t& code) {
  const auto first = static_cast<unsigned char>(text[0]);
  const std::size_t size = first < 0x80 ? 1 : first < 0xC2 ? 0 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
  if (size == 0 || first > 0xF4 || text.size() < size) return 0;
  code = size == 1 ? first : first & (0xFFu >> (size + 1));
  for (std::size_t i = 1; i < size; ++i) {
    if (!goes_on(text[i])) return 0;
    code = code << 6 | (static_cast<unsigned char>(text[i]) & 0x3F);
  }
  const bool too_long = (size == 3 && code < 0x800) || (size == 4 && code < 0x10000);
  return too_long || (code >= 0xD800 && code < 0xE000) || code > 0x10FFFF ? 0 : size;
}

bool is_control(char32_t code) {
  return (code < 0x20 && code != '\t') || (code >= 0x7F && code < 0xA0) || code == 0x2028 || code == 0x2029;
}

Flaw flaw_in(std::string_view text) {
  while (!text.empty()) {
    char32_t code = 0;
    const std::size_t size = character(text, code);
    if (size == 0) return Flaw::not_utf8;
    if (is_control(code)) return Flaw::control;
    text.remove_prefix(size);
  }
  return Flaw::none;
}

}  // namespace wm
