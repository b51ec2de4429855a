#include "core/ledger/root.h"

#include <charconv>
#include <optional>
#include <vector>

#include "core/time/text.h"

namespace wm::ledger {
namespace {

constexpr std::string_view letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::size_t root_letters = 26, check_letters = 2, group = 4;
/// A prime below 32 * 32. Of text read as a number in base 32 the remainder changes with any one figure, and
/// with any two neighbours that change places.
constexpr unsigned prime = 1021;

tl::unexpected<Problem> refuse(const char* what, const char* remedy) {
  return tl::make_unexpected(Problem{"root", what, remedy});
}

/// Five bits a letter, from the first bit on.
std::string first_letters(const Hash& root) {
  std::string out;
  unsigned bits = 0, kept = 0;
  for (auto byte = root.begin(); out.size() < root_letters;) {
    if (kept < 5) bits = (bits << 8 | *byte++) & 0xfff, kept += 8;
    kept -= 5;
    out.push_back(letters[bits >> kept & 31]);
  }
  return out;
}

std::string check_of(std::uint64_t size, std::string_view root) {
  unsigned rest = 0;
  const std::string all = std::to_string(size).append(root);
  for (const char c : all) rest = (rest * 32 + static_cast<unsigned>(letters.find(c))) % prime;
  return {letters[rest / 32], letters[rest % 32]};
}

/// The letter that was meant; 0 where there is none.
char meant(char c) {
  if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  if (c == 'O') return '0';
  if (c == 'I' || c == 'L') return '1';
  return letters.find(c) == std::string_view::npos ? '\0' : c;
}

/// A whole number that fits and has no leading zero.
std::optional<std::uint64_t> size_in(std::string_view text) {
  std::uint64_t out = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), out);
  if (error != std::errc() || end != text.data() + text.size() || std::to_string(out) != text)
    return std::nullopt;
  return out;
}

std::vector<std::string_view> words_of(std::string_view line) {
  std::vector<std::string_view> out;
  for (std::size_t end; (end = line.find(' ')) != std::string_view::npos; line.remove_prefix(end + 1))
    out.push_back(line.substr(0, end));
  out.push_back(line);
  return out;
}

constexpr std::string_view first_words = "witnessmark head 1";

std::string said(const Head& head) {
  return std::to_string(head.size) + " " + to_hex(head.root) + " " + wm::to_text(head.at);
}
std::string signed_text(const Head& head) { return std::string(first_words) + "\n" + said(head); }

}  // namespace

ShortHead shortened(const Head& head) { return {head.size, first_letters(head.root)}; }

bool matches(const ShortHead& head, const Hash& root) { return head.letters == first_letters(root); }

std::string to_text(const ShortHead& head) {
  std::string out = std::to_string(head.size);
  const std::string all = head.letters + check_of(head.size, head.letters);
  for (std::size_t i = 0; i < all.size(); i += group) out.append("-").append(all, i, group);
  return out;
}

Expected<ShortHead> read_short(std::string_view text) {
  constexpr const char* again =
      "Type it as it stands on the paper: the number of records, then seven groups of four.";
  std::string typed;
  for (const char c : text) {
    if (c == ' ' || c == '-') continue;
    typed.push_back(meant(c));
    if (typed.back() == '\0') return refuse("It has a character that no such root has.", again);
  }
  if (typed.size() <= root_letters + check_letters) return refuse("It is too short.", again);
  const std::size_t figures = typed.size() - root_letters - check_letters;
  const auto size = size_in(std::string_view(typed).substr(0, figures));
  if (!size) return refuse("It does not begin with a number of records.", again);
  ShortHead head{*size, typed.substr(figures, root_letters)};
  if (typed.substr(figures + root_letters) != check_of(head.size, head.letters))
    return refuse("A character is mistyped: its check does not fit.", again);
  return head;
}

SignedHead sign(const Head& head, const SigningKey& key) {
  return {head, key.public_key(), key.sign(signed_text(head))};
}

std::string to_line(const SignedHead& head) {
  return std::string(first_words) + " " + said(head.head) + " " + to_hex(head.key) + " " +
         to_hex(head.signature);
}

Expected<SignedHead> read_line(std::string_view line) {
  constexpr const char* again = "Take the line as the program wrote it.";
  const auto no_line = [&] { return refuse("It is not the line of a signed root.", again); };
  const auto words = words_of(line);
  if (words.size() != 8 || !line.starts_with(std::string(first_words) + " ")) return no_line();
  const auto size = size_in(words[3]);
  const auto root = bytes_from_hex<32>(words[4]);
  const auto at = parse_instant(words[5]);
  const auto key = bytes_from_hex<32>(words[6]);
  const auto signature = bytes_from_hex<64>(words[7]);
  if (!size || !root || !at || !key || !signature) return no_line();
  const SignedHead head{{*size, *root, *at}, *key, *signature};
  if (!verify(head.key, signed_text(head.head), head.signature))
    return refuse("The signature of a root does not hold: the line was changed.", again);
  return head;
}

}  // namespace wm::ledger
