#include "core/measure/read.h"

#include <utility>

#include "core/measure/folded.h"

namespace wm {
namespace {

constexpr std::size_t most_digits = 9;

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_mark(char c) { return c == '.' || c == ','; }

/// Where reading has got to in what was typed.
struct Cursor {
  const Folded& typed;
  std::size_t at = 0;

  char peek(std::size_t ahead = 0) const {
    return at + ahead < typed.text.size() ? typed.text[at + ahead] : '\0';
  }
  bool take(char c) { return peek() == c && (++at, true); }
  /// The digits that stand here; maybe none.
  std::string digits() {
    const std::size_t from = at;
    while (is_digit(peek())) ++at;
    return typed.text.substr(from, at - from);
  }
  tl::unexpected<Problem> refuse(std::size_t place, std::string what, std::string remedy) const {
    return tl::unexpected(problem_at(typed, place, std::move(what), std::move(remedy)));
  }
};

/// In tens, always: by itself GMP would take "010" for eight.
Whole whole_of(const std::string& digits) { return Whole(digits, 10); }

struct Amount {
  Fraction value;
  bool has_slash = false;
};

Expected<Whole> digits_needed(Cursor& cursor) {
  const std::size_t from = cursor.at;
  const std::string digits = cursor.digits();
  if (digits.empty())
    return cursor.refuse(from, "A digit is missing here.", "Write it as 1 3/8, 3/8 or 0.992.");
  if (digits.size() > most_digits)
    return cursor.refuse(from, "No measure has so many digits.", "Write at most nine.");
  return whole_of(digits);
}

/// "1,250": thousands, or decimals after the mark that `mark` is not.
bool could_be_thousands(std::string_view before, char at_mark, std::string_view after, DecimalMark mark) {
  const bool own = at_mark == (mark == DecimalMark::point ? '.' : ',');
  return !own && after.size() == 3 && !before.empty() && before.size() <= 3 && before[0] != '0';
}

/// From the mark on, with `before` read already.
Expected<Fraction> decimals(Cursor& cursor, const std::string& before, DecimalMark mark) {
  const std::size_t place = cursor.at++;
  const char at_mark = cursor.typed.text[place];
  const std::size_t from = cursor.at;
  const auto read = digits_needed(cursor);
  if (!read) return tl::unexpected(read.error());
  const std::string after = cursor.typed.text.substr(from, cursor.at - from);
  if (could_be_thousands(before, at_mark, after, mark))
    return cursor.refuse(
        place,
        before + at_mark + after + " may mean " + before + after + " as well as " + before +
            (at_mark == ',' ? "." : ",") + after + ".",
        "Write " + before + after + ", or " + before + (at_mark == ',' ? "." : ",") + after + ".");
  Whole power;
  mpz_ui_pow_ui(power.get_mpz_t(), 10, after.size());
  Fraction value(whole_of(before + after), power);
  value.canonicalize();
  return value;
}

/// A numerator and what it is over.
Expected<Fraction> over(Cursor& cursor) {
  const auto numerator = digits_needed(cursor);
  if (!numerator) return tl::unexpected(numerator.error());
  ++cursor.at;  // the slash
  const std::size_t from = cursor.at;
  const auto denominator = digits_needed(cursor);
  if (!denominator) return tl::unexpected(denominator.error());
  if (*denominator == 0)
    return cursor.refuse(from, "Nothing can be parted in 0.", "Write what the fraction is over, as in 3/8.");
  Fraction value(*numerator, *denominator);
  value.canonicalize();
  return value;
}

/// Whether digits and a slash stand so far ahead.
bool fraction_at(const Cursor& cursor, std::size_t ahead) {
  if (!is_digit(cursor.peek(ahead))) return false;
  while (is_digit(cursor.peek(ahead))) ++ahead;
  return cursor.peek(ahead) == '/';
}

/// The fraction after a whole number, if there is one: parted from it by spaces or one dash.
Expected<Amount> and_fraction(Cursor& cursor, const Whole& whole) {
  std::size_t gap = 0;
  while (cursor.peek(gap) == ' ') ++gap;
  if (gap == 0 && cursor.peek() == '-') gap = 1;
  if (gap == 0 || !fraction_at(cursor, gap)) return Amount{whole, false};
  const std::size_t from = cursor.at += gap;
  const auto part = over(cursor);
  if (!part) return tl::unexpected(part.error());
  if (*part >= 1)
    return cursor.refuse(from, "After a whole number there is a fraction here that is no less than one.",
                         "Write it as 1 3/8, or all of it as a fraction: 11/8.");
  return Amount{whole + *part, true};
}

Expected<Amount> unsigned_amount(Cursor& cursor, DecimalMark mark) {
  const auto as_amount = [](bool has_slash) {
    return [=](Fraction value) { return Amount{value, has_slash}; };
  };
  if (fraction_at(cursor, 0)) return over(cursor).map(as_amount(true));
  Whole whole;
  std::string before;
  if (!is_mark(cursor.peek())) {
    const std::size_t from = cursor.at;
    const auto read = digits_needed(cursor);
    if (!read) return tl::unexpected(read.error());
    whole = *read;
    before = cursor.typed.text.substr(from, cursor.at - from);
  }
  if (is_mark(cursor.peek())) return decimals(cursor, before, mark).map(as_amount(false));
  return and_fraction(cursor, whole);
}

Expected<Amount> amount(Cursor& cursor, DecimalMark mark) {
  const bool below_zero = cursor.take('-');
  auto read = unsigned_amount(cursor, mark);
  if (read && below_zero) read->value = -read->value;
  return read;
}

tl::unexpected<Problem> goes_on(const Cursor& cursor) {
  return cursor.refuse(cursor.at, "The number does not end here, and what follows does not belong to it.",
                       "Write one number, as 1 3/8, 3/8 or 0.992.");
}

std::optional<LengthUnit> unit_called(std::string_view name) {
  static constexpr std::pair<std::string_view, LengthUnit> names[] = {
      {"in", LengthUnit::inch},
      {"in.", LengthUnit::inch},
      {"\"", LengthUnit::inch},
      {"''", LengthUnit::inch},
      {"inch", LengthUnit::inch},
      {"inches", LengthUnit::inch},
      {"ft", LengthUnit::foot},
      {"ft.", LengthUnit::foot},
      {"foot", LengthUnit::foot},
      {"feet", LengthUnit::foot},
      {"mm", LengthUnit::millimetre},
      {"mm.", LengthUnit::millimetre},
      {"cm", LengthUnit::centimetre},
      {"cm.", LengthUnit::centimetre},
      {"millimetre", LengthUnit::millimetre},
      {"millimetres", LengthUnit::millimetre},
      {"millimeter", LengthUnit::millimetre},
      {"millimeters", LengthUnit::millimetre},
      {"centimetre", LengthUnit::centimetre},
      {"centimetres", LengthUnit::centimetre},
      {"centimeter", LengthUnit::centimetre},
      {"centimeters", LengthUnit::centimetre}};
  for (const auto& [known, unit] : names)
    if (known == name) return unit;
  return std::nullopt;
}

/// The unit that the rest of the text is, if there is any rest.
Expected<std::optional<LengthUnit>> unit(Cursor& cursor) {
  while (cursor.take(' ')) {
  }
  const char first = cursor.peek();
  if (first == '\0') return std::optional<LengthUnit>{};
  if (is_digit(first) || is_mark(first) || first == '/' || first == '-') return goes_on(cursor);
  const auto known = unit_called(std::string_view(cursor.typed.text).substr(cursor.at));
  if (!known)
    return cursor.refuse(cursor.at, "This is no unit that lengths are read in.", "Write in, ft, mm or cm.");
  return known;
}

struct Typed {
  Amount amount;
  std::optional<LengthUnit> unit;
};

Expected<Typed> read_typed(const Folded& typed, DecimalMark mark) {
  Cursor cursor{typed};
  if (typed.text.empty())
    return cursor.refuse(0, "There is no length here.", "Write it as 1 3/8 in, 0.992 in or 25.2 mm.");
  const auto number = amount(cursor, mark);
  if (!number) return tl::unexpected(number.error());
  if (number->value < 0) return cursor.refuse(0, "A length is not below zero.", "Leave the minus out.");
  const auto of = unit(cursor);
  if (!of) return tl::unexpected(of.error());
  return Typed{*number, *of};
}

/// A number with nothing after it but one of `endings`.
Expected<Fraction> number_before(const Folded& typed, DecimalMark mark,
                                 std::initializer_list<std::string_view> endings) {
  Cursor cursor{typed};
  if (typed.text.empty())
    return cursor.refuse(0, "There is no number here.", "Write it as 1 3/8, 3/8 or 0.992.");
  const auto number = amount(cursor, mark);
  if (!number) return tl::unexpected(number.error());
  while (cursor.take(' ')) {
  }
  const std::string_view rest = std::string_view(typed.text).substr(cursor.at);
  for (const std::string_view ending : endings)
    if (rest == ending) return number->value;
  return goes_on(cursor);
}

}  // namespace

Expected<Fraction> read_number(std::string_view text, DecimalMark mark) {
  return folded(text).and_then([&](const Folded& typed) { return number_before(typed, mark, {""}); });
}

Expected<Length> read_length(std::string_view text, LengthUnit plain, DecimalMark mark) {
  const auto typed = folded(text);
  if (!typed) return tl::unexpected(typed.error());
  const auto read = read_typed(*typed, mark);
  if (!read) return tl::unexpected(read.error());
  if (!read->unit && read->amount.has_slash && plain != LengthUnit::inch)
    return tl::unexpected(
        problem_at(*typed, 0,
                   "A fraction without a unit may well mean inches, but a length without a unit is in " +
                       std::string(word(plain)) + " here.",
                   "Write the unit: in or " + std::string(word(plain)) + "."));
  return Length{read->amount.value, read->unit.value_or(plain)};
}

Expected<Length> read_length_with_unit(std::string_view text) {
  const auto typed = folded(text);
  if (!typed) return tl::unexpected(typed.error());
  const auto read = read_typed(*typed, DecimalMark::point);
  if (!read) return tl::unexpected(read.error());
  if (!read->unit)
    return tl::unexpected(
        problem_at(*typed, typed->text.size(), "The unit is missing.", "Write in, ft, mm or cm after it."));
  return Length{read->amount.value, *read->unit};
}

Expected<Degrees> read_degrees(std::string_view text, DecimalMark mark) {
  const auto typed = folded(text);
  if (!typed) return tl::unexpected(typed.error());
  const auto count = number_before(*typed, mark, {"", "deg", "degrees"});
  if (!count) return tl::unexpected(count.error());
  if (*count < 0)
    return tl::unexpected(problem_at(*typed, 0, "An angle is not below zero.", "Leave the minus out."));
  return Degrees{*count};
}

}  // namespace wm
