#include "db/import/decode.h"

#include <unicode/ucnv.h>
#include <unicode/ustring.h>

#include <algorithm>
#include <memory>

namespace wm::db::import {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool is_utf8(std::string_view bytes) {
  UErrorCode status = U_ZERO_ERROR;
  int32_t length = 0;
  u_strFromUTF8(nullptr, 0, &length, bytes.data(), static_cast<int32_t>(bytes.size()), &status);
  return status == U_BUFFER_OVERFLOW_ERROR || U_SUCCESS(status);
}

/// Bytes that no character of Windows-1252 has; converters let them through as control characters.
bool undefined_in_1252(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte == 0x81 || byte == 0x8D || byte == 0x8F || byte == 0x90 || byte == 0x9D;
}

/// What ICU makes of the bytes; what it cannot read becomes U+FFFD.
std::string converted(std::string_view bytes, const char* from) {
  UErrorCode status = U_ZERO_ERROR;
  const std::unique_ptr<UConverter, decltype(&ucnv_close)> converter(ucnv_open(from, &status), ucnv_close);
  std::u16string wide(bytes.size() + 1, u'\0');
  const int32_t units = ucnv_toUChars(converter.get(), wide.data(), static_cast<int32_t>(wide.size()),
                                      bytes.data(), static_cast<int32_t>(bytes.size()), &status);
  std::string text(static_cast<std::size_t>(units) * 3 + 1, '\0');
  int32_t length = 0;
  u_strToUTF8(text.data(), static_cast<int32_t>(text.size()), &length, wide.data(), units, &status);
  text.resize(U_SUCCESS(status) ? static_cast<std::size_t>(length) : 0);
  return text;
}

template <class Bad>
std::vector<RowProblem> bad_lines(std::string_view bytes, Bad bad, const char* what, const char* remedy) {
  std::vector<RowProblem> problems;
  int line = 0;
  for (const std::string_view text : split_lines(bytes)) {
    ++line;
    if (bad(text)) problems.push_back({line, {"line " + std::to_string(line), what, remedy}});
  }
  return problems;
}

std::vector<RowProblem> bad_utf8(std::string_view bytes) {
  if (is_utf8(bytes)) return {};
  return bad_lines(
      bytes, [](std::string_view line) { return !is_utf8(line); }, "has bytes that are not UTF-8",
      "Choose Windows-1252 as the encoding, or save the file again as CSV UTF-8");
}

std::vector<RowProblem> bad_1252(std::string_view bytes) {
  return bad_lines(
      bytes, [](std::string_view line) { return std::any_of(line.begin(), line.end(), undefined_in_1252); },
      "has bytes that are neither UTF-8 nor Windows-1252", "Save the file again as CSV UTF-8");
}

}  // namespace

std::vector<std::string_view> split_lines(std::string_view text) {
  std::vector<std::string_view> lines;
  while (!text.empty()) {
    std::size_t end = text.find_first_of("\r\n");
    if (end == text.npos) end = text.size() - 1;
    if (text[end] == '\r' && end + 1 < text.size() && text[end + 1] == '\n') ++end;
    lines.push_back(text.substr(0, end + 1));
    text.remove_prefix(end + 1);
  }
  return lines;
}

Decoded decode(std::string_view bytes, std::optional<Encoding> chosen) {
  const bool marked = bytes.substr(0, byte_order_mark.size()) == byte_order_mark;
  if (marked && chosen != Encoding::windows_1252) bytes.remove_prefix(byte_order_mark.size());
  const Encoding encoding =
      chosen.value_or(marked || is_utf8(bytes) ? Encoding::utf8 : Encoding::windows_1252);
  if (encoding == Encoding::windows_1252)
    return {converted(bytes, "windows-1252"), encoding, !chosen, bad_1252(bytes)};
  std::vector<RowProblem> problems = bad_utf8(bytes);
  return {problems.empty() ? std::string(bytes) : converted(bytes, "UTF-8"), encoding, !chosen,
          std::move(problems)};
}

}  // namespace wm::db::import
