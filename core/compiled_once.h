#pragma once
// Things that can be of many kinds, as structs of their own derived from a variant. Left to the compiler,
// every file that sees one would compile how each kind is copied, moved, compared and destroyed: half the
// time that a build takes.
#include <cstddef>
#include <variant>

namespace wm {

template <class... Kinds>
constexpr std::size_t count_kinds(const std::variant<Kinds...>*) {
  return sizeof...(Kinds);
}
/// Of how many kinds a variant, or a struct derived from one, can be.
template <class T>
inline constexpr std::size_t kinds_in = count_kinds(static_cast<const T*>(nullptr));

}  // namespace wm

/// Inside of such a struct: takes over how the variant is made, and declares the rest, which is compiled in
/// the one file that says WM_COMPILED_HERE(Name).
#define WM_COMPILED_ONCE(Name)      \
  using variant::variant;           \
  Name();                           \
  Name(const Name&);                \
  Name(Name&&) noexcept;            \
  Name& operator=(const Name&);     \
  Name& operator=(Name&&) noexcept; \
  ~Name();                          \
  friend bool operator==(const Name&, const Name&)

#define WM_COMPILED_HERE(Name)                                                           \
  Name::Name() = default;                                                                \
  Name::Name(const Name&) = default;                                                     \
  Name::Name(Name&&) noexcept = default;                                                 \
  Name& Name::operator=(const Name&) = default;                                          \
  Name& Name::operator=(Name&&) noexcept = default;                                      \
  Name::~Name() = default;                                                               \
  bool operator==(const Name& a, const Name& b) {                                        \
    return static_cast<const Name::variant&>(a) == static_cast<const Name::variant&>(b); \
  }                                                                                      \
  static_assert(true)
